import type { Context, MiddlewareHandler } from 'hono'
import { rateLimiter } from 'hono-rate-limiter'
import { problem } from './problem.js'
import { respondWithProblem } from './respond.js'

/**
 * The address of the client: that of the connection, where the host gives one; behind so many proxies, the one that the first of ours saw. What
 * stands further left in X-Forwarded-For is the client's own word.
 */
function addressOf(context: Context, proxies: number): string {
  const incoming = (context.env as { incoming?: { socket?: { remoteAddress?: string } } } | undefined)?.incoming
  const connected = incoming?.socket?.remoteAddress ?? 'unknown'
  if (proxies === 0) return connected
  const forwarded = (context.req.header('x-forwarded-for') ?? '').split(',').map((address) => address.trim())
  return forwarded.at(-proxies) || connected
}

/** So many requests a minute from one address, told in RateLimit headers (IETF draft-ietf-httpapi-ratelimit-headers-07). */
export function limitRate(perMinute: number, proxies: number): MiddlewareHandler {
  return rateLimiter({
    windowMs: 60_000,
    limit: perMinute,
    standardHeaders: 'draft-7',
    keyGenerator: (context) => addressOf(context, proxies),
    handler: (context) =>
      respondWithProblem(
        context,
        problem('too-many-requests', `at most ${perMinute} requests a minute are answered; wait as Retry-After says`),
      ),
  })
}
