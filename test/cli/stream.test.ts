/** The stream of NDJSON: a line for a line, in order, in constant memory, whatever the lines hold and however they arrive. */
import { PassThrough, Readable, Writable } from 'node:stream'
import * as core from '@pottle/core'
import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { run } from '../../apps/cli/src/run.js'
import { linesOf } from '../../apps/cli/src/stream/lines.js'
import { startProgress } from '../../apps/cli/src/stream/progress.js'
import { post } from '../api/ask.js'
import { ask } from './ask.js'

const answered = (out: string): readonly Record<string, unknown>[] =>
  out
    .split('\n')
    .slice(0, -1)
    .map((line) => JSON.parse(line))
const plain = (value: unknown): unknown => JSON.parse(JSON.stringify(value))
const stream = async (stdin: string | Uint8Array, ...args: string[]) => ask(['stream', ...args], { stdin })

async function collect<Item>(items: AsyncIterable<Item>): Promise<readonly Item[]> {
  const all: Item[] = []
  for await (const item of items) all.push(item)
  return all
}

describe('a line for a line', () => {
  test('phrases and receipts, in their order, as the library answers them', async () => {
    const plan = { scale: '1/2' }
    const lines = [
      { phrase: 'a pottle of cream', year: 1690 },
      { text: 'Take a pint of cream and two eggs', year: 1690, title: 'A Cream', plan },
      { phrase: 'a peck of flour', to: 'g', coverage: 0.5, place: 'london', standard: 'corn' },
      { phrase: 'a pint', thing: 'cream', year: null },
    ]
    const { out, err, exit } = await stream(lines.map((line) => `${JSON.stringify(line)}\n`).join(''))
    expect({ err, exit }).toEqual({ err: '', exit: 0 })
    expect(answered(out)).toEqual([
      plain(core.convert('a pottle of cream', { year: 1690 })),
      plain(core.workSheet('Take a pint of cream and two eggs', { year: 1690, title: 'A Cream', plan })),
      plain(core.convert('a peck of flour', { to: 'g', coverage: 0.5, place: 'london', standard: 'corn' })),
      plain(core.convert('a pint', { thing: 'cream' })),
    ])
  })

  test('with a year and a place for lines that name none', async () => {
    const { out } = await stream(
      '{"phrase":"a pint of cream"}\n{"phrase":"a pint of cream","year":1850}\n{"text":"a pint of cream"}',
      '-y',
      '1690',
      '-p',
      'london',
      '-f',
      'setting',
    )
    expect(answered(out)).toEqual([1690, 1850, 1690].map((year) => ({ setting: { year, place: 'london' } })))
  })

  test('only the fields that are asked for, in their order', async () => {
    const { out } = await stream('{"phrase":"a pint of cream","year":1690}\n{"text":"a pint of cream"}\n', '--fields', 'text,value')
    const [answer, sheet] = answered(out)
    expect(Object.keys(answer!)).toEqual(['text', 'value'])
    expect(sheet).toEqual({ text: 'a pint of cream' })
  })

  test('an empty stream gives nothing', async () => expect(await stream('')).toEqual({ out: '', err: '', exit: 0 }))
})

