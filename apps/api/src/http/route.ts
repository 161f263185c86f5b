import type { Context, Hono } from 'hono'
import type { z } from 'zod'
import { keepForRelease } from './cache.js'
import type { Exact } from './exact.js'
import { negotiate } from './negotiate.js'
import { badParameter, ProblemError, type ProblemKind, problem } from './problem.js'

/** One body that a route can answer with. */
export interface Content {
  readonly description: string
  readonly media: Readonly<Record<string, { readonly schema: z.ZodType; readonly example?: unknown }>>
}

/** What a handler is given: checked parameters, and the media type to answer with, one of those that the route has. */
export interface Input<Query extends z.ZodObject, Path extends z.ZodObject> {
  readonly query: Exact<z.output<Query>>
  readonly path: Exact<z.output<Path>>
  readonly media: string
  readonly context: Context
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
  readonly summary: string
  readonly description: string
  readonly query?: Query
  readonly pathParameters?: Path
  /** What a POST reads, by media type; the handler checks the body itself, since it may be a stream. */
  readonly body?: Content
  readonly answer: Content
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
  for (const [name, values] of Object.entries(context.req.queries())) {
    if (values.length > 1) throw badParameter(name, `give ${name} once; it is given ${values.length} times`)
    given[name] = values[0]!
  }
  return given
}

function check(schema: z.ZodObject | undefined, given: Record<string, string>): Record<string, never> {
  if (!schema) return {}
  const result = schema.safeParse(given)
  if (result.success) return result.data as Record<string, never>
  const errors = faultsOf(result.error)
  throw new ProblemError(problem('bad-parameter', errors.map(({ parameter, detail }) => `${parameter}: ${detail}`).join('; '), { errors }))
}

/** Hangs a route on the app. */
export function mount(app: Hono, one: Route): void {
  const types = Object.keys(one.answer.media) as [string, ...string[]]
  const several = types.length > 1 && one.method === 'get'
  app[one.method](one.path.replaceAll(/\{(\w+)\}/g, ':$1'), async (context) => {
    const media = negotiate(context, types)
    if (several) context.header('Vary', 'Accept')
    const kept = one.method === 'get' && !one.passing && keepForRelease(context, several ? media : undefined)
    if (kept) return kept
    if (one.passing) context.header('Cache-Control', 'no-store')
    const query = check(one.query, queryOf(context))
    const path = check(one.pathParameters, context.req.param())
    const answer = await one.handle({ query, path, media, context })
    if (answer instanceof Response) return answer
    return context.body(typeof answer === 'string' ? answer : JSON.stringify(answer), 200, { 'content-type': media })
  })
}
