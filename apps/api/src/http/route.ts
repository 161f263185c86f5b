import type { Context } from 'hono'
import type { z } from 'zod'
import type { Exact } from './exact.js'
import type { Problem, ProblemKind } from './problem.js'
import type { Headers } from './respond.js'

/** A body in one media type. */
export interface Medium {
  readonly schema: z.ZodType
  /** Requests that are really made in the tests, by what they show; the reference tries the first. */
  readonly examples?: Readonly<Record<string, unknown>>
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
  /** A request that is really made in the tests: the query, or what fills the path's parameter; a POST's body is the first example of its first media type. */
  readonly example: string
  /** True for an answer of the moment, which nobody may keep. */
  readonly passing?: boolean
  handle(input: Input<Query, Path>): Body | Response | Promise<Body | Response>
}

/** Declares a route; only here to let the compiler tie the handler to the schemas. */
export function route<Query extends z.ZodObject, Path extends z.ZodObject, Body>(definition: Route<Query, Path, Body>): Route {
  return definition as unknown as Route
}