describe('a bad line', () => {
  const bad: readonly (readonly [string, string | Uint8Array, string, string])[] = [
    ['no JSON', 'a pottle of cream', 'bad-line', ''],
    ['no object', '["a pottle of cream"]', 'bad-line', ''],
    ['null', 'null', 'bad-line', ''],
    ['no phrase', '{}', 'bad-line', '/phrase'],
    ['an empty phrase', '{"phrase":""}', 'bad-line', '/phrase'],
    ['a number for a phrase', '{"phrase":5}', 'bad-line', '/phrase'],
    ['a number for a text', '{"text":5}', 'bad-line', '/text'],
    ['both', '{"phrase":"a pint","text":"a pint"}', 'bad-line', '/text'],
    ['an unknown field', '{"phrase":"a pint","yaer":1690}', 'bad-line', '/yaer'],
    ['a year out of range', '{"phrase":"a pint","year":3000}', 'bad-line', '/year'],
    ['a year of another type', '{"phrase":"a pint","year":{}}', 'bad-line', '/year'],
    ['a plan that is none', '{"text":"a pint","plan":{"scale":0}}', 'bad-line', '/plan/scale'],
    ['words that are no measure', '{"phrase":"zzyzx"}', 'unreadable', '/phrase'],
    ['a question without an answer', '{"phrase":"a pint","to":"mass"}', 'no-answer', '/to'],
    ['bytes that are no UTF-8', new Uint8Array([0x22, 0xe9, 0x22]), 'bad-line', ''],
  ]

  test.each(bad)('%s: gives a problem with its number, and the rest goes on', async (_, line, type, pointer) => {
    const good = '{"phrase":"a pint of cream","year":1690}\n'
    const { out, exit, err } = await stream(Buffer.concat([Buffer.from(good), Buffer.from(line), Buffer.from(`\n${good}`)]), '-f', 'phrase')
    expect({ exit, err }).toEqual({ exit: 1, err: '' })
    const [before, problem, after] = answered(out)
    expect([before, after]).toEqual([{ phrase: 'a pint of cream' }, { phrase: 'a pint of cream' }])
    expect(problem).toMatchObject({ type: `/problems/${type}`, line: 2, errors: [{ pointer, detail: expect.any(String) }] })
    expect(problem!.detail).not.toMatch(/^:/)
  })

  test('too long to be read: is passed over in flat memory', async () => {
    const long = `{"phrase":"${'a'.repeat(1024 * 1024)}"}`
    const { out } = await stream(`${long}\n{"phrase":"a pint of cream"}\n${long}`, '-f', 'phrase')
    expect(answered(out)).toEqual([
      expect.objectContaining({ type: '/problems/too-long', line: 1 }),
      { phrase: 'a pint of cream' },
      expect.objectContaining({ type: '/problems/too-long', line: 3 }),
    ])
  })

  test('is numbered from where the file is cut; empty lines are counted but not answered', async () => {
    const { out } = await stream('\n  \r\n{}\n\n{}', '--first-line', '1001')
    expect(answered(out).map(({ line }) => line)).toEqual([1003, 1005])
  })

  test('says what the API says of the same line', async () => {
    const lines = bad.filter(([, , type]) => type !== 'bad-line')
    expect(lines.length).toBeGreaterThan(1)
    const text = lines.map(([, line]) => `${line}\n`).join('')
    const ours = answered((await stream(text)).out)
    const theirs = answered((await post('/v1/convert', text, 'application/x-ndjson')).body).map(({ status: _, ...rest }) => rest)
    expect(ours).toEqual(theirs)
  })
})

describe('it does not matter how the bytes arrive', () => {
  const text = Buffer.from('{"phrase":"a pint of cream"}\r\n\n{"phrase":"£"}\n{}\n{"phrase":"½ a peck of flour"}')

  async function* inPieces(cuts: readonly number[]) {
    const places = [0, ...[...cuts].sort((a, b) => a - b), text.length]
    for (const [i, end] of places.slice(1).entries()) yield text.subarray(places[i], end)
  }

  test('to the lines that they are cut into', async () => {
    const expected = text.toString().split('\n')
    await fc.assert(
      fc.asyncProperty(fc.array(fc.nat(text.length), { maxLength: 12 }), async (cuts) => {
        const lines = (await collect(linesOf(inPieces(cuts), 1, 1000))).flat()
        expect(lines.map(({ bytes }) => Buffer.from(bytes!).toString())).toEqual(expected)
        expect(lines.map(({ number }) => number)).toEqual([1, 2, 3, 4, 5])
      }),
    )
  })

  test('to the answers', async () => {
    const byteByByte = inPieces(Array.from({ length: text.length }, (_, i) => i))
    expect(await ask(['stream', '-f', 'phrase'], { stdin: byteByByte })).toEqual(await stream(text, '-f', 'phrase'))
  })
})

