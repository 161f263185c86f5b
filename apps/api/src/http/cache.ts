import { dataset } from '@pottle/core'
import type { Context } from 'hono'
import { version } from '../version.js'
import { type Headers, ofUnchanged, send, withCommon } from './respond.js'

/** All answers change together, with the dataset or the application: one strong tag (RFC 9110, section 8.8.3) serves them all. */
const release = `${dataset}-${version}`

/**
 * The headers of what does not change before the next release, so that a public cache may keep it for a day.
 *
 * @param variant the media type, where a route has several: each is a representation with a tag of its own
 */
export function keptForRelease(variant?: string): Headers {
  const etag = variant ? `"${release}+${variant.replace(/^\w+\//, '')}"` : `"${release}"`
  const kept = { etag, 'cache-control': 'public, max-age=86400' }
  return variant ? { ...kept, vary: 'Accept' } : kept
}

/** Whether an If-None-Match header names a tag: compared weakly, as RFC 9110, section 13.1.2 says. */
function matches(header: string, tag: string): boolean {
  return header === tag || header.split(',').some((one) => one.trim().replace(/^W\//, '') === tag)
}

/** Whether the client has the answer already, so that no work need be done for it. */
export function isKnown(context: Context, { etag }: Headers): boolean {
  const known = context.req.header('if-none-match')
  return known !== undefined && etag !== undefined && matches(known, etag)
}

/** The 304 of a client that has the answer already. */
export function notModified(context: Context, own: Headers): Response | undefined {
  return isKnown(context, own) ? send(context, null, 304, ofUnchanged(withCommon(own))) : undefined
}
