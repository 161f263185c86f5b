import type { MiddlewareHandler } from 'hono'
import { routePath } from 'hono/route'
import { keepRequestId } from './requestId.js'

/** One request as the log keeps it: which route, never what was asked or by whom. */
export interface LogEntry {
  readonly time: string
  readonly id: string
  readonly method: string
  readonly route: string
  readonly status: number
  readonly milliseconds: number
}

/** Hands every request to `write` once it is answered. Queries, bodies and addresses are left out: phrases and places may be personal. */
export function logRequests(write: (entry: LogEntry) => void): MiddlewareHandler {
  return async (context, next) => {
    const start = performance.now()
    const id = keepRequestId(context)
    await next()
    write({
      time: new Date().toISOString(),
      id,
      method: context.req.method,
      route: routePath(context, -1),
      status: context.res.status,
      milliseconds: Math.round((performance.now() - start) * 10) / 10,
    })
  }
}
