import { liquidHeat, liquidHeats, sugarHeight, sugarHeights } from '@core/heat'
import { describe, expect, it, test } from 'vitest'
import { PottleError } from '../../../packages/core/src/error.js'

describe('sugar heights', () => {
  it('rise in order', () => {
    const best = sugarHeights().map(({ value }) => value.best)
    const placed = sugarHeights()
      .filter(({ printed }) => printed)
      .map(({ value }) => value.best)
    expect(placed).toEqual([...placed].sort((a, b) => a - b))
    expect(best[0]).toBeLessThan(best.at(-1)!)
    for (const { value } of sugarHeights()) expect(value.low <= value.best && value.best <= value.high).toBe(true)
  })

  it('gives a printed degree to one book only, and to none before it', () => {
    for (const { printed } of sugarHeights()) if (printed) expect(printed).toMatchObject({ year: 1910 })
    expect(
      sugarHeights()
        .filter(({ printed }) => !printed)
        .map(({ id }) => id),
    ).toEqual(['candy-height', 'manus-christi', 'clear-caramel'])
  })

  test.each(sugarHeights().flatMap(({ id, names }) => names.map(({ words, years }) => ({ id, words, year: years?.[0] ?? null }))))(
    '$words ($year) is $id',
    ({ id, words, year }) => {
      expect(sugarHeight(`boil your sugar to ${words}`, year).id).toBe(id)
    },
  )

  test.each([
    ['a feathered height', 1761, 'feather'],
    ['boil it to a candy height', 1672, 'candy-height'],
    ['boyle it in a Manus Christi', 1655, 'manus-christi'],
    ['crackt or crackled', 1761, 'crack'],
    ['carmel', 1761, 'clear-caramel'],
    ['caramel', 1845, 'clear-caramel'],
    ['caramel', 1910, 'caramel'],
    ['caramel', null, 'caramel'],
    ['a very smooth syrup', 1761, 'large-thread'],
    ['petit cassé', 1846, 'small-crack'],
  ])('%s of %s is %s', (phrase, year, id) => {
    expect(sugarHeight(phrase, year).id).toBe(id)
  })

  it('names the nearest for an unknown height', () => {
    expect(() => sugarHeight('to a feathar')).toThrow(PottleError)
    expect(() => sugarHeight('to a feathar')).toThrow(/feather/)
  })
})

describe('warm liquids', () => {
  test.each([
    ['milk-warm', 'milk-warm'],
    ['warm as new milk', 'milk-warm'],
    ['new milk warm', 'milk-warm'],
    ['as warm as milk from the cow', 'milk-warm'],
    ['bloud-warm', 'blood-warm'],
    ['blood heat', 'blood-warm'],
    ['luke warm', 'lukewarm'],
    ['scalding hot', 'scalding'],
    ['let it simmer', 'simmering'],
    ['a walm or two', 'boiling'],
    ['two or three wallops', 'boiling'],
    ['half boiling, half cold', 'half-boiling-half-cold'],
    ['one boiling, two cold', 'one-boiling-two-cold'],
    ['when you can see your face in it', 'face'],
  ])('%s is %s', (phrase, id) => {
    expect(liquidHeat(phrase).id).toBe(id)
  })

  it('shifts with more and less', () => {
    const plain = liquidHeat('milk-warm').value
    expect(liquidHeat('a little more than milk-warm').value.best).toBeGreaterThan(plain.best)
    expect(liquidHeat('scarce milk-warm').value.best).toBeLessThan(plain.best)
  })

  it('rise in order, and keep within their ends', () => {
    const ranks = liquidHeats().map(({ rank }) => rank)
    expect(ranks).toEqual([...ranks].sort((a, b) => a - b))
    for (const { value } of liquidHeats()) expect(value.low <= value.best && value.best <= value.high).toBe(true)
  })

  it('names the nearest for an unknown one', () => {
    expect(() => liquidHeat('tepit')).toThrow(/tepid/)
  })
})
