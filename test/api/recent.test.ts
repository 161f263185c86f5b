import { expect, test } from 'vitest'
import { keepRecent } from '../../apps/api/src/http/recent.js'

const long = new Uint8Array(90_000)

test('what was asked lately is kept, and what was not is gone', () => {
  const recent = keepRecent()
  for (let i = 0; i < 170; i++) recent.keep(`q${i}`, long)
  expect(recent.get('q0')).toBe(long)
  for (let i = 170; i < 190; i++) recent.keep(`q${i}`, long)
  // A generation holds 88 of these; the first of all was asked for again when it was old, the second was not.
  expect(recent.get('q0')).toBe(long)
  expect(recent.get('q1')).toBeUndefined()
  expect(recent.get('q189')).toBe(long)
})

test('an answer that would push out all others is not kept', () => {
  const recent = keepRecent()
  recent.keep('long', new Uint8Array(200_000))
  expect(recent.get('long')).toBeUndefined()
})

test('keeping the same again changes nothing', () => {
  const recent = keepRecent()
  for (let i = 0; i < 1000; i++) recent.keep('q', new Uint8Array(90_000))
  recent.keep('other', new Uint8Array(1))
  expect([recent.get('q')?.length, recent.get('other')?.length]).toEqual([90_000, 1])
})
