/** What goes wrong, told to programs (RFC 9457) and to people. */
import { createApp } from '@pottle/api'
import { describe, expect, test } from 'vitest'
import { ask, post, type Reply } from './ask.js'

describe('problems', () => {
  test('every kind is explained at its address, to programs and to people', async () => {
    const { body: kinds } = await ask('/problems', { headers: { accept: 'application/json' } })
    expect(kinds.length).toBeGreaterThanOrEqual(12)
    for (const { type, title, status } of kinds) {
      const told = await ask(type)
      expect(told.body).toMatchObject({ type, title, status })
      const page = await ask(type, { headers: { accept: 'text/html' } })
      expect(page.headers.get('content-type')).toMatch(/^text\/html/)
      expect(page.body).toContain(title)
    }
  })

  test('the type of a problem is an address that is there', async () => {
    const faults = [
      await ask('/v1/convert'),
      await ask('/nonesuch'),
      await ask('/v1/convert?phrase=once+upon+a+time'),
      await ask('/v1/loaves?year=1200'),
      await ask('/v1/measures', { method: 'DELETE' }),
      await ask('/v1/measures', { headers: { accept: 'image/png' } }),
      await post('/v1/readings', 'x', 'text/plain'),
      await post('/v1/readings', '{"text":'),
    ]
    for (const { status, body } of faults) {
      expect((await ask(body.type)).body).toMatchObject({ type: body.type, status })
    }
  })
})

/** A request that has each kind of problem, as its page tells it. */
const cases: readonly (readonly [kind: string, () => Promise<Reply>])[] = [
  ['bad-parameter', () => ask('/v1/convert?phrase=a+pint&year=3000')],
  ['bad-body', () => post('/v1/sheets', { text: 'Take a pint of cream.', plan: { scale: 0 } })],
  ['not-found', () => ask('/v1/measures/potle')],
  ['method-not-allowed', () => ask('/v1/measures', { method: 'DELETE' })],
  ['not-acceptable', () => ask('/v1/measures', { headers: { accept: 'image/png' } })],
  ['too-large', () => post('/v1/readings', { text: 'x'.repeat(3_000_000) })],
  ['unsupported-media-type', () => post('/v1/readings', 'x', 'text/csv')],
  ['unreadable', () => ask('/v1/convert?phrase=a+prottle')],
  ['no-answer', () => ask('/v1/loaves?year=1905')],
]

test.each(cases)('the case that is told of %s is what comes of it', async (kind, provoke) => {
  const { example } = (await ask(`/problems/${kind}`)).body
  const { type, title, status, ...told } = (await provoke()).body
  expect(type).toBe(`/problems/${kind}`)
  expect(told).toEqual(example)
})

describe('what does not fit is told in plain words', () => {
  const fields = 'phrase, thing, to, standard, year, place, coverage'
  const sheet = (plan: object) => ({ text: 'Take a pint of cream.', plan })

  test.each([
    ['/v1/convert', { phrase: 'a pint', yeer: 1 }, '/yeer', `there is no such field here; there are ${fields}`],
    ['/v1/convert', 'x', '', 'give an object, not "x"'],
    ['/v1/convert', { phrase: 'a pint', place: null }, '/place', 'give a string, not null'],
    ['/v1/convert', { phrase: 'a pint', coverage: '0.9' }, '/coverage', 'give a number, not "0.9"'],
    ['/v1/convert', { phrase: 'a pint', year: true }, '/year', 'give a number or a string, not true'],
    ['/v1/bake-plans', { food: 'custard', from: {}, to: {} }, '/from/minutes', 'give a number'],
    ['/v1/sheets', sheet({ units: 'imperial' }), '/plan/units', 'give "metric", "us" or "uk", not "imperial"'],
    [
      '/v1/sheets',
      sheet({ dish: { shape: 'ring' } }),
      '/plan/dish/shape',
      'give "round", "square", "rectangle", "oval", "loaf" or "mould", not "ring"',
    ],
    ['/v1/sheets', sheet({ dish: 9 }), '/plan/dish', 'give a string, an object or an array, not 9'],
    ['/v1/sheets', sheet({ fixed: { lines: { 1: { standard: 3 } } } }), '/plan/fixed/lines/1/standard', 'give a string, not 3'],
    ['/v1/brick-oven', { timeConstant: { low: 6 } }, '/timeConstant/best', 'give a number'],
    ['/v1/brick-oven', { year: 1690.5 }, '/year', 'give a whole number, not 1690.5'],
    ['/v1/brick-oven', { hours: 100 }, '/hours', 'give at most 72'],
    ['/v1/brick-oven', { batchMinutes: 0 }, '/batchMinutes', 'give more than 0'],
  ])('%s with %j', async (path, body, pointer, detail) => {
    const { errors, detail: whole } = (await post(path, JSON.stringify(body))).body
    expect(errors).toContainEqual({ pointer, detail })
    expect(whole).toContain(`${pointer || 'the body'}: ${detail}`)
  })

  test('and so it is of a query', async () => {
    const { errors } = (await ask('/v1/loaves?year=1690&market=city&colour=brown')).body
    expect(errors).toContainEqual({ parameter: 'market', detail: 'give "london", "town" or "country", not "city"' })
    const names = 'coin, kind, year, place, wheat, allowance, crumb, market, coverage'
    expect(errors).toContainEqual({ parameter: 'colour', detail: `there is no such parameter here; there are ${names}` })
    expect((await ask('/v1/sources?page=2')).body.errors).toEqual([
      { parameter: 'page', detail: 'there is no such parameter here; there are none' },
    ])
  })

  test('what the library says of a body names its place as the rest does', async () => {
    const { detail } = (await post('/v1/sheets', sheet({ guests: 0 }))).body
    expect(detail).toMatch(/^\/plan\/guests: /)
  })
})

