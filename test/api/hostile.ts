/**
 * Hostile requests without end, made from the OpenAPI document: every operation, with values that nearly fit, that break the rules of their
 * type, and that are meant to break a reader; and the rules that every answer has to keep. The same seed makes the same requests.
 */

import { Problem } from '../../apps/api/src/contract/index.js'
import type { Route } from '../../apps/api/src/http/route.js'

export interface HostileRequest {
  readonly route: Route | undefined
  readonly path: string
  readonly init: RequestInit
}

interface Schema {
  readonly $ref?: string
  readonly type?: string | readonly string[]
  readonly enum?: readonly unknown[]
  readonly anyOf?: readonly Schema[]
  readonly items?: Schema
  readonly properties?: Readonly<Record<string, Schema>>
  readonly required?: readonly string[]
  readonly additionalProperties?: Schema | boolean
}

export interface Document {
  readonly components: { readonly schemas: Readonly<Record<string, Schema>> }
}

/** Chance that can be repeated: mulberry32 (Tommy Ettinger, public domain). */
export function chanceFrom(seed: number): () => number {
  let state = seed >>> 0
  return () => {
    state = (state + 0x6d2b79f5) >>> 0
    let t = Math.imul(state ^ (state >>> 15), 1 | state)
    t = (t + Math.imul(t ^ (t >>> 7), 61 | t)) ^ t
    return ((t ^ (t >>> 14)) >>> 0) / 4_294_967_296
  }
}

const amounts = [
  'a',
  'half a',
  'iij',
  'xij',
  'two or three',
  '3 1/2',
  '¾',
  '0',
  '-1',
  '1e9',
  '999999',
  'a score of',
  'as much',
  'the quarter of a',
  'vj or vij',
  '1/0',
  '½ ½',
  'a dozen and a half',
]
const measures = [
  'pint',
  'pottle',
  'pynte',
  'peck',
  'lb.',
  'ounces',
  'gallon',
  'spoonful',
  'penny white loaf',
  'quartern loaf',
  'handful',
  'eggs',
  'pennyworth',
  'drachm',
  'inch',
  'hour',
  'wineglass',
  'firkin',
  'coffee-cup',
  'pint and a half',
  'sixpence',
  'walnut',
]
const things = [
  'of cream',
  'of floure',
  'of mace',
  'of eggs, leaving out four of the whites',
  'the crumb grated',
  'of sack',
  'of the bigness of a walnut',
  'beaten',
  'as will lie on a sixpence',
  'the weight of it in sugar',
  'and cloves, of each',
  'or thereabouts',
  'more or less',
  'quick oven',
  'in a slack oven',
  'till it be as thick as cream',
  'not too hot',
  'after the bread is drawn',
  'to a candy height',
  'blood-warm',
]
const junk = [
  '',
  ' ',
  '\u0000',
  '\n',
  '\t\t',
  '%',
  '%zz',
  '%00',
  '..',
  '../../etc/passwd',
  '\\',
  '"',
  "'",
  '<script>',
  '{{7*7}}',
  '#{7}',
  '; DROP TABLE measures',
  '\ud83e\udd5a',
  '\ud800',
  '\u202e',
  '\u0301\u0301\u0301',
  'ﬁ',
  'İ',
  'ß',
  '\ufeff',
  '１２',
  '٣',
  '½',
  '⅐',
  '∞',
  '−1',
  '1,000',
  '1.5.5',
  '0x10',
  '1e999',
  '-0',
  '9007199254740993',
  '__proto__',
  'constructor',
  'toString',
  'hasOwnProperty',
  'a'.repeat(999),
  'x '.repeat(500),
  '('.repeat(400),
  'a pint of '.repeat(90),
  'iiiiiiiiiiiiiiiiiiiiiiiiiii',
  'of of of of',
  'null',
  'true',
  '[]',
  '{}',
  '~0~1',
  '/',
] as const
const years = [
  '1690',
  '1690~',
  '169X',
  '1650/1700',
  '1266',
  '1914',
  '1265',
  '1915',
  '0000',
  '-0001',
  '99999',
  'XXXX',
  '17XX',
  '1700/1650',
  '../1700',
  '1690/..',
  '1690?',
  '1690%',
  '1e3',
  'MDCXC',
  '1690.5',
  ' 1690',
  '1800-01',
  '1800-02-30',
  '1600/1601/1602',
  '+1690',
] as const
const numbers = [
  0,
  -0,
  1,
  -1,
  0.5,
  0.9,
  0.999,
  1e-308,
  5e-324,
  1e308,
  2 ** 53,
  -1e9,
  1.5,
  100,
  232,
  600,
  601,
  -274,
  1e6,
  0.1 + 0.2,
] as const
const places = ['england', 'london', 'scotland', 'america', 'ireland', 'lancashire', 'atlantis', 'LONDON', 'britain'] as const
const accepts = [
  '*/*',
  'application/json',
  'text/html',
  'image/*',
  'text/*;q=0.5',
  'application/json;q=0',
  ';;;',
  'a'.repeat(2000),
  'application/x-bibtex',
  'image/svg+xml',
  'application/json;q=2',
  '*',
  'text/csv, */*;q=0.1',
] as const
const types = [
  'application/json',
  'application/x-ndjson',
  'text/plain',
  'application/json; charset=utf-16',
  'APPLICATION/JSON',
  'multipart/form-data',
  ';',
  'application/json;',
] as const
const headerJunk = ['"', 'W/"', '*', '"2026.11.0-0.1.0"', ', , ,', 'x'.repeat(500)] as const

