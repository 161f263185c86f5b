import { readPhrase, readReceipt } from '@core/reading'
import { workSheet } from '@core/sheet'
import { convert, PottleError } from '@pottle/core'
import { expect, test } from 'vitest'

/** Whole eggs, yolks without their white, whites without their yolk. */
test.each<[string, [number, number, number]]>([
  ['ten eggs', [10, 0, 0]],
  ['ten eggs, leaving out four of the whites', [6, 4, 0]],
  ['x egges, leaving out half the whites', [5, 5, 0]],
  ['twelve eggs, casting away half the whites', [6, 6, 0]],
  ['twelve eggs well beaten, take away half the whites', [6, 6, 0]],
  ['nine eggs, but four whites', [4, 5, 0]],
  ['nine eggs, but five of the whites', [5, 4, 0]],
  ['sixteen eggs, eight whites', [8, 8, 0]],
  ['seven eggs, whites and all', [7, 0, 0]],
  ['seven eggs, yolks and whites', [7, 0, 0]],
  ['seven eggs, the whites being put by', [0, 7, 0]],
  ['six eggs, without the whites', [0, 6, 0]],
  ['six eggs (leave out the whites)', [0, 6, 0]],
  ['eight eggs in a basin, leaving out one white', [7, 1, 0]],
  ['eight eggs with two of the yolks taken out', [6, 0, 2]],
  ['three eggs, one white left out', [2, 1, 0]],
  ['six eggs, half the whites', [3, 3, 0]],
  ['five eggs (whites only)', [0, 0, 5]],
  ['the yolks of four eggs', [0, 4, 0]],
  ['the whites of two or three eggs', [0, 0, 2]],
  ['the yolks and whites of eight eggs', [8, 0, 0]],
  ['the white of an egg', [0, 0, 1]],
  ['the yelk of a raw egg', [0, 1, 0]],
  ['yolks of 3', [0, 3, 0]],
  ['viij yolkes of egges', [0, 8, 0]],
  ['four egges whites', [0, 0, 4]],
  ['ten egg yolks', [0, 10, 0]],
  ['eight yolks and three whites', [3, 5, 0]],
  ['the yolk of one egg, the whites of three', [1, 0, 2]],
  ['yolks of three eggs and the whites of one', [1, 2, 0]],
  ['sixteen whole eggs, and twelve yolks', [16, 12, 0]],
  ['ten eggs and four whites', [10, 0, 4]],
  ['the yolks of one dozen of eggs and half, their whites', [18, 0, 0]],
  ['half a dozen new-laid eggs', [6, 0, 0]],
  ['eggs, 5', [5, 0, 0]],
  ['yolkes of egges xx', [0, 20, 0]],
  ['the yolckes of three egges', [0, 3, 0]],
  ['half a score of eggs, the whites of half', [5, 5, 0]],
  ['the yolks of ten eggs, and the whites of half of them', [5, 5, 0]],
  ['whites of eyren, iiij', [0, 0, 4]],
  ['yolks four eggs', [0, 4, 0]],
  ['whites of the four eggs', [0, 0, 4]],
  ['nine eggs, and four of the whites', [4, 5, 0]],
  ['xx egges, and do away the white of viij', [12, 8, 0]],
])('%s', (phrase, [whole, yolks, whites]) => {
  expect(readPhrase(phrase)).toMatchObject({ thing: 'egg', measure: 'none', eggs: { whole, yolks, whites } })
})

/** Whose eggs they are, in every order of the words. */
test.each<[string, string, [number, number, number]]>([
  ["a pullet's egg", 'pullet egg', [1, 0, 0]],
  ["two pullets' eggs", 'pullet egg', [2, 0, 0]],
  ['three eggs of a pullet', 'pullet egg', [3, 0, 0]],
  ['a dozen of turkey eggs', 'turkey egg', [12, 0, 0]],
  ["the whites of three turkey's eggs", 'turkey egg', [0, 0, 3]],
  ['the yolks of six goose eggs', 'goose egg', [0, 6, 0]],
  ['vj egges of the goose', 'goose egg', [6, 0, 0]],
  ['ducks eggs, four', 'duck egg', [4, 0, 0]],
  ['ten duck eggs, leaving out four of the whites', 'duck egg', [6, 4, 0]],
  ['four pigeons eggs', 'pigeon egg', [4, 0, 0]],
  ["twelve plovers' eggs", 'plover egg', [12, 0, 0]],
  ['eight guinea fowl eggs, leaving out three whites', 'guinea fowl egg', [5, 3, 0]],
  ['six eggs of guinea fowls', 'guinea fowl egg', [6, 0, 0]],
  ['six hen eggs', 'egg', [6, 0, 0]],
])('%s', (phrase, thing, [whole, yolks, whites]) => {
  expect(readPhrase(phrase)).toMatchObject({ thing, measure: 'none', eggs: { whole, yolks, whites } })
})

test('an egg in a likeness is no egg that goes in', () => {
  const { measures } = readReceipt('Make them up in balls as big as a pigeons egg; then take two eggs. Boil it till it is like an egg.')
  expect(measures.map(({ phrase }) => phrase)).toEqual(['two eggs'])
})

test('an egg or two is a range', () => {
  expect(readPhrase('an egg or two')).toMatchObject({ amount: { low: 1, high: 2 } })
})

test('half the whites left out of yolks leave the other half in', () => {
  expect(readPhrase('the yolks of eight eggs, leaving out half the whites')).toMatchObject({ eggs: { whole: 4, yolks: 4, whites: 0 } })
})

/** Nobody can leave out six whites of four eggs. */
test.each(['four eggs, leaving out six whites', 'four eggs but six whites', 'two duck eggs, the whites of three left out'])(
  '%s contradicts itself',
  (phrase) => {
    const reading = readPhrase(phrase)
    expect(reading.eggs).toBeNull()
    expect(reading.contradiction).toMatch(/can't be (?:left out|kept) of \d eggs; give at most as many as there are/)
    expect(() => convert(phrase, { year: 1700 })).toThrow(PottleError)
  },
)

test('a contradiction spoils neither the rest of a receipt nor what does not lean on it', () => {
  const { lines } = workSheet('Take four eggs, leaving out six whites, a pint of cream, and the weight of the eggs in sugar.', {
    year: 1700,
  })
  expect(lines.map(({ working }) => working !== null)).toEqual([false, true, false])
  expect(lines[0]!.note).toContain("6 whites can't be left out of 4 eggs")
  expect(lines[2]!.note).toContain("6 whites can't be left out of 4 eggs")
})

test('the other pan of the scale may hold the eggs of any bird', () => {
  const of = (phrase: string) => convert(phrase, { year: 1800 }).value.best
  expect(of('the weight of six goose eggs in sugar') / of('the weight of six eggs in sugar')).toBeGreaterThan(3)
})

test('the amount is the number that the words begin with', () => {
  expect(readPhrase('four or five eggs, leaving out two whites')).toMatchObject({ amount: { low: 4, high: 5 }, kind: 'eggparts' })
})

test('what follows the eggs is not taken for a part of them', () => {
  expect(readPhrase('six eggs, two white onions')).toMatchObject({ eggs: { whole: 6, yolks: 0, whites: 0 } })
})
