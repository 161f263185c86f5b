import { expect, test } from 'vitest'
import { keepRecent, type Recent } from '../../apps/api/src/http/recent.js'

const long = new Uint8Array(90_000)

/** Asks what was not kept, as a server does: an answer is made and offered. */
function ask(recent: Recent, asked: string, answer = long): void {
  if (recent.get(asked) === undefined) recent.keep(asked, answer)
}

test('an answer is kept once it was asked for a second time', () => {
  const recent = keepRecent()
  ask(recent, 'q')
  expect(recent.get('q')).toBeUndefined()
  ask(recent, 'q')
  expect(recent.get('q')).toBe(long)
})

test('what was asked lately is kept, and what was not is gone', () => {
  const recent = keepRecent()
  const askTwice = (from: number, to: number) => {
    for (let i = from; i < to; i++) for (const _ of [1, 2]) ask(recent, `q${i}`)
  }
  askTwice(0, 170)
  expect(recent.get('q0')).toBe(long)
  askTwice(170, 190)
  // A generation holds 88 of these; the first of all was asked for again when it was old, the second was not.
  expect(recent.get('q0')).toBe(long)
  expect(recent.get('q1')).toBeUndefined()
  expect(recent.get('q189')).toBe(long)
})

test('an answer that would push out all others is not kept', () => {
  const recent = keepRecent()
  for (const _ of [1, 2, 3]) ask(recent, 'long', new Uint8Array(200_000))
  expect(recent.get('long')).toBeUndefined()
})

test('a million questions that are asked once leave no trace but their hashes', () => {
  const recent = keepRecent()
  for (const _ of [1, 2]) ask(recent, 'q')
  let kept = 0
  for (let i = 0; i < 1_000_000; i++) {
    ask(recent, `/v1/convert?phrase=${i}+pints`)
    if (recent.get(`/v1/convert?phrase=${i}+pints`) !== undefined) kept++
  }
  expect(kept).toBeLessThan(100)
  expect(recent.get('q')).toBe(long)
})
