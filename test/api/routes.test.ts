/** What each route answers and how it refuses. The figures themselves are held to statutes and handbooks by the tests of the library. */
import { createApp } from '@pottle/api'
import { describe, expect, test } from 'vitest'
import { ask, post } from './ask.js'

interface Spread {
  readonly low: number
  readonly best: number
  readonly high: number
}

function expectRising({ low, best, high }: Spread): void {
  expect(low).toBeLessThanOrEqual(best)
  expect(best).toBeLessThanOrEqual(high)
}

test('every address fits the fastest of the router’s ways: one that does not sends all of them the slow way', async () => {
  const app = createApp()
  await app.request('/healthz')
  expect(app.router.name).toBe('SmartRouter + RegExpRouter')
})

describe('GET /v1/oven-heats', () => {
  test('a phrase is read with its place on the scale, modern settings, claims and sources', async () => {
    const { status, body } = await ask('/v1/oven-heats?phrase=a+slack+oven&year=1690')
    expect(status).toBe(200)
    expect(body).toMatchObject({ phrase: 'a slack oven', setting: { year: 1690 }, heat: { id: 'slow', rank: 4 }, value: { unit: 'degC' } })
    expectRising(body.value)
    expect(body.modern.map(({ unit }: { unit: string }) => unit)).toEqual(['degF', 'gas-mark', 'degC-fan'])
    for (const { source, unit } of body.claims) expect([typeof source, unit]).toEqual(['string', expect.stringMatching(/^deg[CF]$/)])
    expect(body.sources.length).toBeGreaterThan(5)
  })

  test('without a phrase the whole scale is listed from drying to scorching', async () => {
    const { body } = await ask('/v1/oven-heats')
    const ranks = body.heats.map(({ rank }: { rank: number }) => rank)
    expect(ranks).toEqual([...ranks].sort((a, b) => a - b))
    const { body: one } = await ask(`/v1/oven-heats/${body.heats[4].id}`)
    expect(one).toEqual(body.heats[4])
  })

  test('a span of years is taken at its middle, and says so', async () => {
    const { body } = await ask('/v1/oven-heats?phrase=a+slack+oven&year=1650/1700')
    expect(body.setting.year).toBe(1675)
    expect(body.notes[0]).toContain('1675')
  })

  test('quick at first, then slow is two heats', async () => {
    const { body } = await ask(`/v1/oven-heats?${new URLSearchParams({ phrase: 'a quick oven at first, then a slow one' })}`)
    expect(body.heat.id).not.toBe(body.afterwards.heat.id)
  })

  test.each([
    ['/v1/oven-heats?phrase=', 400, 'phrase'],
    ['/v1/oven-heats?phrase=the+blue+cow', 422, 'phrase'],
    ['/v1/oven-heats?phrase=a+slack+oven&year=0999', 400, 'year'],
    ['/v1/oven-heats?phrase=a+slack+oven&year=soon', 400, 'year'],
    ['/v1/oven-heats?year=1690', 400, 'phrase'],
    ['/v1/oven-heats.svg?year=9999', 400, 'year'],
    ['/v1/oven-heats?heat=slow', 400, 'heat'],
  ])('%s is %i and names %s', async (path, status, parameter) => {
    const reply = await ask(path)
    expect(reply.status).toBe(status)
    expect(reply.body.errors[0].parameter).toBe(parameter)
  })

  test('a heat that there is not is a 404 with the nearest', async () => {
    const { status, body } = await ask('/v1/oven-heats/slwo')
    expect(status).toBe(404)
    expect(body.detail).toContain('slow')
  })
})

