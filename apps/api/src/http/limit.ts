import type { Context, MiddlewareHandler } from 'hono'
import { rateLimiter } from 'hono-rate-limiter'
import { problem } from './problem.js'
import type { Tell } from './respond.js'

/** What costs next to nothing, or has to be answered whatever happens: how the server is, and files that never change. */
const free = [/^\/(?:healthz|readyz)$/, /^\/assets\//, /^\/embed\/pottle\.js$/]

/** A preflight is the browser's own, and does no work; who pays for it would pay twice. */
const isFree = ({ req: { method, path } }: Context): boolean => method === 'OPTIONS' || free.some((one) => one.test(path))

/** The network that an IPv6 address belongs to, as one subscriber has 2^64 addresses of it (RFC 6177); other addresses as they are. */
export function networkOf(address: string): string {
  if (!address.includes(':') || address.includes('.')) return address
  const [left = '', right] = address.split('::')
  const [first, last] = [left, right ?? ''].map((part) => part.split(':').filter(Boolean)) as [string[], string[]]
  const zeros = right === undefined ? [] : Array.from({ length: 8 - first.length - last.length }, () => '0')
  return `${[...first, ...zeros, ...last].slice(0, 4).join(':')}::/64`
}

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

/** Makes of the headers that are set the beginnings of a response, to which those of the answer are joined, whoever makes it. */
function keepHeaders(context: Context): void {
  void context.res
}

/** So many requests a minute from one address, told in RateLimit headers (IETF draft-ietf-httpapi-ratelimit-headers-07). */
export function limitRate(perMinute: number, proxies: number, tell: Tell): MiddlewareHandler {
  const refusal = problem('too-many-requests', `at most ${perMinute} requests a minute are answered; wait as Retry-After says`)
  const limit = rateLimiter({
    windowMs: 60_000,
    limit: perMinute,
    standardHeaders: 'draft-7',
    keyGenerator: (context) => networkOf(addressOf(context, proxies)),
    skip: isFree,
    handler: (context) => {
      keepHeaders(context)
      context.res = tell(context, refusal)
      return context.res
    },
  })
  return (context, next) =>
    limit(context, () => {
      keepHeaders(context)
      return next()
    })
}
