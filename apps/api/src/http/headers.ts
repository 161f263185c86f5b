import type { MiddlewareHandler } from 'hono'

/** What every answer of the API carries: it is data, is to be read by any page, and is never to be run, framed or guessed at. */
const always: readonly (readonly [string, string])[] = [
  ['Access-Control-Allow-Origin', '*'],
  ['Access-Control-Expose-Headers', 'ETag, X-Request-Id, RateLimit, RateLimit-Policy, Retry-After'],
  ['Content-Security-Policy', "default-src 'none'; frame-ancestors 'none'"],
  ['Cross-Origin-Resource-Policy', 'cross-origin'],
  ['Referrer-Policy', 'no-referrer'],
  ['X-Content-Type-Options', 'nosniff'],
]

/** A preflight's answer may be kept for a day: what the API allows does not change between releases. */
const preflightSeconds = '86400'

/**
 * Sets the headers of every answer before the handler runs, so that they cost one pass; a page sets its own policy over them.
 * Answers CORS preflights (Fetch Standard, section 3.2.2).
 */
export function commonHeaders(): MiddlewareHandler {
  return async (context, next) => {
    for (const [name, value] of always) context.header(name, value)
    context.header('X-Request-Id', requestId(context.req.header('x-request-id')))
    if (context.req.method === 'OPTIONS' && context.req.header('access-control-request-method')) {
      context.header('Access-Control-Allow-Methods', 'GET, HEAD, POST, OPTIONS')
      context.header('Access-Control-Allow-Headers', 'Accept, Content-Type, If-None-Match, X-Request-Id')
      context.header('Access-Control-Max-Age', preflightSeconds)
      return context.body(null, 204)
    }
    return next()
  }
}

/** The caller's own id for the request where it is short and plain, so that logs can be joined; else a new one. */
function requestId(given: string | undefined): string {
  return given && /^[\w.-]{1,64}$/.test(given) ? given : crypto.randomUUID()
}
