/** The short form of an answer: it says what the whole one says, or nothing. */
import { describe, expect, test } from 'vitest'
import { ask, post } from './ask.js'

const parts = ['phrase', 'setting', 'value', 'text', 'notes', 'cautions', 'dataset']
const queries = [
  { phrase: 'a pottle of cream', year: '1690', place: 'london' },
  { phrase: 'half a pound of butter', to: 'cup-us' },
  { phrase: 'xij eggs', year: '1750', coverage: '0.5' },
  { phrase: 'an ounce of laurel leaves', year: '1800' },
  { phrase: 'a slack oven', year: '1690' },
].map((fields) => `?${new URLSearchParams(fields)}`)

const pick = (answer: Record<string, unknown>): object => Object.fromEntries(parts.map((name) => [name, answer[name]]))

describe('/v1/values', () => {
  test.each(queries)('is a part of the answer of /v1/convert: %s', async (query) => {
    const [short, whole] = [await ask(`/v1/values${query}`), await ask(`/v1/convert${query}`)]
    expect([short.status, whole.status]).toEqual([200, 200])
    expect(short.body).toEqual(pick(whole.body))
  })

  test('takes a tenth of the bytes, on the whole', async () => {
    const lengths = async (path: string) => Promise.all(queries.map(async (query) => JSON.stringify((await ask(path + query)).body).length))
    const sum = (all: readonly number[]) => all.reduce((one, other) => one + other, 0)
    expect(sum(await lengths('/v1/values')) / sum(await lengths('/v1/convert'))).toBeLessThan(0.1)
  })

  test('keeps the cautions: whoever asks in short is to be warned all the same', async () => {
    const { body } = await ask('/v1/values?phrase=an+ounce+of+laurel+leaves&year=1800')
    expect(body.cautions.map(({ id }: { id: string }) => id)).toContain('cherry-laurel')
  })

  test('takes many at once, and fails one by one', async () => {
    const asked = [{ phrase: 'a pint of cream', year: 1690 }, { phrase: 'a prottle' }, { phrase: 'a quart of ale', year: 3000 }]
    const [short, whole] = [await post('/v1/values', asked), await post('/v1/convert', asked)]
    expect(short.body).toEqual([pick(whole.body[0]), whole.body[1], whole.body[2]])
    const lines = await post('/v1/values', asked.map((one) => JSON.stringify(one)).join('\n'), 'application/x-ndjson')
    const told = lines.body
      .trim()
      .split('\n')
      .map((line: string) => JSON.parse(line))
    expect(told.map(({ status, text }: { status?: number; text?: string }) => status ?? text)).toEqual([whole.body[0].text, 422, 400])
  })
})
