import type { Context, MiddlewareHandler } from 'hono'
import { routePath } from 'hono/route'
import { keepRequestId } from './requestId.js'

/** Which request: the route, never what was asked or by whom. Phrases and places may be personal. */
interface Which {
  readonly time: string
  readonly id: string
  readonly method: string
  readonly route: string
}

/** One request as the log keeps it. */
export interface LogEntry extends Which {
  readonly status: number
  readonly milliseconds: number
}

/** A fault of ours as the log keeps it, by the id that the caller was told. */
export interface FaultEntry extends Which {
  readonly fault: string
}

const whichOf = (context: Context): Which => ({
  time: new Date().toISOString(),
  id: keepRequestId(context),
  method: context.req.method,
  route: routePath(context, -1),
})

export const faultEntry = (context: Context, fault: unknown): FaultEntry => ({
  ...whichOf(context),
  fault: fault instanceof Error && fault.stack ? fault.stack : String(fault),
})

/** Hands every request to `write` once it is answered. */
export function logRequests(write: (entry: LogEntry) => void): MiddlewareHandler {
  return async (context, next) => {
    const start = performance.now()
    keepRequestId(context)
    await next()
    const milliseconds = Math.round((performance.now() - start) * 10) / 10
    write({ ...whichOf(context), status: context.res.status, milliseconds })
  }
}
