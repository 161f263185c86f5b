import { workSheet } from '@core/sheet'
import { describe, expect, test } from 'vitest'

/** What the lines of a receipt ask for, in their own measures. */
const asked = (text: string): string[] =>
  workSheet(text, { year: 1700 }).lines.map(
    ({ amount, measure, thing }) => `${amount!.low}${amount!.high > amount!.low ? `-${amount!.high}` : ''} ${measure} ${thing}`,
  )

describe('what is told for each of something', () => {
  test.each([
    [
      'Take eight gallons of water, and to every gallon three pounds of honey, and a race of ginger; boil it an hour. Put in an ounce of mace.',
      ['8 gallon water', '24 pound honey', '8 race ginger', '1 ounce mace'],
    ],
    [
      'Take six pounds of cherries, and put a pound of sugar to every pound of fruit, and a quart of water.',
      ['6 pound cherry', '6 pound sugar', '1 quart water'],
    ],
    [
      'Take twelve quarts of wine, and to every gallon a pound of sugar and as much honey.',
      ['12 quart wine', '3 pound sugar', '3 pound honey'],
    ],
    [
      'Four or five pounds of plums; to each pound of plums, ¾ lb. of sugar; ½ an ounce of ginger.',
      ['4-5 pound plum', '3-3.75 pound sugar', '2-2.5 ounce ginger'],
    ],
    ['Twenty gallons of wine, and to every ten gallons of wine the whites of five eggs.', ['20 gallon wine', '10 none egg']],
  ])('%s', (text, lines) => expect(asked(text)).toEqual(lines))

  test('stays for one where no amount of it was told, and is told but once', () => {
    expect(asked('To every pound of pulp a pound of sugar; boil it well. To every pound put a gill of water.')).toEqual([
      '1 pound pulp',
      '1 pound sugar',
      '1 gill water',
    ])
  })

  test('goes by what is as heavy as another too', () => {
    expect(asked('Take four pounds of apricots and their weight in sugar, and to every pound of sugar half a pint of water.').at(-1)).toBe(
      '2 pint water',
    )
  })

  test('of what is made on the way adds nothing to the batch, and says so', () => {
    const { lines, totals } = workSheet(
      'Boil six pounds of quinces in a gallon of water. To each quart of the jelly put a pound of sugar.',
      { year: 1700 },
    )
    expect(lines.map(({ thing }) => thing)).toEqual(['quince', 'water', 'jelly', 'sugar'])
    expect(lines[2]?.note).toContain('does not say how much there is')
    expect(totals.mass?.without).toEqual([3])
  })

  test('says in its note how many times it was taken', () => {
    const [, honey] = workSheet('Take eight gallons of water, and to every gallon of water three pounds of honey.', { year: 1669 }).lines
    expect(honey?.note).toContain('Told for “every gallon of water”, and so taken 8 times.')
    expect(honey?.value?.best).toBeCloseTo(24 * 453.59237, 1) // International Yard and Pound Agreement 1959
  })

  test('is no rate where each only shares out', () => {
    expect(asked('Take three handfuls of sage, and of rue and mint each a handful.')).toEqual([
      '3 handful sage',
      '1 handful rue',
      '1 handful mint',
    ])
  })
})

test('what is not named is in no total', () => {
  const { totals } = workSheet('Take a quart of ale, boil it to a pint, and drink two spoonfuls every morning.', { year: 1700 })
  expect(totals.volume?.without).toEqual([2, 3])
  expect(totals.volume?.best).toBeCloseTo(1155.288, 1) // a quarter of 282 cubic inches
})
