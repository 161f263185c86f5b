import type { Route } from '../../../apps/api/src/http/route.js'
import { accepts, amounts, headerJunk, junk, measures, numbers, places, things, types, years } from './words.js'

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
