import { createApp, routesFor } from '@pottle/api'
import { Validator } from '@seriousme/openapi-schema-validator'
import { expect, test } from 'vitest'
import api from '../../apps/api/package.json' with { type: 'json' }
import { ask, post } from './ask.js'

test('the OpenAPI document is valid OpenAPI 3.1', async () => {
  const { status, body } = await ask('/openapi.json')
  expect(status).toBe(200)
  expect(body.openapi).toMatch(/^3\.1\./)
  expect(await new Validator().validate(body)).toMatchObject({ valid: true })
  expect(body.info.version).toBe(api.version)
})

test.each(routesFor().map((route) => [`${route.method} ${route.path}`, route] as const))(
  'the example of %s fits the schema it declares',
  async (_, route) => {
    const address = route.path.includes('{') ? route.path.replace(/\{\w+\}/, route.example) : route.path + route.example
    const [[media, { schema }] = []] = Object.entries(route.answer.media)
    const example = Object.values(route.body?.media ?? {})[0]?.example
    const reply = route.method === 'post' ? await post(address, example) : await ask(address)
    expect(reply.status).toBe(200)
    expect(reply.headers.get('content-type')).toContain(media)
    const result = schema!.safeParse(reply.body)
    expect(result.error?.issues).toBeUndefined()
    // A field that the schema does not name would have been dropped.
    expect(result.data).toEqual(reply.body)
  },
)

test('one strong tag answers a conditional request before any work is done', async () => {
  const first = await ask('/v1/measures/pottle')
  const tag = first.headers.get('etag')!
  expect(tag).toMatch(/^"[\w.-]+"$/)
  const second = await ask('/v1/measures/pottle', { headers: { 'if-none-match': tag } })
  expect(second.status).toBe(304)
  expect(second.body).toBe('')
})

test('sources come as CSL-JSON, BibTeX or plain text by the Accept header, and nothing else', async () => {
  const as = (accept: string) => ask('/v1/sources/digby-1669', { headers: { accept } })
  expect((await as('application/json')).body).toMatchObject({ id: 'digby-1669', type: 'book' })
  expect((await as('application/x-bibtex')).body).toMatch(/^@book\{digby-1669,/)
  expect((await as('text/plain;q=0.9, application/json;q=0.1')).body).toMatch(/Digby/)
  expect((await as('image/png')).status).toBe(406)
})

test('what is not there is a problem, not a page', async () => {
  for (const path of ['/v1/measures/nonesuch', '/v1/sources/nonesuch', '/v1/nonesuch', '/nonesuch']) {
    const { status, headers, body } = await ask(path)
    expect(status, path).toBe(404)
    expect(headers.get('content-type')).toBe('application/problem+json')
    expect(body.detail).toContain('nonesuch')
  }
})

test('the app can be made more than once', () => {
  expect(createApp()).not.toBe(createApp())
})
