/** The reference page: complete, true, and in need of nothing from elsewhere. */
import { createApp, routesFor } from '@pottle/api'
import { beforeAll, describe, expect, test } from 'vitest'
import { nameLists } from '../../apps/api/src/docs/nameLists.js'
import { ask, post, type Reply } from './ask.js'

let page = ''
beforeAll(async () => {
  page = (await ask('/docs')).body
}, 60_000)

const attributes = (name: string): string[] => [...page.matchAll(new RegExp(` ${name}="([^"]*)"`, 'g'))].map(([, value]) => value!)

describe('/docs', () => {
  test('tells of every route, with a request that was really answered', () => {
    for (const { method, path, operation } of routesFor()) {
      expect(page).toContain(`${method.toUpperCase()} ${path}`)
      expect(attributes('id')).toContain(operation)
    }
    expect(page).toContain('half a wine gallon')
    expect(page).not.toMatch(/\/problems\/internal&quot;/)
  })

  test('tells of every field of every body, however deep it lies', async () => {
    interface Held {
      readonly properties?: Readonly<Record<string, Held>>
      readonly items?: Held
      readonly anyOf?: readonly Held[]
      readonly additionalProperties?: Held | boolean
    }
    const namesIn = ({ properties = {}, items, anyOf = [], additionalProperties }: Held): readonly string[] => {
      const forms = [...Object.values(properties), ...(items ? [items] : []), ...anyOf]
      const inner = typeof additionalProperties === 'object' ? [...forms, additionalProperties] : forms
      return [...Object.keys(properties), ...inner.flatMap(namesIn)]
    }
    const { schemas } = (await ask('/openapi.json')).body.components as { readonly schemas: Readonly<Record<string, Held>> }
    for (const [name, schema] of Object.entries(schemas)) {
      const [, section = ''] = page.split(`id="schema-${name}"`)
      const told = [...section.split('<section')[0]!.matchAll(/<th scope="row"><code>([^<]+)<\/code>/g)].map(([, path]) => path!)
      expect(new Set(told).size, name).toBe(told.length)
      expect(told.map((path) => path.split('.').at(-1)).sort(), name).toEqual([...namesIn(schema)].sort())
    }
  })

  test('every link within it leads somewhere, once', () => {
    const ids = attributes('id')
    expect(new Set(ids).size).toBe(ids.length)
    for (const link of attributes('href').filter((href) => href.startsWith('#'))) expect(ids, link).toContain(link.slice(1))
  })

  test('it takes nothing from another host, and needs no script to be read', () => {
    for (const address of [...attributes('href'), ...attributes('src')]) expect(address).toMatch(/^[/#]/)
    expect(page).not.toMatch(/<script(?![^>]* src="\/)/)
    expect(page.replaceAll(/<script[^>]*><\/script>/g, '')).toContain('POST /v1/sheets')
  })

  test('behind a proxy that ends TLS its commands say https', async () => {
    const secure = await createApp().request('http://saltmarsh.example/docs', { headers: { 'x-forwarded-proto': 'https' } })
    const text = await secure.text()
    expect(text).toContain('https://saltmarsh.example/v1/convert')
    expect(text).not.toMatch(/http:\/\/(?:saltmarsh|origin)/)
  })

  test('a limit on requests, which are not its reader’s, does not reach its examples', async () => {
    const app = createApp({ requestsPerMinute: 1 })
    expect(await (await app.request('/docs')).text()).not.toContain('/problems/too-many-requests&quot;')
  })

  test('what a caller claims to be the host cannot break the page', async () => {
    const odd = await createApp().request('http://xn--saltmarsh-.example:81/docs')
    expect(await odd.text()).toContain('xn--saltmarsh-.example:81/v1/convert')
  })
})

/** Requests that are right but for what they call something. */
const asking: Readonly<Record<string, (name: string) => Promise<Reply>>> = {
  place: (name) => ask(`/v1/convert?phrase=a+pint+of+cream&place=${name}`),
  to: (name) => ask(`/v1/convert?phrase=a+pint+of+cream&to=${name}`),
  'plan.limit.unit': (name) => post('/v1/sheets', { text: 'a pint of cream', plan: { limit: { thing: 'cream', amount: 1, unit: name } } }),
  'plan.eggClass': (name) => post('/v1/sheets', { text: 'ten eggs', plan: { eggClass: name } }),
  'plan.dish': (name) => post('/v1/sheets', { text: 'a pint of cream', plan: { dish: name } }),
  coin: (name) => ask(`/v1/loaves?year=1690&coin=${name}`),
  kind: (name) => ask(`/v1/loaves?year=1690&kind=${name}`),
  food: (name) => post('/v1/bake-plans', { ...bake, food: name }),
  fanRule: (name) => post('/v1/bake-plans', { ...bake, fan: true, fanRule: name }),
}
const size = { diameter: 70, depth: 25 }
const bake = { food: 'custard', from: { shape: 'tart', size, minutes: 30, celsius: 175 }, to: { shape: 'tart', size } }

describe('the names', () => {
  const fields = nameLists.flatMap((list) => list.fields.map((field) => [field, list] as const))

  test.each(fields)('of %s are taken, and no other', async (field, { title, names }) => {
    const known = async (name: string): Promise<boolean> => !/is (?:not|no) a?/.test((await asking[field]!(name)).body.detail ?? '')
    for (const { id, label } of names) {
      expect(page).toContain(`<code>${id}</code>: ${label}`)
      expect(await known(id), `${title}: ${id}`).toBe(true)
    }
    expect(await known('nonesuch')).toBe(false)
  })
})