/** Makes hostile requests over a document. */
export function makeHostile(document: Document, routes: readonly Route[], pages: readonly string[], random: () => number) {
  const pick = <Value>(all: readonly Value[]): Value => all[Math.floor(random() * all.length)]!
  const chance = (share: number): boolean => random() < share

  const phrase = (): string => {
    const parts = [pick(amounts), pick(measures), pick(things)]
    if (chance(0.3)) parts.splice(Math.floor(random() * 3), 1, pick(junk))
    if (chance(0.2)) parts.push(pick(things), pick(amounts), pick(measures))
    if (chance(0.05)) parts.reverse()
    return parts.join(chance(0.95) ? ' ' : '')
  }

  const text = (name: string): string => {
    if (chance(0.15)) return pick(junk)
    if (name === 'phrase') return phrase()
    if (name === 'text') return Array.from({ length: 1 + Math.floor(random() * 8) }, phrase).join(pick(['; ', '. ', '\n', ' ']))
    if (name === 'year') return pick(years)
    if (name === 'place') return pick(places)
    if (name === 'coin') return pick(['penny', 'halfpenny', 'quartern', 'farthing', 'groat', 'guinea'])
    if (name === 'kind') return pick(['white', 'wheaten', 'household', 'manchet', 'weight', 'capacity', 'horse'])
    if (name === 'to' || name === 'unit') return pick(['g', 'ml', 'cup-us', 'mass', 'volume', 'each', 'degC', 'furlong'])
    if (name === 'shape') return pick(['tart', 'round', 'box', 'slab', 'joint', 'star', 'mould'])
    if (name === 'food') return pick(['custard', 'bread', 'joint', 'batter', 'granite'])
    if (name === 'start' || name === 'heat') return chance(0.3) ? String(pick(numbers)) : phrase()
    return chance(0.5) ? String(pick(numbers)) : phrase()
  }

  const anything = (depth = 0): unknown => {
    const kind = Math.floor(random() * (depth > 3 ? 4 : 7))
    if (kind === 0) return pick(junk)
    if (kind === 1) return pick(numbers)
    if (kind === 2) return pick([null, true, false])
    if (kind === 3) return phrase()
    if (kind === 4) return Array.from({ length: Math.floor(random() * 4) }, () => anything(depth + 1))
    return Object.fromEntries(Array.from({ length: Math.floor(random() * 4) }, () => [pick(junk), anything(depth + 1)]))
  }

  const valueFor = (schema: Schema, name: string, depth = 0): unknown => {
    if (chance(0.06)) return anything()
    if (schema.$ref) return valueFor(document.components.schemas[schema.$ref.split('/').at(-1)!]!, name, depth)
    if (schema.anyOf) return valueFor(pick(schema.anyOf), name, depth)
    if (schema.enum) return chance(0.9) ? pick(schema.enum) : pick(junk)
    const type = Array.isArray(schema.type) ? pick(schema.type) : schema.type
    if (type === 'array') return Array.from({ length: Math.floor(random() * 4) }, () => valueFor(schema.items ?? {}, name, depth + 1))
    if (type === 'object') return objectFor(schema, depth)
    if (type === 'number' || type === 'integer') return pick(numbers)
    if (type === 'boolean') return chance(0.5)
    if (type === 'null') return null
    return text(name)
  }

  const objectFor = (schema: Schema, depth: number): object => {
    const fields: [string, unknown][] = []
    for (const [name, field] of Object.entries(schema.properties ?? {})) {
      const wanted = schema.required?.includes(name) ? 0.95 : 0.35
      if (chance(wanted)) fields.push([name, valueFor(field, name, depth + 1)])
    }
    if (typeof schema.additionalProperties === 'object')
      for (let i = 0; i < 2; i++) fields.push([text('measure'), valueFor(schema.additionalProperties, 'measure', depth + 1)])
    if (chance(0.04)) fields.push([pick(junk), anything()])
    return Object.fromEntries(fields)
  }

  const encode = (value: string): string => (chance(0.97) ? encodeURIComponent(value.toWellFormed()) : value.replaceAll(/[^!-~]|#/g, ''))

  const query = (fields: Readonly<Record<string, unknown>>, required: ReadonlySet<string>): string => {
    const pairs = Object.keys(fields).flatMap((name) => (chance(required.has(name) ? 0.95 : 0.35) ? [`${name}=${encode(text(name))}`] : []))
    if (chance(0.05)) pairs.push(`${encode(pick(junk))}=${encode(pick(junk))}`)
    if (chance(0.03) && pairs[0]) pairs.push(pairs[0])
    return pairs.length > 0 ? `?${pairs.join('&')}` : ''
  }

  const headers = (): Record<string, string> => ({
    ...(chance(0.2) ? { accept: pick(accepts) } : {}),
    ...(chance(0.1) ? { 'accept-encoding': pick(['gzip', 'gzip;q=0', 'br, gzip', '*']) } : {}),
    ...(chance(0.1) ? { 'if-none-match': pick(headerJunk) } : {}),
    ...(chance(0.05) ? { 'x-request-id': pick(headerJunk) } : {}),
    ...(chance(0.05) ? { origin: 'https://saltmarsh.example' } : {}),
  })

  const bodyFor = (route: Route): { body: string; type: string } => {
    const media = pick(Object.keys(route.body!.media))
    const name = {
      readReceipt: 'ReadingRequest',
      workSheet: 'SheetRequest',
      planBake: 'BakePlanRequest',
      coolBrickOven: 'BrickOvenRequest',
    }[route.operation]
    const one = (): string => JSON.stringify(valueFor({ $ref: `#/components/schemas/${name ?? 'ConvertRequest'}` }, 'body'))
    let body = one() ?? 'null'
    if (media === 'application/x-ndjson') body = Array.from({ length: 1 + Math.floor(random() * 5) }, one).join('\n')
    else if (!name && chance(0.3)) body = `[${Array.from({ length: Math.floor(random() * 5) }, one).join(',')}]`
    if (chance(0.05)) body = body.slice(0, Math.floor(random() * body.length))
    if (chance(0.02))
      body = pick([
        '['.repeat(50_000),
        '{"a":'.repeat(20_000),
        '"'.repeat(999),
        `{"text":"${'\\u0000'.repeat(2000)}"}`,
        '1e400',
        '\ufeff{}',
      ])
    return { body, type: chance(0.95) ? media : pick(types) }
  }

  return (): HostileRequest => {
    if (chance(0.1))
      return {
        route: undefined,
        path: pick(pages) + query({ phrase: 1, year: 1, place: 1, text: 1, url: 1, as: 1 }, new Set()),
        init: { headers: headers() },
      }
    if (chance(0.03)) return { route: undefined, path: `/${encode(pick(junk))}/${encode(pick(junk))}`, init: { headers: headers() } }
    const route = pick(routes)
    const shape = route.query.shape
    const required = new Set(Object.keys(shape).filter((name) => !shape[name]!.safeParse(undefined).success))
    const id = chance(0.5) ? pick(['pottle', 'slow', 'digby-1669', 'pint', 'moderate', 'unreadable']) : encode(pick(junk)) || 'x'
    const path = route.path.replace(/\{\w+\}/, id) + query(shape, required)
    const method = chance(0.97) ? route.method.toUpperCase() : pick(['DELETE', 'PUT', 'OPTIONS', 'HEAD', 'PATCH', 'GET', 'POST'])
    if (route.method === 'get' || method === 'GET' || method === 'HEAD') return { route, path, init: { method, headers: headers() } }
    const { body, type } = bodyFor(route)
    return { route, path, init: { method, headers: { ...headers(), 'content-type': type }, body } }
  }
}

const isNumber = (value: unknown): boolean => typeof value !== 'number' || Number.isFinite(value)

/** What an answer breaks of the rules that all have to keep; nothing where it keeps them. */
export function faultOf({ route, init }: HostileRequest, status: number, type: string, body: string): string | undefined {
  if (status >= 500) return `status ${status}: ${body.slice(0, 200)}`
  const bare = init.method === 'HEAD' || status === 304 || status === 204
  if (bare) return body === '' ? undefined : 'a body where there is to be none'
  if (status >= 400 && (route || type.includes('problem'))) {
    if (type !== 'application/problem+json') return `a problem as ${type}`
    const read = Problem.strict().safeParse(JSON.parse(body))
    if (!read.success) return `no valid problem: ${read.error.message}`
    return read.data.status === status ? undefined : `a problem of ${read.data.status} with status ${status}`
  }
  if (type === 'image/svg+xml' || type.startsWith('text/html')) {
    // Words of the caller may stand in a page, but no coordinate or figure may be no number.
    return /="[^"]*\b(?:NaN|Infinity|undefined)\b[^"]*"/.test(body) ? 'a figure that is no number' : undefined
  }
  const media = route && init.method !== 'OPTIONS' ? route.answer.media[type.split(';')[0]!] : undefined
  if (!media || !/json/.test(type)) return undefined
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

export interface Report {
  /** Answers by status. */
  readonly tally: Readonly<Record<string, number>>
  /** The slowest phrase, in milliseconds, the quickest of four tries where it was slow. */
  readonly slowest: { readonly took: number; readonly path: string }
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

/** Makes so many hostile requests, one after another. */
export async function askHostile(app: App, routes: readonly Route[], count: number, seed: number): Promise<Report> {
  const document = (await (await app.request('/openapi.json', {})).json()) as Document
  const next = makeHostile(document, routes, pagesOf(app, routes), chanceFrom(seed))
  const tally: Record<string, number> = {}
  const faults: string[] = []
  let slowest = { took: 0, path: '' }
  const ask = async ({ path, init }: HostileRequest) => {
    const start = performance.now()
    const response = await app.request(path, init)
    const zipped = response.headers.has('content-encoding')
    const body = zipped ? await new Response(response.body!.pipeThrough(new DecompressionStream('gzip'))).text() : await response.text()
    return { response, body, took: performance.now() - start }
  }
  for (let i = 0; i < count && faults.length < mostFaults; i++) {
    const request = next()
    const { path, init } = request
    const { response, body, took } = await ask(request)
    const fault = faultOf(request, response.status, response.headers.get('content-type') ?? '', body)
    if (fault) faults.push(`${i}: ${init.method ?? 'GET'} ${path} ${String(init.body ?? '').slice(0, 600)}\n   ${fault}`)
    tally[response.status] = (tally[response.status] ?? 0) + 1
    if (!path.startsWith('/v1/convert') || init.method === 'POST') continue
    let least = took
    for (let again = 0; least > slow && again < 3; again++) least = Math.min(least, (await ask(request)).took)
    if (least > slowest.took) slowest = { took: least, path }
  }
  return { tally, slowest, faults }
}
