import { firstLoafYear, lastLoafYear, wheatIn } from '@core/bread'
import { describe, expect, it } from 'vitest'
import { wheatPrices, wheatSeries } from '../../../packages/core/src/tables/index.js'

describe('wheatIn', () => {
  it('has a price for every year of the assize and after', () => {
    for (let year = firstLoafYear; year <= lastLoafYear; year++) expect(wheatIn(year).shillings, String(year)).toBeGreaterThan(2)
  })

  it('brings best wheat by nine bushels down to middle wheat by eight', () => {
    expect(wheatIn(1680).shillings).toBeCloseTo((45 * 64) / 81, 6)
    expect(wheatIn(1680).steps.map(({ factor }) => factor)).toEqual(['45 s a quarter', '64/81 = 35.56 s'])
  })

  it('turns harvest years into calendar years', () => {
    // The harvests of 1315 and 1316 fetched 14.91 and 15.99 s.
    expect(wheatIn(1316).shillings).toBeCloseTo(0.75 * 14.91 + 0.25 * 15.99, 6)
    expect(wheatIn(1316).steps[0]!.text).toContain('the harvest of 1315')
  })

  it('names the series, its grade and whether it was looked up', () => {
    expect(wheatIn(1643).series).toContain('southern England')
    expect(wheatIn(1850).series).toContain('imperial quarter')
    expect(wheatIn(1768).steps.map(({ checked }) => checked)).toEqual(['memory', 'memory'])
    expect(wheatIn(1700).steps.map(({ checked }) => checked)).toEqual(['read', 'read'])
  })

  it('says so where a figure is suspect', () => {
    expect(wheatIn(1580).steps[0]!.text).toContain('filled in')
  })

  it('refuses years without an assize', () => {
    expect(() => wheatIn(1265)).toThrow('1266 to 1900')
    expect(() => wheatIn(1901)).toThrow('1266 to 1900')
  })
})

describe('the tables of wheat', () => {
  it('have one price for each year of a row', () => {
    for (const { id, years, shillings } of wheatPrices) expect(shillings.length, id).toBe(years[1] - years[0] + 1)
  })

  it('hand one series over to the next without a gap', () => {
    for (const [i, row] of wheatSeries.entries()) if (i > 0) expect(row.years[0], row.id).toBe(wheatSeries[i - 1]!.years[1] + 1)
  })
})
