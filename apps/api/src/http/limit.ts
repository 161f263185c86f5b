import type { Context, MiddlewareHandler } from 'hono'
import { rateLimiter } from 'hono-rate-limiter'
import { problem } from './problem.js'
import { respondWithProblem } from './respond.js'

/** The address of the connection, where the host gives one; behind a proxy all clients share the proxy's. */
function addressOf(context: Context): string {
  const incoming = (context.env as { incoming?: { socket?: { remoteAddress?: string } } } | undefined)?.incoming
  return incoming?.socket?.remoteAddress ?? 'unknown'
}

/** So many requests a minute from one address, told in RateLimit headers (IETF draft-ietf-httpapi-ratelimit-headers-07). */
export function limitRate(perMinute: number): MiddlewareHandler {
  return rateLimiter({
    windowMs: 60_000,
    limit: perMinute,
    standardHeaders: 'draft-7',
    keyGenerator: addressOf,
    handler: (context) =>
      respondWithProblem(
        context,
        problem('too-many-requests', `at most ${perMinute} requests a minute are answered; wait as Retry-After says`),
      ),
  })
}
