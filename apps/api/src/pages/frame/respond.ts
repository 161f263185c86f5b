import type { Context } from 'hono'
import type { ContentfulStatusCode } from 'hono/utils/http-status'
import { contentPolicy } from './policy.js'

/**
 * Sends a page. It may be kept for ten minutes and has no tag: unlike an answer of the API it may change within a release, and it costs little to make.
 */
export function respondWithPage(context: Context, page: { toString(): string }, status: ContentfulStatusCode = 200): Response {
  context.header('Content-Security-Policy', contentPolicy)
  context.header('Cross-Origin-Resource-Policy', 'same-origin')
  context.header('Cache-Control', 'public, max-age=600')
  return context.html(`<!doctype html>${page.toString()}`, status)
}
