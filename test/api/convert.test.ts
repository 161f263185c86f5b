import { describe, expect, test } from 'vitest'
import { ask, post } from './ask.js'

const query = (fields: Record<string, string>): string => `/v1/convert?${new URLSearchParams(fields)}`

describe('GET /v1/convert', () => {
  test('answers a pottle of cream with value, senses, steps and sources', async () => {
    const { status, body } = await ask(query({ phrase: 'a pottle of cream', year: '1690', place: 'london' }))
    expect(status).toBe(200)
    expect(body).toMatchObject({
      phrase: 'a pottle of cream',
      setting: { year: 1690, place: 'london' },
      reading: { kind: 'measured', amount: { low: 1, high: 1 }, measure: 'pottle', thing: 'cream', qualifier: null, eggs: null },
      value: { quantity: 'volume', unit: 'ml', coverage: 0.9 },
      dataset: expect.stringMatching(/^\d{4}\.\d+\.\d+$/),
    })
    expect(body.value.low).toBeLessThan(body.value.best)
    expect(body.value.best).toBeLessThan(body.value.high)
    const wine = body.senses.find((sense: { id: string }) => sense.id === 'pottle.wine')
    // 5 Anne c. 27 s. 17: the wine gallon of 231 cubic inches; a pottle is half of it.
    expect(wine.exact).toBe('1892.705892')
    expect(wine.steps.every((step: { sources: string[] }) => step.sources.length > 0)).toBe(true)
    expect(body.senses.reduce((sum: number, sense: { likelihood: number }) => sum + sense.likelihood, 0)).toBeCloseTo(1, 3)
    expect(body.modern.map((value: { unit: string }) => value.unit)).toEqual(expect.arrayContaining(['l', 'cup-us', 'pint-imp', 'g', 'oz']))
  })

  test('gives only the unit asked for, through the density where it must', async () => {
    const { body } = await ask(query({ phrase: 'a pint of cream', year: '1750', to: 'g' }))
    expect(body.value).toMatchObject({ quantity: 'mass', unit: 'g' })
    expect(body.modern.map((value: { unit: string }) => value.unit)).toEqual(['g'])
  })

  test('lets the caller insist on a standard', async () => {
    const { body } = await ask(query({ phrase: 'a pint of cream', year: '1690', standard: 'ale' }))
    expect(body.senses).toHaveLength(1)
    expect(body.senses[0].exact).toBe('577.644006') // 282 cubic inches an ale gallon: 11 Will. III c. 15
  })
})

describe('what can’t be answered says why', () => {
  test.each([
    [{}, 400, 'phrase'],
    [{ phrase: '' }, 400, 'phrase'],
    [{ phrase: 'a '.repeat(5000) }, 400, 'phrase'],
    [{ phrase: 'a pint of cream', year: '3000' }, 400, 'year'],
    [{ phrase: 'a pint of cream', year: 'MDCXC' }, 400, 'year'],
    [{ phrase: 'a pint of cream', place: 'atlantis' }, 400, 'place'],
    [{ phrase: 'a pint of cream', coverage: '1.5' }, 400, 'coverage'],
    [{ phrase: 'a pint of cream', coverage: 'most' }, 400, 'coverage'],
    [{ phrase: 'a pint of cream', to: 'furlong' }, 400, 'to'],
    [{ phrase: 'a pint of cream', colour: 'blue' }, 400, 'colour'],
    [{ phrase: 'a pint of gravel', to: 'g' }, 422, 'to'],
    [{ phrase: 'a pint of cream', to: 'mm' }, 422, 'to'],
    [{ phrase: 'a pint of cream', standard: 'cubit' }, 422, 'standard'],
    [{ phrase: '0 pints of cream' }, 422, 'phrase'],
    [{ phrase: '9999999999 pints of cream' }, 422, 'phrase'],
    [{ phrase: 'once upon a time' }, 422, 'phrase'],
  ] as [Record<string, string>, number, string][])('%o is %i and names %s', async (fields, status, parameter) => {
    const reply = await ask(query(fields))
    expect(reply.status).toBe(status)
    expect(reply.headers.get('content-type')).toBe('application/problem+json')
    expect(reply.body.errors.map((error: { parameter: string }) => error.parameter)).toContain(parameter)
    expect(reply.body).toMatchObject({ status, type: expect.stringMatching(/^\/problems\//), title: expect.any(String) })
  })

  test('names every parameter that is wrong at once', async () => {
    const { body } = await ask(query({ phrase: 'a pint of cream', year: '3000', place: 'atlantis', to: 'furlong' }))
    expect(body.errors.map((error: { parameter: string }) => error.parameter).sort()).toEqual(['place', 'to', 'year'])
  })

  test('refuses a parameter given twice', async () => {
    const { status, body } = await ask('/v1/convert?phrase=a+pint&phrase=a+quart')
    expect(status).toBe(400)
    expect(body.errors[0]).toMatchObject({ parameter: 'phrase' })
  })

  test('says which words were understood and which measures have names like the others', async () => {
    const { status, body } = await ask(query({ phrase: 'two pottals of cream' }))
    if (status === 422) expect(body.nearest).toContain('pottle')
    else expect(body.reading.measure).toBe('pottle')
  })
})

describe('POST /v1/convert', () => {
  test('an object gives an answer', async () => {
    const { status, body } = await post('/v1/convert', { phrase: 'a pottle of cream', year: 1690 })
    expect(status).toBe(200)
    expect(body.reading.measure).toBe('pottle')
  })

  test.each([
    ['{"phrase":', 400, 'application/json'],
    ['[[[['.repeat(2000), 400, 'application/json'],
    ['null', 400, 'application/json'],
    ['"a pint"', 400, 'application/json'],
    ['{"phrase":"a pint of cream","extra":1}', 400, 'application/json'],
    [`{"phrase":"${'x'.repeat(3_000_000)}"}`, 413, 'application/json'],
    ['phrase=a+pint', 415, 'application/x-www-form-urlencoded'],
  ])('%.30s is %i', async (body, status, type) => {
    const reply = await post('/v1/convert', body, type)
    expect(reply.status).toBe(status)
    expect(reply.headers.get('content-type')).toBe('application/problem+json')
  })
})