describe('problems for people', () => {
  /** As browsers ask for a page (Firefox 132). */
  const browser = { accept: 'text/html,application/xhtml+xml,application/xml;q=0.9,*/*;q=0.8' }
  const broken = (path: string, log: (entry: { readonly id: string }) => void) =>
    createApp({
      log,
      logFault: () => {},
      ready: () => {
        throw new Error('the cellar is flooded')
      },
    }).request(path, { headers: browser })

  test.each([
    ['/nonesuch', 404, 'There is nothing at this address'],
    ['/assets/0/nonesuch', 404, 'There is nothing at this address'],
    ['/problems/nonesuch', 404, 'There is nothing at this address'],
    ['/sheet?text=a+pint+of+cream&as=papyrus', 404, 'There is nothing at this address'],
  ])('%s is a page with status %i for a browser', async (path, status, title) => {
    const page = await ask(path, { headers: browser })
    expect(page.status).toBe(status)
    expect(page.headers.get('content-type')).toBe('text/html; charset=utf-8')
    expect(page.headers.get('content-security-policy')).toMatch(/^default-src 'none'/)
    expect(page.body).toContain(`<h1>${title}</h1>`)
    // Words of the caller are in it, as words.
    expect(page.body).toMatch(/nonesuch|papyrus/)
    expect(page.headers.get('vary')).toContain('Accept')
  })

  test('words of the caller are no markup', async () => {
    const { body } = await ask('/%3Cscript%3Ealert(1)%3C%2Fscript%3E', { headers: browser })
    expect(body).toContain('&lt;script&gt;')
    expect(body).not.toMatch(/<script(?! src="\/assets)/)
  })

  test('a wrong method says what the address takes', async () => {
    const page = await ask('/docs', { method: 'POST', headers: browser })
    expect([page.status, page.headers.get('allow')]).toEqual([405, 'GET, HEAD, OPTIONS'])
    expect(page.body).toContain('/docs answers GET, HEAD, OPTIONS.')
  })

  test('a fault of ours has the id that the log has, and nothing of its cause', async () => {
    const ids: string[] = []
    const page = await broken('/readyz', ({ id }) => ids.push(id))
    const text = await page.text()
    expect(page.status).toBe(500)
    expect(ids).toEqual([page.headers.get('x-request-id')])
    expect(text).toContain(ids[0])
    expect(text).not.toContain('cellar')
    expect(page.headers.get('cache-control')).toBe('no-store')
  })

  test.each([[undefined], ['*/*'], ['application/json'], ['application/problem+json, text/html;q=0.9'], ['text/html;q=0'], ['image/png']])(
    'a client that accepts %s gets problem details',
    async (accept) => {
      const reply = await ask('/nonesuch', accept ? { headers: { accept } } : {})
      expect(reply.status).toBe(404)
      expect(reply.headers.get('content-type')).toBe('application/problem+json')
      expect(reply.headers.get('vary')).toContain('Accept')
    },
  )

  test('the API proper speaks to programs alone, for there are some that ask for pages without knowing it', async () => {
    for (const path of ['/v1/nonesuch', '/v1/convert', '/v1/measures/nonesuch', '/v1/convert?phrase=once+upon+a+time'])
      expect((await ask(path, { headers: browser })).headers.get('content-type'), path).toBe('application/problem+json')
  })
})
