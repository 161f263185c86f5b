import type { Context, Hono } from 'hono'
import type { z } from 'zod'
import { isKnown, keptForRelease } from './cache.js'
import type { Exact } from './exact.js'
import { readJson } from './json.js'
import { negotiate } from './negotiate.js'
import { badParameter, type Problem, ProblemError, type ProblemKind, problem } from './problem.js'
import type { Recent, Written } from './recent.js'
import { type Headers, ofUnchanged, send, withCommon } from './respond.js'

/** A body in one media type. */
export interface Medium {
  readonly schema: z.ZodType
  readonly example?: unknown
  /** Headers that go with it, in lower case: what a page may do. */
  readonly headers?: Headers
}

/** A body that a route reads or answers with, by media type. */
export interface Content {
  readonly description: string
  readonly media: Readonly<Record<string, Medium>>
}

/** A chapter of the reference. */
export type Tag = 'Phrases' | 'Receipts' | 'Heats' | 'Loaves' | 'Tables' | 'Service'

/** Takes note of a fault of ours in one part of a whole, and gives the problem that stands in its place. */
export type Fault = (error: unknown) => Problem

/** What a handler is given: checked parameters, and the media type to answer with, one of those that the route has. */
export interface Input<Query extends z.ZodObject, Path extends z.ZodObject> {
  readonly query: Exact<z.output<Query>>
  readonly path: Exact<z.output<Path>>
  readonly media: string
  readonly context: Context
  readonly fault: Fault
  /** Reads the body as JSON that fits a schema. */
  read<Schema extends z.ZodType>(schema: Schema): Promise<Exact<z.output<Schema>>>
}

/**
 * One route: its validation, its handler and its page in the OpenAPI document, all from the same schemas.
 * `query` and `path` are checked before the handler runs, and the handler must return what `answer` describes, or a whole response.
 */
export interface Route<Query extends z.ZodObject = z.ZodObject, Path extends z.ZodObject = z.ZodObject, Body = unknown> {
  readonly method: 'get' | 'post'
  /** In OpenAPI's form: `/v1/measures/{id}`. */
  readonly path: string
  readonly operation: string
  readonly tag: Tag
  readonly summary: string
  readonly description: string
  readonly query: Query
  readonly pathParameters?: Path
  /** What a POST reads, by media type; the handler checks the body itself, since it may be a stream. */
  readonly body?: Content
  readonly answer: Content
  /** Its own; those that any route may have go without saying. */
  readonly problems: readonly ProblemKind[]
  /** A request that is really made in the tests: the query, or what fills the path's parameter; a POST's body is the example of its first media type. */
  readonly example: string
  /** True for an answer of the moment, which nobody may keep. */
  readonly passing?: boolean
  handle(input: Input<Query, Path>): Body | Response | Promise<Body | Response>
}

/** Declares a route; only here to let the compiler tie the handler to the schemas. */
export function route<Query extends z.ZodObject, Path extends z.ZodObject, Body>(definition: Route<Query, Path, Body>): Route {
  return definition as unknown as Route
}

function faultsOf(error: z.ZodError): { parameter: string; detail: string }[] {
  return error.issues.flatMap((issue) =>
    issue.code === 'unrecognized_keys'
      ? issue.keys.map((key) => ({ parameter: key, detail: 'this route has no such parameter' }))
      : [{ parameter: issue.path.join('.'), detail: issue.message }],
  )
}

/** Query parameters by name. A parameter given twice is a contradiction, and is refused. */
function queryOf(context: Context): Record<string, string> {
  const given: Record<string, string> = {}
  if (!context.req.url.includes('?')) return given
  for (const [name, values] of Object.entries(context.req.queries())) {
    if (values.length > 1) throw badParameter(name, `give ${name} once; it is given ${values.length} times`)
    given[name] = values[0]!
  }
  return given
}

function check(schema: z.ZodObject, given: Record<string, string>): Record<string, never> {
  const result = schema.safeParse(given)
  if (result.success) return result.data as Record<string, never>
  const errors = faultsOf(result.error)
  throw new ProblemError(problem('bad-parameter', errors.map(({ parameter, detail }) => `${parameter}: ${detail}`).join('; '), { errors }))
}

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