describe('a reader', () => {
  const quiet = () => Object.assign(new PassThrough(), { isTTY: false })

  test('that is slow is waited for', async () => {
    let asked = 0
    const chunk = Buffer.from('{"phrase":"a pottle of cream","year":1690}\n'.repeat(100))
    const endless = new Readable({
      highWaterMark: 1,
      read() {
        asked++
        this.push(chunk)
      },
    })
    const stuck = new Writable({ write: () => {} })
    const stopping = new AbortController()
    const running = run(['stream'], { stdin: endless, stdout: stuck, stderr: quiet(), env: {}, signal: stopping.signal })
    await new Promise((resolve) => setTimeout(resolve, 300))
    expect(asked).toBeLessThan(10)
    stopping.abort()
    stuck.destroy(Object.assign(new Error('nobody reads'), { code: 'EPIPE' }))
    expect(await running).toBe(130)
  })

  test('that asks line by line is answered line by line', async () => {
    const [stdin, stdout] = [quiet(), quiet()]
    const running = run(['stream', '-f', 'phrase'], { stdin, stdout, stderr: quiet(), env: {}, signal: new AbortController().signal })
    const next = () => new Promise<string>((resolve) => stdout.once('data', (data) => resolve(String(data))))
    for (const phrase of ['a pint', 'a quart', 'a gill']) {
      const reply = next()
      stdin.write(`{"phrase":"${phrase}"}\n`)
      expect(JSON.parse(await reply)).toEqual({ phrase })
    }
    stdin.end()
    expect(await running).toBe(0)
  })

  test('that goes away ends it without a word', async () => {
    const stdout = new Writable({ write: (_, __, done) => done(Object.assign(new Error('write EPIPE'), { code: 'EPIPE' })) })
    stdout.on('error', () => {})
    const stderr = quiet()
    const stdin = Readable.from([Buffer.from('{"phrase":"a pint"}\n'), Buffer.from('{"phrase":"a quart"}\n')])
    expect(await run(['stream'], { stdin, stdout, stderr, env: {}, signal: new AbortController().signal })).toBe(0)
    expect(stderr.read()).toBeNull()
  })
})

describe('how far it is', () => {
  const lines = '{"phrase":"a pint"}\n{}\n'

  test('is told on a terminal where the answers go elsewhere, and only there', async () => {
    const told = await ask(['stream', '-f', 'phrase'], { stdin: lines, tty: { err: true } })
    expect(told.err).toMatch(/2 lines, 1 failed\n$/)
    for (const [tty, env] of [
      [{}, {}],
      [{ out: true, err: true }, {}],
      [{ err: true }, { TERM: 'dumb' }],
    ] as const)
      expect((await ask(['stream', '-f', 'phrase'], { stdin: lines, tty, env })).err).toBe('')
  })

  test('is told four times a second at most, with the pace', () => {
    let now = 0
    const written: string[] = []
    const stderr = Object.assign(
      new PassThrough().on('data', (chunk) => written.push(String(chunk))),
      { isTTY: true },
    )
    const progress = startProgress(
      { stdin: Readable.from([]), stdout: quietOut(), stderr, env: {}, signal: new AbortController().signal },
      () => now,
    )
    for (; now < 2000; now += 50) progress.show({ lines: now, failed: 3 })
    progress.end({ lines: 12_000, failed: 1234 })
    expect(written.length).toBeLessThanOrEqual(9)
    expect(written.at(-1)).toContain('12,000 lines, 1,234 failed, 6,000 a second\n')
  })

  test('what to type is told where the questions come from a terminal', async () => {
    expect((await ask(['stream'], { tty: { in: true } })).err).toMatch(/^Type one question a line, such as \{"phrase"/)
  })
})

function quietOut() {
  return Object.assign(new PassThrough(), { isTTY: false })
}
