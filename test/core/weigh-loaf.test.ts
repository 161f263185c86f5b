import { convert, loafWeight, oneYear, weighLoaf } from '@pottle/core'
import { describe, expect, test } from 'vitest'

describe('a loaf by a date', () => {
  test('of one year is what the same words come to as a phrase', () => {
    const { value, steps } = weighLoaf({ coin: 'penny', kind: 'white', year: 1690, place: 'london' })
    expect(value).toEqual(convert('a penny white loaf', { year: 1690, place: 'london' }).value)
    expect(steps[0]!.sources.every((source) => typeof source === 'string')).toBe(true)
  })

  test('of a span has its years beside the whole, which is as wide as the widest', () => {
    const { setting, value, series, exact } = weighLoaf({ year: '1690/1700', coin: 'penny' })
    expect(setting.year).toBe('1690/1700')
    expect(exact).toBeNull()
    expect(series!.map(({ year }) => year)).toEqual(Array.from({ length: 11 }, (_, i) => 1690 + i))
    expect(value.low).toBeLessThan(Math.max(...series!.map(({ low }) => low)))
    expect(value.high).toBeGreaterThan(Math.min(...series!.map(({ high }) => high)))
  })

  test('that the law fixed has all its digits', () => {
    expect(weighLoaf({ coin: 'quartern', year: 1840 }).exact).toBe(loafWeight({ coin: 'quartern', year: 1840 }).exact ?? null)
  })

  test('each source is named once', () => {
    const ids = weighLoaf({ year: '1660/1710' }).sources.map(({ id }) => id)
    expect(ids.length).toBeGreaterThan(1)
    expect(new Set(ids).size).toBe(ids.length)
  })

  test.each([
    [{ year: 1690, coverage: 1 }, 'coverage'],
    [{ year: 1690, place: 'atlantis' }, 'place'],
    [{ year: 1200 }, 'year'],
    [{ year: 1690, coin: 'guinea' }, 'coin'],
  ])('%j is refused', (asked, parameter) => {
    expect(() => weighLoaf(asked)).toThrow(`${parameter}: `)
  })
})

describe('one year for a date', () => {
  test.each([
    [undefined, null],
    ['1690', 1690],
    ['1690/1700', 1695],
    ['169X', 1694],
    ['1690~', 1690],
  ])('%s is %s', (date, year) => {
    const one = oneYear(date)
    expect(one.year).toBe(year)
    expect(one.notes).toHaveLength(date === undefined || date === '1690' ? 0 : 1)
  })

  test('what is no date is refused', () => {
    expect(() => oneYear('soon')).toThrow('year: ')
  })
})
