import { dataset } from '@pottle/core'
import type { MiddlewareHandler } from 'hono'
import { version } from '../version.js'

/** All answers change together, with the dataset or the application: one strong tag (RFC 9110, section 8.8.3) serves them all. */
const tag = `${dataset}-${version}`

/** The tag of one representation: answers that come in several media types need one each. */
export function tagFor(variant?: string): string {
  return variant ? `"${tag}+${variant}"` : `"${tag}"`
}

/** Whether an If-None-Match header (RFC 9110, section 13.1.2) names a tag of this release; compared weakly, as the RFC says. */
export function matchesRelease(header: string): boolean {
  return header.split(',').some((one) => {
    const bare = one.trim().replace(/^W\//, '')
    return bare === `"${tag}"` || bare.startsWith(`"${tag}+`)
  })
}

/**
 * Answers a conditional request before any work is done, and marks every other answer as one that a public cache may keep for a day.
 * A problem is marked too: the same question has the same fault until the next release.
 */
export function releaseCache(): MiddlewareHandler {
  return async (context, next) => {
    const { method } = context.req
    if (method !== 'GET' && method !== 'HEAD') return next()
    context.header('Cache-Control', 'public, max-age=86400')
    context.header('ETag', tagFor())
    const known = context.req.header('if-none-match')
    if (known && matchesRelease(known)) {
      context.header('ETag', known.split(',')[0]!.trim())
      return context.body(null, 304)
    }
    return next()
  }
}
