/** Which standard a measure went by, where the words say so. Cubic inches of the statutes; 16.387064 ml to the cubic inch. */
import { convert, PottleError, workSheet } from '@pottle/core'
import { describe, expect, it } from 'vitest'

const inch = 16.387064
const best = (phrase: string, year: number) => convert(phrase, { year, to: 'ml' }).value.best

describe('a standard that the words name', () => {
  // 5 Anne c. 27 s. 17: 231; 10 & 11 Will. III c. 21 and the ale pots: 282; 13 Will. III c. 5: 2150.42 to the bushel; 5 Geo. IV c. 74: 277.274.
  it.each([
    ['ten pints of wine measure', 1750, (10 * 231) / 8],
    ['a pint of milk by ale measure', 1750, 282 / 8],
    ['a beer quart of milk', 1750, 282 / 4],
    ['a bushel of wheat, Winchester measure', 1750, 2150.42],
    ['a pint of milk (imperial measure)', 1860, 277.274 / 8],
    ['a quart of brandy, old measure', 1830, 231 / 4],
    ['a quart of brandy, new measure', 1830, 277.274 / 4],
  ])('%s in %i', (phrase, year, inches) => {
    expect(best(phrase, year) / (inches * inch)).toBeCloseTo(1, 2)
  })

  it('is the same for the line of a sheet', () => {
    const phrase = 'a quart of brandy, old measure'
    expect(workSheet(`Take ${phrase}.`, { year: 1830 }).lines[0]!.value!.best).toBeCloseTo(best(phrase, 1830), 0)
  })

  it('is refused before its time', () => {
    expect(() => convert('a pint of milk, imperial measure', { year: 1750 })).toThrow(PottleError)
  })

  it('was old only once there was a new one', () => {
    expect(best('a quart of brandy, old measure', 1750)).toBe(best('a quart of brandy', 1750))
  })
})

describe('heaped measures', () => {
  // Nicholson 1912 ch. IX: the heaped bushel held a quarter and more above the struck one; abolished by 5 & 6 Will. IV c. 63 (1835).
  it('are measures of their own while the law knew them, and a way of filling after', () => {
    const over = (year: number) => best('a heaped peck of pease', year) / best('a peck of pease', year)
    for (const year of [1750, 1860]) {
      expect(over(year)).toBeGreaterThan(1.15)
      expect(over(year)).toBeLessThan(1.35)
    }
  })
})

describe('what a kind says of a thing', () => {
  it('keeps lines of two kinds apart on one sheet', () => {
    const grams = (kind: string) => convert(`a pint of ${kind} sugar`, { year: 1860, to: 'g' }).value.best
    const { lines } = workSheet('Take a pint of brown sugar. Take a pint of loaf sugar, a pint of brown sugar.', { year: 1860 })
    expect(grams('brown')).not.toBe(grams('loaf'))
    expect(lines.map(({ working }) => Math.round(working!.value.best))).toEqual(
      ['brown', 'loaf', 'brown'].map((kind) => Math.round(grams(kind))),
    )
  })
})
