import type { HeadersObject, ReferenceObject, ResponseObject, ResponsesObject } from 'openapi3-ts/oas31'
import { Problem } from '../contract/index.js'
import { type ProblemKind, problem, problemKinds } from '../http/problem.js'
import { problemsOf } from '../http/problemsOf.js'
import type { Route } from '../http/route.js'
import { schemaFor } from './schemas.js'

const text = (description: string, example: string) => ({ description, schema: { type: 'string' as const }, example })

/** The headers of answers, by name. */
export const headers: HeadersObject = {
  'Cache-Control': text('How long the answer may be kept.', 'public, max-age=86400'),
  ETag: text(
    'Changes with each release; send it back as If-None-Match, with a request whose answer you still have, to be told that it holds. Weak where the answer is compressed.',
    '"2026.11.0-0.1.0"',
  ),
  'Retry-After': text('Seconds to wait.', '12'),
  RateLimit: text(
    'What is left of the quota, where the server has one (draft-ietf-httpapi-ratelimit-headers-07).',
    'limit=600, remaining=599, reset=60',
  ),
  'RateLimit-Policy': text('The quota, and the seconds that it is for, where the server has one.', '600;w=60'),
  'X-Request-Id': text('The id of the request in the log: yours where you sent one.', '5e1b3f0a-2f61-7k'),
}

export const headerReferences = (...names: readonly string[]): Record<string, ReferenceObject> =>
  Object.fromEntries(names.map((name) => [name, { $ref: `#/components/headers/${name}` }]))

const ownHeaders: Partial<Record<ProblemKind, readonly string[]>> = {
  'too-many-requests': ['Retry-After', 'RateLimit', 'RateLimit-Policy'],
}

/** The kinds of problem of a route, by the status that they share. */
function byStatus(route: Route): ReadonlyMap<number, readonly ProblemKind[]> {
  const groups = new Map<number, ProblemKind[]>()
  for (const kind of problemsOf(route)) {
    const { status } = problemKinds[kind]
    groups.set(status, [...(groups.get(status) ?? []), kind])
  }
  return groups
}

/** Addresses outside the API proper tell a problem as a page where a page is asked for; where they have a page, asking for one is no problem. */
const hasPages = ({ path, answer }: Route, status: number): boolean =>
  !path.startsWith('/v1/') && !(status === problemKinds['not-acceptable'].status && 'text/html' in answer.media)

const nameOf = (kinds: readonly ProblemKind[], pages: boolean): string => {
  const name = kinds.map((kind) => kind.replaceAll(/(?:^|-)(\w)/g, (_, letter: string) => letter.toUpperCase())).join('Or')
  return pages ? `${name}OrPage` : name
}

/** One response a status; kinds of problem that share a status are told apart by their `type`. */
function problemResponse(kinds: readonly ProblemKind[], pages: boolean): ResponseObject {
  return {
    description: kinds.map((kind) => problemKinds[kind].title).join('; or: '),
    headers: headerReferences('Cache-Control', 'X-Request-Id', ...kinds.flatMap((kind) => ownHeaders[kind] ?? [])),
    content: {
      'application/problem+json': {
        schema: schemaFor(Problem),
        examples: Object.fromEntries(
          kinds.map((kind) => {
            const { title, example } = problemKinds[kind]
            const { detail, ...rest } = example
            return [kind, { summary: title, value: problem(kind, detail, rest) }]
          }),
        ),
      },
      ...(pages ? { 'text/html': { schema: { type: 'string' as const } } } : {}),
    },
  }
}

/** Every response with a problem that any of the routes has, by name. */
export function problemResponses(routes: readonly Route[]): Record<string, ResponseObject> {
  const named = routes.flatMap((route) =>
    [...byStatus(route)].map(([status, kinds]) => {
      const pages = hasPages(route, status)
      return [nameOf(kinds, pages), problemResponse(kinds, pages)] as const
    }),
  )
  return Object.fromEntries(named)
}

/** What a route answers with when something goes wrong, as references to those. */
export function problemReferences(route: Route): ResponsesObject {
  return Object.fromEntries(
    [...byStatus(route)].map(([status, kinds]) => [
      String(status),
      { $ref: `#/components/responses/${nameOf(kinds, hasPages(route, status))}` },
    ]),
  )
}
