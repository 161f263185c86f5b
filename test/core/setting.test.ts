import { PottleError, settingOf } from '@pottle/core'
import fc from 'fast-check'
import { describe, expect, test } from 'vitest'

function faultOf(act: () => unknown): { parameter: string; detail: string } {
  try {
    act()
  } catch (error) {
    if (error instanceof PottleError) return error.faults[0]!
  }
  throw new Error('nothing was thrown')
}

describe('years in EDTF level 1 (ISO 8601-2:2019)', () => {
  test.each([
    ['1690', 1690, 1690],
    [1690, 1690, 1690],
    ['169X', 1690, 1699],
    ['16XX', 1600, 1699],
    ['1650/1700', 1650, 1700],
    ['1690~', 1680, 1700],
    ['1690?', 1680, 1700],
    ['1690-05-01', 1690, 1690],
    ['1650~/1660', 1640, 1670],
    ['1270~', 1266, 1280],
  ])('%s spans %i to %i', (year, from, to) => {
    expect(settingOf(year)).toMatchObject({ from, to })
  })

  test.each(['', 'about 1690', '169', '16900', '1690/1680', '1600/1650/1700', 'MDCXC', '-1690', '169XX', '1X90'])('refuses %j', (year) => {
    expect(faultOf(() => settingOf(year))).toMatchObject({ parameter: 'year' })
  })

  test.each([3000, '1100', '1950/1960'])('refuses %s, which lies outside the tables', (year) => {
    expect(faultOf(() => settingOf(year)).detail).toMatch(/1266 to 1914/)
  })

  test('the moments of any span lie in it, are at most forty, and weigh 1 together', () => {
    const years = fc.integer({ min: 1266, max: 1914 })
    fc.assert(
      fc.property(years, years, fc.boolean(), (a, b, hedged) => {
        const { moments, from, to } = settingOf(`${Math.min(a, b)}/${Math.max(a, b)}${hedged ? '~' : ''}`)
        expect(moments.length).toBeLessThanOrEqual(40)
        expect(moments.reduce((sum, { weight }) => sum + weight, 0)).toBeCloseTo(1, 9)
        for (const { year } of moments) expect(year >= from && year <= to).toBe(true)
        expect(new Set(moments.map(({ year }) => year)).size).toBe(moments.length)
      }),
    )
  })

  test('a year that is hedged weighs most in its middle', () => {
    const { moments } = settingOf('1690~')
    const heaviest = moments.reduce((a, b) => (b.weight > a.weight ? b : a))
    expect(heaviest.year).toBe(1690)
  })
})

describe('places', () => {
  test('fall back along the chain of wider places', () => {
    expect(settingOf('1690', 'london').places).toEqual(['london', 'england', 'britain'])
  })

  test('are England where none is given', () => {
    expect(settingOf().places[0]).toBe('england')
  })

  test('that are unknown are answered with the nearest names', () => {
    expect(faultOf(() => settingOf('1690', 'londn'))).toMatchObject({ parameter: 'place', detail: expect.stringContaining('london') })
  })
})