describe('pictures', () => {
  test.each([
    '/v1/oven-heats.svg',
    '/v1/loaves.svg?coin=penny&kind=white&year=1660/1710',
    '/v1/loaves.svg?year=1690',
    '/v1/brick-oven.svg?start=232&hours=8',
  ])('%s is a standalone picture that tells what it shows', async (path) => {
    const { status, headers, body } = await ask(path)
    expect(status).toBe(200)
    expect(headers.get('content-type')).toBe('image/svg+xml')
    expect(headers.get('cross-origin-resource-policy')).toBe('cross-origin')
    expect(body).toMatch(/^<svg [^>]*role="img"/)
    expect(body).toMatch(/<title|<desc/)
    expect(body).not.toMatch(/NaN|Infinity|undefined|<script|href=/)
  })

  test('a page that asks for pictures of any kind gets one', async () => {
    const accept = 'image/avif,image/webp,image/png,image/svg+xml,image/*;q=0.8,*/*;q=0.5'
    expect((await ask('/v1/oven-heats.svg', { headers: { accept } })).status).toBe(200)
  })
})

describe('GET /v1/sugar-heights and /v1/liquid-heats', () => {
  test('a height is found by its name in the year', async () => {
    const { body } = await ask('/v1/sugar-heights?phrase=boil+it+to+a+candy+height&year=1690')
    expect(body).toMatchObject({ setting: { year: 1690 }, value: { quantity: 'temperature', unit: 'degC' } })
    expectRising(body.value)
    const { body: all } = await ask('/v1/sugar-heights')
    expect(all.heights.map(({ id }: { id: string }) => id)).toContain(body.height.id)
  })

  test('a warmth is found by its name', async () => {
    const { body } = await ask('/v1/liquid-heats?phrase=blood-warm')
    // The warmth of blood is 37 degrees, whatever a book made of it.
    expect(Math.abs(body.value.best - 37)).toBeLessThan(3)
    const { body: all } = await ask('/v1/liquid-heats')
    expect(all.heats.length).toBeGreaterThan(5)
  })

  test.each(['/v1/sugar-heights', '/v1/liquid-heats'])('%s refuses a year alone and words that name nothing', async (path) => {
    expect((await ask(`${path}?year=1690`)).body.errors[0].parameter).toBe('phrase')
    const { status, body } = await ask(`${path}?phrase=tomato`)
    expect(status).toBe(422)
    expect(body.nearest.length).toBeGreaterThan(0)
  })
})

describe('GET /v1/loaves', () => {
  const loaf = (fields: Record<string, string>) => ask(`/v1/loaves?${new URLSearchParams(fields)}`)

  test('a year gives a loaf with every step of it', async () => {
    const { body } = await loaf({ coin: 'penny', kind: 'white', year: '1690', place: 'london' })
    expect(body).toMatchObject({
      setting: { year: 1690, place: 'london' },
      loaf: { coin: 'penny', kind: 'white' },
      value: { unit: 'g', coverage: 0.9 },
    })
    expectRising(body.value)
    expect(body.series).toBeUndefined()
    expect(body.steps.length).toBeGreaterThan(2)
    expect(body.modern.map(({ unit }: { unit: string }) => unit)).toEqual(expect.arrayContaining(['g', 'oz', 'lb']))
  })

  test('a span of years gives a series, one band a year', async () => {
    const { body } = await loaf({ coin: 'penny', kind: 'white', year: '1660/1710' })
    expect(body.series.map(({ year }: { year: number }) => year)).toEqual(Array.from({ length: 51 }, (_, i) => 1660 + i))
    body.series.forEach(expectRising)
    // A span holds what its years hold between them.
    const bests = body.series.map(({ best }: Spread) => best)
    expect(body.value.best).toBeGreaterThan(Math.min(...bests))
    expect(body.value.best).toBeLessThan(Math.max(...bests))
  })

  test('your own price and allowance rule, and dearer wheat makes a lighter loaf', async () => {
    const best = async (wheat: string) => (await loaf({ year: '1690', wheat, allowance: '12' })).body.value.best
    expect(await best('30')).toBeGreaterThan(await best('60'))
  })

  test('the crumb is less than the loaf, and a wider coverage is a wider band', async () => {
    const whole = (await loaf({ year: '1690' })).body.value
    expect((await loaf({ year: '1690', crumb: 'true' })).body.value.best).toBeLessThan(whole.best)
    const sure = (await loaf({ year: '1690', coverage: '0.99' })).body.value
    expect(sure.high / sure.low).toBeGreaterThan(whole.high / whole.low)
  })

  test.each([
    [{}, 400, 'year'],
    [{ year: '1200' }, 400, 'year'],
    [{ year: '1905' }, 422, 'year'],
    [{ year: '1690', coin: 'florin of lead' }, 400, 'coin'],
    [{ year: '1690', kind: 'blue' }, 400, 'kind'],
    [{ year: '1690', place: 'atlantis' }, 400, 'place'],
    [{ year: '1690', wheat: 'dear' }, 400, 'wheat'],
    [{ year: '1690', wheat: '0' }, 400, 'wheat'],
    [{ year: '1690', allowance: '-1' }, 400, 'allowance'],
    [{ year: '1690', crumb: 'perhaps' }, 400, 'crumb'],
    [{ year: '1690', market: 'fair' }, 400, 'market'],
    [{ year: '1690', coverage: '2' }, 400, 'coverage'],
    [{ year: '1500', place: 'america' }, 422, 'place'],
  ] as [Record<string, string>, number, string][])('%o is %i and names %s', async (fields, status, parameter) => {
    const reply = await loaf(fields)
    expect(reply.body.errors?.[0].parameter).toBe(parameter)
    expect(reply.status).toBe(status)
  })
})

