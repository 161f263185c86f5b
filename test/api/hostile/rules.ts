import { Problem } from '../../../apps/api/src/contract/index.js'
import { problemsOf } from '../../../apps/api/src/http/problemsOf.js'
import type { Route } from '../../../apps/api/src/http/route.js'
import type { HostileRequest } from './make.js'

/** An answer as the rules see it. */
export interface Seen {
  readonly status: number
  readonly headers: Headers
  readonly body: string
}

const isNumber = (value: unknown): boolean => typeof value !== 'number' || Number.isFinite(value)

/** Words of the caller may stand in a page, but no coordinate or figure may be no number. */
const badFigure = /="[^"]*\b(?:NaN|Infinity|undefined)\b[^"]*"/

/** What a method may be refused with, whatever the document says of the others. */
const unrouted = ['method-not-allowed']

function faultOfProblem(route: Route | undefined, { status, body }: Seen): string | undefined {
  const read = Problem.strict().safeParse(JSON.parse(body))
  if (!read.success) return `no valid problem: ${read.error.message}`
  if (read.data.status !== status) return `a problem of ${read.data.status} with status ${status}`
  const kind = read.data.type.replace('/problems/', '')
  if (route && ![...problemsOf(route), ...unrouted].some((one) => one === kind)) return `a problem that the document does not have: ${kind}`
  return undefined
}

function faultOfAnswer(route: Route, { headers, body }: Seen): string | undefined {
  const type = headers.get('content-type') ?? ''
  const media = route.answer.media[type.split(';')[0]!]
  if (!media) return `a media type that the document does not have: ${type}`
  if (!/json/.test(type)) return undefined
  const lines = type.includes('ndjson') ? body.trim().split('\n').filter(Boolean) : [body]
  for (const line of lines) {
    const value: unknown = JSON.parse(line, (_, one) => {
      if (!isNumber(one)) throw new Error('a number that is none')
      return one
    })
    const read = media.schema.safeParse(value)
    if (!read.success) return `not what the document says: ${read.error.message.slice(0, 300)}`
  }
  return undefined
}

function faultOfHeaders({ status, headers }: Seen): string | undefined {
  const always = ['x-request-id', 'access-control-allow-origin']
  // A client that has the answer has the headers of its body too.
  const wanted = status === 304 ? always : [...always, 'x-content-type-options', 'content-security-policy']
  const missing = [...wanted, ...(status === 405 ? ['allow'] : [])].filter((name) => !headers.has(name))
  return missing.length > 0 ? `without ${missing.join(', ')}` : undefined
}

/** What an answer breaks of the rules that all have to keep; nothing where it keeps them. */
export function faultOf({ route, init }: HostileRequest, seen: Seen): string | undefined {
  const { status, headers, body } = seen
  const type = headers.get('content-type') ?? ''
  if (status >= 500) return `status ${status}: ${body.slice(0, 200)}`
  const bare = faultOfHeaders(seen)
  if (bare) return bare
  if (init.method === 'HEAD' || [204, 301, 303, 304].includes(status)) return body === '' ? undefined : 'a body where there is to be none'
  const told = type === 'application/problem+json'
  // Programs ask at the API proper: they get what they can read, whatever they say that they would sooner have.
  if (status >= 400 && route?.path.startsWith('/v1/') && !told) return `a problem as ${type}`
  if (type.startsWith('text/html') || type === 'image/svg+xml') return badFigure.test(body) ? 'a figure that is no number' : undefined
  if (status < 400) return route ? faultOfAnswer(route, seen) : undefined
  return told ? faultOfProblem(route, seen) : `a problem as ${type}`
}
