import type { Context } from 'hono'
import type { ContentfulStatusCode, StatusCode } from 'hono/utils/http-status'
import { gzipped, worthGzip } from './gzip.js'
import type { Problem } from './problem.js'
import { requestId } from './requestId.js'

/** Headers by their names in lower case. */
export type Headers = Readonly<Record<string, string>>

/** What every answer carries: it is to be read by any page, and is never to be framed or guessed at. */
const always: Headers = {
  'access-control-allow-origin': '*',
  'access-control-expose-headers': '*',
  'content-security-policy': "default-src 'none'; frame-ancestors 'none'",
  'cross-origin-resource-policy': 'cross-origin',
  'referrer-policy': 'no-referrer',
  'x-content-type-options': 'nosniff',
}

/**
 * Headers of a route together with those of every answer. To be joined once, when the route is made: joining them for every request would cost
 * more than all the rest of it.
 */
export function withCommon(own: Headers): Headers {
  return { ...always, ...own }
}

/**
 * A whole response. Its headers go out as one plain record, which a server sends several times as fast as headers that were set one by one.
 *
 * @param headers from `withCommon`; a page puts its own policy over them
 */
export function respond(
  context: Context,
  body: string | Uint8Array<ArrayBuffer> | ReadableStream | null,
  status: StatusCode,
  headers: Headers,
): Response {
  const own: Record<string, string> = { ...headers, 'x-request-id': requestId(context) }
  if (typeof body === 'string' && worthGzip(context, body, own)) return gzipped(body, status, own)
  // A limiter of requests has set headers of its own, which only the context's way joins to ours.
  if (context.get('rateLimit' as never)) return context.newResponse(body, status as ContentfulStatusCode, own)
  return new Response(body, { status, headers: own })
}

/** Faults of the moment; the others are as lasting as the release. */
const passing = new Set([408, 429, 500, 503])
const lasting = withCommon({ 'cache-control': 'public, max-age=86400', 'content-type': 'application/problem+json' })
const momentary = withCommon({ 'cache-control': 'no-store', 'content-type': 'application/problem+json' })

/** A problem as a response. The same question has the same fault until the next release, so that caches may keep it. */
export function respondWithProblem(context: Context, body: Problem, own?: Headers): Response {
  const kept = !passing.has(body.status) && (context.req.method === 'GET' || context.req.method === 'HEAD')
  const headers = kept ? lasting : momentary
  return respond(context, JSON.stringify(body), body.status as StatusCode, own ? { ...headers, ...own } : headers)
}