describe('POST /v1/readings', () => {
  const text = 'Take a pottle of cream ½ warm, the yolks of vj eggs and sugar; bake it in a slack oven half an hour.'

  test('each finding stands where the text has it', async () => {
    const { status, body } = await post('/v1/readings', { text, year: '1690', place: 'london' })
    expect(status).toBe(200)
    expect(body.setting).toEqual({ year: 1690, place: 'london' })
    for (const list of ['measures', 'heats', 'times', 'lengths', 'consistencies', 'unmeasured'])
      for (const { start, end, phrase } of body[list]) expect(text.slice(start, end)).toBe(phrase)
    expect(body.measures.map(({ measure }: { measure: string }) => measure)).toContain('pottle')
    expect(body.measures.find(({ eggs }: { eggs: unknown }) => eggs)?.eggs).toEqual({ whole: 0, yolks: 6, whites: 0 })
    expect(body.heats[0].heat).toBe('slow')
    expect(body.times[0].minutes).toEqual({ low: 30, high: 30 })
    expect(body.unmeasured.map(({ thing }: { thing: string }) => thing)).toContain('sugar')
  })

  test('a text without measures has none, and is no fault', async () => {
    const { status, body } = await post('/v1/readings', { text: '' })
    expect(status).toBe(200)
    expect(body.measures).toEqual([])
  })

  test.each([
    [{}, '/text'],
    [{ text: 7 }, '/text'],
    [{ text, year: 3000 }, '/year'],
    [{ text, place: 'atlantis' }, '/place'],
    [{ text, colour: 'blue' }, '/colour'],
  ])('%o is refused at %s', async (body, pointer) => {
    const reply = await post('/v1/readings', body)
    expect(reply.status).toBe(400)
    expect(reply.body).toMatchObject({ type: '/problems/bad-body', errors: [{ pointer }] })
  })
})

describe('POST /v1/bake-plans', () => {
  const from = { shape: 'tart', size: { diameter: 70, depth: 25 }, minutes: 30, celsius: 175 }
  const to = { shape: 'pie', size: { diameter: 220, depth: 35 } }

  test('a larger dish takes longer', async () => {
    const { body } = await post('/v1/bake-plans', { food: 'custard', from, to })
    expect(body.minutes.nominal).toBeGreaterThan(30)
    expect(body.minutes.early).toBeLessThanOrEqual(body.minutes.nominal)
    expect(body.core.degF[0]).toBeGreaterThan(100)
    expect(body.sources.length).toBeGreaterThan(0)
  })

  test.each([
    [{ from, to }, 400, '/food'],
    [{ food: 'custard', from }, 400, '/to'],
    [{ food: 'granite', from, to }, 400, '/food'],
    [{ food: 'custard', from: { ...from, minutes: -1 }, to }, 400, '/from/minutes'],
    [{ food: 'custard', from, to: { shape: 'star', size: {} } }, 400, '/to/shape'],
    [{ food: 'custard', from, to: { shape: 'pie', size: { depth: 30 } } }, 400, '/to/size/diameter'],
    [{ food: 'custard', from: { ...from, celsius: 20 }, to }, 422, '/from/celsius'],
    [{ food: 'custard', from, to: { ...to, celsius: 1e9 } }, 400, '/to/celsius'],
  ])('%o is %i at %s', async (body, status, pointer) => {
    const reply = await post('/v1/bake-plans', body)
    expect(reply.body.errors?.[0].pointer).toBe(pointer)
    expect(reply.status).toBe(status)
  })
})

