/** What is remembered of one phrase must not leak into another that only looks like it. */
import { convert } from '@pottle/core'
import { expect, test } from 'vitest'

const alike: readonly (readonly [string, string])[] = [
  ['ten eggs', 'six eggs'],
  ['ten eggs, leaving out four of the whites', 'ten eggs, leaving out two of the whites'],
  ['the yolks of four eggs', 'the whites of four eggs'],
  ['a penny white loaf', 'a penny brown loaf'],
  ['a wine pint of milk', 'an ale pint of milk'],
  ['two or three pints of milk', 'two or six pints of milk'],
  ['the juice of a lemon', 'the peel of a lemon'],
]

test.each(alike)('%s is not %s', (one, other) => {
  const setting = { year: 1750 }
  const first = convert(one, setting).value
  const second = convert(other, setting).value
  expect([second.low, second.best, second.high]).not.toEqual([first.low, first.best, first.high])
  // Asked again, now from memory, each is what it was.
  expect(convert(one, setting).value).toEqual(first)
  expect(convert(other, setting).value).toEqual(second)
})

test('what describes a thing is part of the question', () => {
  const grams = (phrase: string): number => convert(phrase, { year: 1750, to: 'g' }).value.best
  expect(grams('a pint of brown sugar')).not.toBe(grams('a pint of loaf sugar'))
  expect(grams('a pint of brown sugar')).toBe(grams('a pint of brown sugar'))
})

test('the same phrase in another year, place or coverage is another question', () => {
  const asked = [{ year: 1750 }, { year: 1850 }, { year: 1750, place: 'scotland' }, { year: 1750, coverage: 0.5 }]
  const bands = asked.map((setting) => JSON.stringify(convert('a pint of milk', setting).value))
  expect(new Set(bands).size).toBe(asked.length)
})

test('the same phrase is answered by what is asked of it, however often it was asked of otherwise', () => {
  const wishes = [{ to: 'g' }, { to: 'oz' }, { to: 'mass' }, { thing: 'honey', to: 'ml' }, { standard: 'ale' }, { coverage: 0.5 }, {}]
  const ask = (wish: object) => JSON.stringify(convert('a pint of milk', { year: 1750, ...wish }))
  const first = wishes.map(ask)
  expect(new Set(first).size).toBe(wishes.length)
  expect(wishes.map(ask)).toEqual(first)
  expect([...wishes].reverse().map(ask)).toEqual([...first].reverse())
})
