/**
 * Figures of published sources, asked in natural period words of the library as a whole: reading, senses and bands together.
 *
 * A row is a phrase, its year and place, the figure in the unit of its table, how near the best value must come as a part of the figure, and
 * the source. `inside` asks of the band alone that it holds the figure, for measures that no two books agree on; `among` that some sense is the
 * figure within one part in a hundred, where the same words had several meanings.
 */
import { convert } from '@pottle/core'
import { afterAll, describe, expect, test } from 'vitest'

export type Row = readonly [phrase: string, year: number, place: string, figure: number, reach: number | 'inside' | 'among', source: string]

/** 1 lb = 453.59237 g, 1 in = 25.4 mm exactly (1959); 1 imperial gallon = 4.54609 l (1976). Gallons in ml by their cubic inches. */
export const lb = 453.59237
export const oz = lb / 16
export const cubicInch = 16.387064
export const wine = 231 * cubicInch
export const ale = 282 * cubicInch
export const corn = (2150.4202 / 8) * cubicInch
export const imperial = 4546.09
export const irish = 217.6 * cubicInch
/** The Scots pint by the Stirling jug. */
export const scots = 103.404 * cubicInch

const quantities: Readonly<Record<string, string>> = { g: 'mass', ml: 'volume' }

function hold(unit: string, [phrase, year, place, figure, reach]: Row): void {
  const to = quantities[unit]
  const { value, senses, reading } = convert(phrase, { year, place, ...(to ? { to } : {}) })
  expect(value.unit).toBe(unit)
  expect(reading.unread).toEqual([])
  const slack = typeof reach === 'number' ? reach : 0.01
  if (reach === 'among') {
    expect(Math.min(...senses.map(({ best }) => Math.abs(best / figure - 1)))).toBeLessThanOrEqual(slack)
    return
  }
  if (reach !== 'inside') expect(Math.abs(value.best / figure - 1)).toBeLessThanOrEqual(slack)
  expect(value.low).toBeLessThanOrEqual(figure * (1 + slack))
  expect(value.high).toBeGreaterThanOrEqual(figure * (1 - slack))
}

/** Holds every row of a table; none may be passed over in silence. */
export function holdRows(what: string, unit: string, rows: readonly Row[]): void {
  let held = 0
  describe(what, () => {
    test.each(rows)('%s, %i, %s: %d (%s), %s', (...row) => {
      hold(unit, row)
      held += 1
    })

    afterAll(() => {
      console.log(`acceptance: ${held} of ${rows.length} ${what} hold`)
      expect(held).toBe(rows.length)
    })
  })
}