describe('POST /v1/brick-oven', () => {
  const bread = { name: 'bread', heat: 'as hot as for bread', minutes: 60 }
  const tarts = { name: 'tarts', heat: 'a moderate oven', minutes: 30 }

  test('the oven falls, and the hottest goes in first', async () => {
    const { body } = await post('/v1/brick-oven', { year: 1750, minutesAfter: 120, bakes: [tarts, bread] })
    const bests = body.curve.map(({ best }: Spread) => best)
    expect(bests).toEqual([...bests].sort((a, b) => b - a))
    expect(body.bakes.map(({ name }: { name: string }) => name)).toEqual(['bread', 'tarts'])
    expect(body.moment.hours).toBe(2)
    const hours = body.falls.map((fall: { hours: Spread }) => fall.hours.best)
    expect(hours).toEqual([...hours].sort((a, b) => a - b))
    expect(body.sources.length).toBeGreaterThan(0)
  })

  test('it is drawn for those who ask for a picture', async () => {
    const reply = await ask('/v1/brick-oven', {
      method: 'POST',
      headers: { 'content-type': 'application/json', accept: 'image/svg+xml' },
      body: JSON.stringify({ bakes: [bread, tarts] }),
    })
    expect(reply.headers.get('content-type')).toBe('image/svg+xml')
    expect(reply.body).toContain('tarts')
  })

  test.each([
    [{ start: 'a blue oven' }, 422, '/start'],
    [{ start: 1e6 }, 400, '/start'],
    [{ start: 10, ambient: 20 }, 400, '/start'],
    [{ bakes: [bread, { ...tarts, heat: 'a blue oven' }] }, 422, '/bakes/1/heat'],
    [{ bakes: [{ ...bread, name: ' ' }] }, 400, '/bakes/0/name'],
    [{ start: 150, bakes: [bread] }, 422, '/bakes'],
    [{ timeConstant: 0 }, 400, '/timeConstant'],
    [{ timeConstant: { low: 3, best: 2, high: 1 } }, 400, '/timeConstant'],
    [{ minutesAfter: 1e9 }, 400, '/minutesAfter'],
    [{ hours: 0 }, 400, '/hours'],
  ])('%o is %i at %s', async (body, status, pointer) => {
    const reply = await post('/v1/brick-oven', body)
    expect(reply.body.errors?.[0].pointer).toBe(pointer)
    expect(reply.status).toBe(status)
  })
})

