import { dataset } from '@pottle/core'
import type { Context } from 'hono'
import { version } from '../version.js'

/** All answers change together, with the dataset or the application: one strong tag (RFC 9110, section 8.8.3) serves them all. */
const release = `${dataset}-${version}`

/** The tag of one representation: answers that come in several media types need one each. */
export function tagFor(variant?: string): string {
  return variant ? `"${release}+${variant.replace(/^\w+\//, '')}"` : `"${release}"`
}

/** Whether an If-None-Match header names a tag: compared weakly, as RFC 9110, section 13.1.2 says. */
export function matches(header: string, tag: string): boolean {
  return header === tag || header.split(',').some((one) => one.trim().replace(/^W\//, '') === tag)
}

/**
 * Marks an answer as one that a public cache may keep for a day, and answers a conditional request before any work is done.
 * A problem is marked too: the same question has the same fault until the next release.
 *
 * @param variant the media type, where the route has several
 * @returns the 304, where the client has the answer already
 */
export function keepForRelease(context: Context, variant?: string): Response | undefined {
  const tag = tagFor(variant)
  context.header('Cache-Control', 'public, max-age=86400')
  context.header('ETag', tag)
  const known = context.req.header('if-none-match')
  return known !== undefined && matches(known, tag) ? context.body(null, 304) : undefined
}
