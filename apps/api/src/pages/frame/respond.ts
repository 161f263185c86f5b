import type { Context } from 'hono'
import type { StatusCode } from 'hono/utils/http-status'
import { respond } from '../../http/respond.js'
import { contentPolicy } from './policy.js'

/** A page may be kept for ten minutes and has no tag: unlike an answer of the API it may change within a release, and it costs little to make. */
const own = {
  'content-type': 'text/html; charset=utf-8',
  'content-security-policy': contentPolicy,
  'cross-origin-resource-policy': 'same-origin',
  'cache-control': 'public, max-age=600',
}

/** Sends a page. */
export function respondWithPage(context: Context, page: { toString(): string }, status: StatusCode = 200): Response {
  return respond(context, `<!doctype html>${page.toString()}`, status, own)
}
