import { expect, test } from 'vitest'
import { keepRecent } from '../../apps/api/src/http/recent.js'

test('what was asked lately is kept, and what was not asked for the longest time goes first', () => {
  const recent = keepRecent()
  const answer = 'x'.repeat(90_000)
  for (let i = 0; i < 170; i++) recent.keep(`q${i}`, answer)
  expect(recent.get('q0')).toBe(answer)
  for (let i = 170; i < 190; i++) recent.keep(`q${i}`, answer)
  // 16 million characters hold some 177 of these; the first was asked for again, so that the ones after it had to go.
  expect(recent.get('q0')).toBe(answer)
  expect(recent.get('q1')).toBeUndefined()
  expect(recent.get('q189')).toBe(answer)
})

test('an answer that would push out all others is not kept', () => {
  const recent = keepRecent()
  recent.keep('long', 'x'.repeat(200_000))
  expect(recent.get('long')).toBeUndefined()
})

test('keeping the same again changes nothing', () => {
  const recent = keepRecent()
  for (let i = 0; i < 1000; i++) recent.keep('q', 'x'.repeat(90_000))
  recent.keep('other', 'y')
  expect([recent.get('q')?.length, recent.get('other')]).toEqual([90_000, 'y'])
})
