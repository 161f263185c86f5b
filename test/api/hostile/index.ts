/**
 * Hostile requests without end, made from the OpenAPI document: every operation, with values that nearly fit, that break the rules of their
 * type, and that are meant to break a reader; and the rules that every answer has to keep. The same seed makes the same requests.
 */
import type { Route } from '../../../apps/api/src/http/route.js'
import { chanceFrom, type Document, type HostileRequest, makeHostile } from './make.js'
import { faultOf, type Seen } from './rules.js'

/** A request and how long it took, in milliseconds. */
export interface Timed {
  readonly took: number
  readonly asked: string
}

export interface Report {
  /** Answers by status. */
  readonly tally: Readonly<Record<string, number>>
  /** The slowest phrase, the quickest of four tries where it was slow. */
  readonly slowestPhrase: Timed
  /** The slowest request of any kind, at its only try. */
  readonly slowest: Timed
  /** What broke the rules, with the request that made it do so; the first of them. */
  readonly faults: readonly string[]
}

interface App {
  readonly routes: readonly { readonly path: string; readonly method: string }[]
  request(path: string, init: RequestInit): Response | Promise<Response>
}

const mostFaults = 25
/** A phrase that took longer is tried again: it may have waited for something else. */
const slow = 50

/** The addresses of the app that are not in the document: its pages, pictures and embeds. */
function pagesOf(app: App, routes: readonly Route[]): readonly string[] {
  const documented = new Set(routes.map(({ path }) => path.replaceAll(/\{(\w+)\}/g, ':$1')))
  return [...new Set(app.routes.map(({ path }) => path))].filter((path) => !documented.has(path) && !/[:*]/.test(path))
}

async function ask(app: App, { path, init }: HostileRequest): Promise<Seen & { readonly took: number }> {
  const start = performance.now()
  const { status, headers, body: sent } = await app.request(path, init)
  const stream = headers.has('content-encoding') ? sent!.pipeThrough(new DecompressionStream('gzip')) : sent
  const body = await new Response(stream).text()
  return { status, headers, body, took: performance.now() - start }
}

const show = ({ path, init }: HostileRequest): string => `${init.method ?? 'GET'} ${path} ${String(init.body ?? '').slice(0, 600)}`

/** Makes so many hostile requests, one after another. */
export async function askHostile(app: App, routes: readonly Route[], count: number, seed: number): Promise<Report> {
  const document = (await (await app.request('/openapi.json', {})).json()) as Document
  const next = makeHostile(document, routes, pagesOf(app, routes), chanceFrom(seed))
  const tally: Record<string, number> = {}
  const faults: string[] = []
  let slowest: Timed = { took: 0, asked: '' }
  let slowestPhrase = slowest
  for (let i = 0; i < count && faults.length < mostFaults; i++) {
    const request = next()
    const asked = show(request)
    const seen = await ask(app, request)
    const fault = faultOf(request, seen)
    if (fault) faults.push(`${i}: ${asked}\n   ${fault}`)
    tally[seen.status] = (tally[seen.status] ?? 0) + 1
    let { took } = seen
    if (took > slowest.took) slowest = { took, asked }
    if (!asked.startsWith('GET /v1/convert')) continue
    for (let again = 0; took > slow && again < 3; again++) took = Math.min(took, (await ask(app, request)).took)
    if (took > slowestPhrase.took) slowestPhrase = { took, asked }
  }
  return { tally, slowest, slowestPhrase, faults }
}