describe('POST /v1/sheets', () => {
  const text =
    'Take a quart of cream, the yolks of viij eggs and a quarter of a pound of sugar. Bake it in a slack oven three quarters of an hour.'
  const request = { text, year: 1690, title: 'A cream tart', plan: { scale: '1/2' } }
  const as = (accept: string) =>
    ask('/v1/sheets', { method: 'POST', headers: { 'content-type': 'application/json', accept }, body: JSON.stringify(request) })

  test('a receipt becomes a sheet that is scaled to the plan', async () => {
    const { status, body } = await post('/v1/sheets', request)
    expect(status).toBe(200)
    expect(body.scale.factor).toBe(0.5)
    expect(body.lines).toHaveLength(3)
    for (const { start, end, phrase } of body.lines) expect(text.slice(start, end)).toBe(phrase)
    expect(body.text).toBe(text)
  })

  test.each([
    ['text/markdown', /^# A cream tart/, 'text/markdown; charset=utf-8'],
    ['text/html', /^<!DOCTYPE html>/i, 'text/html; charset=utf-8'],
    ['text/csv', /\r\n/, 'text/csv; charset=utf-8'],
    ['application/x-bibtex', /^@\w+\{/, 'application/x-bibtex'],
  ])('as %s', async (accept, form, type) => {
    const { status, headers, body } = await as(accept)
    expect(status).toBe(200)
    expect(headers.get('content-type')).toBe(type)
    expect(body).toMatch(form)
  })

  test('as JSON-LD it is a Recipe of schema.org', async () => {
    const { headers, body } = await as('application/ld+json')
    expect(headers.get('content-type')).toBe('application/ld+json')
    expect(body).toMatchObject({ '@context': 'https://schema.org', '@type': 'Recipe', name: 'A cream tart' })
  })

  test('the page may show its style and do nothing else', async () => {
    expect((await as('text/html')).headers.get('content-security-policy')).toMatch(/^default-src 'none'; style-src 'unsafe-inline'/)
  })

  test.each([
    [{ ...request, text: ' ' }, 400, '/text'],
    [{ ...request, plan: { scale: 0 } }, 400, '/plan/scale'],
    [{ ...request, plan: { scale: 1, guests: 4 } }, 400, '/plan/guests'],
    [{ ...request, plan: { units: 'cubits' } }, 400, '/plan/units'],
    [{ ...request, plan: { limit: { thing: 'cream', amount: 1, unit: 'cubit' } } }, 400, '/plan/limit/unit'],
    [{ ...request, plan: { dish: { shape: 'round', diameter: 5, depth: 30 } } }, 400, '/plan/dish/diameter'],
    [{ ...request, text: 'a pint of cream '.repeat(5000) }, 400, '/text'],
  ])('%#: %i at %s', async (body, status, pointer) => {
    const reply = await post('/v1/sheets', body)
    expect(reply.body.errors?.[0].pointer).toBe(pointer)
    expect(reply.status).toBe(status)
  })
})

describe('NDJSON', () => {
  const stream = async (chunks: readonly (string | Uint8Array)[]) => {
    const encoder = new TextEncoder()
    const body = new ReadableStream({
      start(controller) {
        for (const chunk of chunks) controller.enqueue(typeof chunk === 'string' ? encoder.encode(chunk) : chunk)
        controller.close()
      },
    })
    const init = { method: 'POST', headers: { 'content-type': 'application/x-ndjson' }, body, duplex: 'half' } as RequestInit
    const { status, body: text } = await ask('/v1/convert', init)
    expect(status).toBe(200)
    return text.trim() === ''
      ? []
      : text
          .trim()
          .split('\n')
          .map((line: string) => JSON.parse(line))
  }

  test('a line may come in pieces, between the bytes of a letter', async () => {
    const line = new TextEncoder().encode('{"phrase":"½ pint of cream","year":1690}\n')
    const answers = await stream([...line].map((byte) => Uint8Array.of(byte)))
    expect(answers).toHaveLength(1)
    expect(answers[0].phrase).toBe('½ pint of cream')
  })

  test('whatever a line holds, the next one is answered', async () => {
    const good = '{"phrase":"a pint of ale","year":1690}'
    const bad = [
      'nonsense',
      '{"phrase":',
      'null',
      '[]',
      '7',
      '{"phrase":null}',
      '{"phrase":"x","y":1}',
      '['.repeat(5000),
      `{"phrase":"${'x'.repeat(70_000)}"}`,
      '\u0000',
      '{"phrase":"0 pints"}',
    ]
    const answers = await stream([bad.flatMap((line) => [line, good]).join('\n')])
    expect(answers).toHaveLength(bad.length * 2)
    for (const [i, answer] of answers.entries()) {
      if (i % 2 === 1) expect(answer.reading.measure).toBe('pint')
      else expect(answer).toMatchObject({ line: i + 1, status: expect.any(Number), type: expect.stringMatching(/^\/problems\//) })
    }
  })

  test('an empty stream has an empty answer, and empty lines are passed over but counted', async () => {
    expect(await stream([])).toEqual([])
    const answers = await stream(['\n\n  \n{"phrase":7}\r\n\n'])
    expect(answers).toHaveLength(1)
    expect(answers[0].line).toBe(4)
  })
})
