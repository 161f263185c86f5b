import type { Context } from 'hono'
import type { ContentfulStatusCode } from 'hono/utils/http-status'
import type { Problem } from './problem.js'

/** Faults of the moment; the others are as lasting as the release. */
const passing = new Set([429, 500, 503])

/** A problem as a response, with the headers that the request has gathered so far. */
export function respondWithProblem(context: Context, body: Problem): Response {
  context.header('ETag', undefined)
  if (passing.has(body.status)) context.header('Cache-Control', 'no-store')
  return context.body(JSON.stringify(body), body.status as ContentfulStatusCode, { 'content-type': 'application/problem+json' })
}
