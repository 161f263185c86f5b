import type { Context, Hono } from 'hono'
import { isKnown, keptForRelease } from './cache.js'
import { readJson } from './json.js'
import { negotiate } from './negotiate.js'
import type { Problem } from './problem.js'
import { check, queryOf } from './query.js'
import type { Recent, Written } from './recent.js'
import { type Headers, ofUnchanged, send, withCommon } from './respond.js'
import type { Fault, Route } from './route.js'

/** Text says how it is written; JSON is always UTF-8 (RFC 8259, section 8.1). */
const contentType = (type: string): string => (type.startsWith('text/') ? `${type}; charset=utf-8` : type)

/** The headers of an answer, and of the news that it is what it was. */
interface Ready {
  readonly full: Headers
  readonly unchanged: Headers
}

/** Answers of a GET that hold until the next release, or of a moment; each media type has its headers ready. */
function headersFor({ method, passing, answer: { media } }: Route): ReadonlyMap<string, Ready> {
  const types = Object.keys(media)
  const several = types.length > 1
  const keeping = (type: string): Headers => {
    if (passing || method === 'post') return { 'cache-control': 'no-store' }
    return keptForRelease(several ? type : undefined)
  }
  return new Map(
    types.map((type) => {
      const full = withCommon({ ...keeping(type), 'content-type': contentType(type), ...media[type]!.headers })
      return [type, { full, unchanged: ofUnchanged(full) }]
    }),
  )
}

/** What the routes of an app share. */
export interface Shared {
  /** Tells the log of a fault of ours, and gives what the caller is told of it. */
  readonly tellFault: (context: Context, error: unknown) => Problem
  /** By when a body that is read as a whole has to be there, in seconds. */
  readonly bodySeconds: number
  readonly recent: Recent
}

const encoder = new TextEncoder()

/** An answer as it is sent: a text as it stands, anything else as JSON. */
const write = (answer: unknown): Written => encoder.encode(typeof answer === 'string' ? answer : JSON.stringify(answer))

/** What was asked of a server: the address without scheme and host, and the form of the answer. */
function askedOf({ req: { url } }: Context, media: string): string {
  return `${media} ${url.slice(url.indexOf('/', 8))}`
}

/** Hangs a route on the app. What needs no waiting is answered without a promise, which saves a turn of the event loop. */
export function mount(app: Hono, one: Route, { bodySeconds, recent, tellFault }: Shared): void {
  const types = Object.keys(one.answer.media) as [string, ...string[]]
  const headers = headersFor(one)
  const keeps = one.method === 'get' && !one.passing
  const handle = (context: Context, media: string) => {
    const query = check(one.query, queryOf(context))
    const path = one.pathParameters ? check(one.pathParameters, context.req.param()) : {}
    const fault: Fault = (error) => tellFault(context, error)
    return one.handle({ query, path, media, context, fault, read: (schema) => readJson(context, schema, bodySeconds) })
  }
  app[one.method](one.path.replaceAll(/\{(\w+)\}/g, ':$1'), (context) => {
    const media = negotiate(context, types)
    const { full, unchanged } = headers.get(media)!
    if (keeps && isKnown(context, full)) return send(context, null, 304, unchanged)
    const asked = keeps ? askedOf(context, media) : ''
    const kept = keeps ? recent.get(asked) : undefined
    if (kept !== undefined) return send(context, kept, 200, full)
    const finish = (answer: unknown): Response => {
      if (answer instanceof Response) return answer
      const written = write(answer)
      if (keeps) recent.keep(asked, written)
      return send(context, written, 200, full)
    }
    const answer = handle(context, media)
    return answer instanceof Promise ? (answer.then(finish) as Promise<Response>) : finish(answer)
  })
}
