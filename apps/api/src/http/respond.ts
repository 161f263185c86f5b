import type { Context, MiddlewareHandler } from 'hono'
import type { StatusCode } from 'hono/utils/http-status'
import { gzipped, isCompressible, type Whole, worthGzip } from './gzip.js'
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
 * Headers of a route together with those of every answer, to be joined once when the route is made: joining them for every request would cost
 * more than all the rest of it.
 */
export function withCommon(own: Headers): Headers {
  const all = { ...always, ...own, 'x-request-id': '' }
  if (!isCompressible(own['content-type'])) return all
  return { ...all, vary: own.vary ? `${own.vary}, Accept-Encoding` : 'Accept-Encoding' }
}

/** What says whether a kept answer still holds, for how long, and that any page may know it. */
const guiding = ['access-control-allow-origin', 'cache-control', 'etag', 'vary', 'x-request-id']

/** Those headers of an answer that a 304 has: the client has the others with the body that it kept (RFC 9110, section 15.4.5). */
export function ofUnchanged(headers: Headers): Headers {
  return Object.fromEntries(Object.entries(headers).filter(([name]) => guiding.includes(name)))
}

type Body = Whole | ReadableStream | null

const isWhole = (body: Body): body is Whole => typeof body === 'string' || body instanceof Uint8Array

/**
 * A whole response with headers that `withCommon` has joined. They go out as one plain record, which a server sends several times as fast as
 * headers that were set one by one.
 */
export function send(context: Context, body: Body, status: StatusCode, headers: Headers): Response {
  // A plain copy of a record that has the field already is thirty times as fast as a copy with the field beside it.
  const own: Record<string, string> = { ...headers }
  own['x-request-id'] = requestId(context)
  if (isWhole(body) && worthGzip(context, body, own['content-type'])) return gzipped(body, status, own)
  return new Response(body, { status, headers: own })
}

/** A whole response; a page puts its own policy over the headers of every answer. */
export function respond(context: Context, body: Body, status: StatusCode, own: Headers): Response {
  return send(context, body, status, withCommon(own))
}

/** Sets the headers of every answer before a handler that makes its own response by way of the context. */
export function setCommonHeaders(): MiddlewareHandler {
  return (context, next) => {
    for (const [name, value] of Object.entries(always)) context.header(name, value)
    context.header('x-request-id', requestId(context))
    return next()
  }
}

/** Makes a response of a problem, with headers that belong to it. */
export type Tell = (context: Context, problem: Problem, own?: Headers) => Response

/** A fault of the moment; or one of the Accept header, which caches are not told of where a route has one form only. */
const momentary = new Set([406, 408, 429, 500, 503])

/** Whether a fault is one of this request alone; the others are as lasting as the release. */
export const isPassing = ({ status }: Problem): boolean => momentary.has(status)

const lasting = { 'cache-control': 'public, max-age=86400', 'content-type': 'application/problem+json' }
const passing = { 'cache-control': 'no-store', 'content-type': 'application/problem+json' }

/** A problem as a response. The same question has the same fault until the next release, so that caches may keep it. */
export function respondWithProblem(context: Context, body: Problem, own?: Headers): Response {
  const kept = !isPassing(body) && (context.req.method === 'GET' || context.req.method === 'HEAD')
  return respond(context, JSON.stringify(body), body.status as StatusCode, { ...(kept ? lasting : passing), ...own })
}
