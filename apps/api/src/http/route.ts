import type { Context, Hono } from 'hono'
import type { z } from 'zod'
import { ProblemError, type ProblemKind, problem } from './problem.js'

/** One body that a route can answer with. */
export interface Content {
  readonly description: string
  readonly media: Readonly<Record<string, { readonly schema: z.ZodType; readonly example?: unknown }>>
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
  handle(input: { query: z.output<Query>; path: z.output<Path>; context: Context }): Body | Response | Promise<Body | Response>
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
    if (values.length > 1) {
      const detail = `give ${name} once`
      throw new ProblemError(problem('bad-parameter', `${name} is given ${values.length} times`, { errors: [{ parameter: name, detail }] }))
    }
    given[name] = values[0]!
  }
  return given
}

function check<Schema extends z.ZodObject>(schema: Schema | undefined, given: Record<string, string>): z.output<Schema> {
  if (!schema) return {} as z.output<Schema>
  const result = schema.safeParse(given)
  if (result.success) return result.data
  const errors = faultsOf(result.error)
  throw new ProblemError(problem('bad-parameter', errors.map(({ parameter, detail }) => `${parameter}: ${detail}`).join('; '), { errors }))
}

/** Hangs a route on the app. */
export function mount(app: Hono, one: Route): void {
  app[one.method](one.path.replaceAll(/\{(\w+)\}/g, ':$1'), async (context) => {
    const query = check(one.query, queryOf(context))
    const path = check(one.pathParameters, context.req.param())
    const answer = await one.handle({ query, path, context })
    return answer instanceof Response ? answer : context.json(answer as object)
  })
}
