import { readPhrase } from '@core/reading'
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
])('%s', (phrase, [whole, yolks, whites]) => {
  expect(readPhrase(phrase)).toMatchObject({ thing: 'egg', measure: 'none', eggs: { whole, yolks, whites } })
})

test('the amount is the number that the words begin with', () => {
  expect(readPhrase('four or five eggs, leaving out two whites')).toMatchObject({ amount: { low: 4, high: 5 }, kind: 'eggparts' })
})

test('what follows the eggs is not taken for a part of them', () => {
  expect(readPhrase('six eggs, two white onions')).toMatchObject({ eggs: { whole: 6, yolks: 0, whites: 0 } })
})
