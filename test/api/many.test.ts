/** Many questions at once: arrays, and streams of NDJSON; what happens to one may not happen to the rest. */
import { createApp } from '@pottle/api'
import { describe, expect, test, vi } from 'vitest'
import { ask, post } from './ask.js'

/** A phrase that finds a fault of ours, since no real one is known to. */
const cursed = 'a cursed pint'

vi.mock('@pottle/core', async (original) => {
  const core = await original<typeof import('@pottle/core')>()
  return {
    ...core,
    convert: (phrase: string, options: object) => {
      if (phrase === 'a cursed pint') throw new TypeError('the cellar is flooded')
      return core.convert(phrase, options)
    },
  }
})

const ndjson = 'application/x-ndjson'
const pint = '{"phrase":"a pint of cream","year":1690}'
const parsed = (text: string) =>
  text
    .trim()
    .split('\n')
    .map((line) => JSON.parse(line))

describe('an array', () => {
  test('gives an array, and one that fails does not spoil the rest', async () => {
    const { status, body } = await post('/v1/convert', [
      { phrase: 'a pint of cream', year: 1690 },
      { phrase: 7 },
      { phrase: 'a quart of ale', year: 3000 },
    ])
    expect(status).toBe(200)
    expect(body[0].reading.measure).toBe('pint')
    expect(body[1]).toMatchObject({ status: 400, index: 1, errors: [{ pointer: '/phrase' }] })
    expect(body[2]).toMatchObject({ status: 400, index: 2, errors: [{ pointer: '/year' }] })
  })

  test('gives lines where lines are asked for', async () => {
    const headers = { 'content-type': 'application/json', accept: ndjson }
    const reply = await ask('/v1/convert', { method: 'POST', headers, body: `[${pint},{"phrase":7}]` })
    expect(reply.headers.get('content-type')).toBe(ndjson)
    expect(parsed(reply.body)).toEqual([
      expect.objectContaining({ phrase: 'a pint of cream' }),
      expect.objectContaining({ status: 400, index: 1 }),
    ])
  })

  test('more than a thousand at a time are refused', async () => {
    const { status, body } = await post('/v1/convert', `[${Array.from({ length: 1001 }, () => pint).join(',')}]`)
    expect(status).toBe(400)
    expect(body.errors[0].detail).toMatch(/1,000/)
  })
})

describe('a stream', () => {
  test('gives a line for a line, with a problem in the place of a bad one', async () => {
    const lines = [pint, '', '{"phrase":', '{"phrase":"a quart of ale","year":1690}', '7', '{"phrase":"a pint","extra":1}']
    const { status, headers, body } = await post('/v1/convert', lines.join('\n'), ndjson)
    expect(status).toBe(200)
    expect(headers.get('content-type')).toBe(ndjson)
    const answers = parsed(body)
    expect(answers).toHaveLength(5)
    expect(answers[1]).toMatchObject({ line: 3, status: 400 })
    expect(answers[2].reading.measure).toBe('quart')
    expect(answers[3]).toMatchObject({ line: 5, status: 400, errors: [{ pointer: '' }] })
    expect(answers[4]).toMatchObject({ line: 6, status: 400, errors: [{ pointer: '/extra' }] })
  })

  test.each([
    ['ends of lines from other systems', `${pint}\r\n${pint}\r\n`, 2],
    ['no end of the last line', `${pint}\n${pint}`, 2],
    ['nothing', '', 0],
    ['nothing but empty lines', '\n\r\n  \n', 0],
  ])('may have %s', async (_, text, count) => {
    const { status, body } = await post('/v1/convert', text, ndjson)
    expect(status).toBe(200)
    expect(body.split('\n').filter(Boolean)).toHaveLength(count)
  })

  test('a line that is too long is passed over to its end', async () => {
    const { body } = await post('/v1/convert', `{"phrase":"${'x'.repeat(200_000)}"}\n${pint}`, ndjson)
    const answers = parsed(body)
    expect(answers[0]).toMatchObject({ line: 1, status: 413 })
    expect(answers[1].reading.measure).toBe('pint')
  })

  test('letters that are cut in two between pieces are whole again', async () => {
    const bytes = new TextEncoder().encode('{"phrase":"½ pint of cream","year":1690}\n')
    for (let cut = 11; cut < 16; cut++) {
      const body = new ReadableStream<Uint8Array>({
        start(controller) {
          for (const part of [bytes.slice(0, cut), bytes.slice(cut)]) controller.enqueue(part)
          controller.close()
        },
      })
      const init = { method: 'POST', headers: { 'content-type': ndjson }, body, duplex: 'half' } as RequestInit
      expect((await ask('/v1/convert', init)).body).toContain('"amount":{"low":0.5,"high":0.5}')
    }
  })

  test('is refused where its answers are', async () => {
    const reply = await ask('/v1/convert', { method: 'POST', headers: { 'content-type': ndjson, accept: 'application/json' }, body: pint })
    expect([reply.status, reply.body.type]).toEqual([406, '/problems/not-acceptable'])
  })

  test('lets others have their turn, though all of it is there at once', { timeout: 30_000 }, async () => {
    let turns = 0
    const counting = setInterval(() => turns++, 1)
    const text = Array.from({ length: 1500 }, (_, i) => `{"phrase":"${i} pints of cream","year":${1600 + (i % 200)}}`).join('\n')
    const { body } = await post('/v1/convert', text, ndjson)
    clearInterval(counting)
    expect(parsed(body)).toHaveLength(1500)
    expect(turns).toBeGreaterThan(1)
  })
})

describe('a fault of ours in one of many', () => {
  const told = { type: '/problems/internal', status: 500 }

  test.each([
    ['an array', 'application/json', `[${pint},{"phrase":"${cursed}"},${pint}]`, { ...told, index: 1 }],
    ['a stream', ndjson, `${pint}\n{"phrase":"${cursed}"}\n${pint}`, { ...told, line: 2 }],
  ])('of %s spoils nothing but itself, and is logged', async (_, type, body, problem) => {
    const faults: { fault: string }[] = []
    const app = createApp({ logFault: (entry) => faults.push(entry) })
    const reply = await app.request('/v1/convert', { method: 'POST', headers: { 'content-type': type }, body })
    const text = await reply.text()
    const answers = type === ndjson ? parsed(text) : JSON.parse(text)
    expect(answers.map(({ phrase }: { phrase?: string }) => phrase)).toEqual(['a pint of cream', undefined, 'a pint of cream'])
    expect(answers[1]).toMatchObject(problem)
    expect(text).not.toContain('cellar')
    expect(faults).toEqual([expect.objectContaining({ route: '/v1/convert', fault: expect.stringContaining('the cellar is flooded') })])
  })
})

describe('a short question', () => {
  test.each([
    [
      'of many unknown fields',
      '/v1/convert',
      { phrase: 'a pint', ...Object.fromEntries(Array.from({ length: 20_000 }, (_, i) => [`f${i}`, 1])) },
    ],
    [
      'of many choices',
      '/v1/sheets',
      {
        text: 'a pint of cream',
        plan: { fixed: { standards: Object.fromEntries(Array.from({ length: 20_000 }, (_, i) => [`m${i}`, 'wine'])) } },
      },
    ],
  ])('%s has no long answer', async (_, path, asked) => {
    const { status, body } = await post(path, asked)
    expect(status).toBe(400)
    expect(body.errors.length).toBeLessThanOrEqual(50)
    expect(JSON.stringify(body).length).toBeLessThan(10_000)
  })
})
