import { inModernUnits, kitchenNumber, roundForKitchen } from '@core/modern'
import { modernUnits } from '@core/tables'
import fc from 'fast-check'
import { describe, expect, test } from 'vitest'

const unit = (id: string) => modernUnits.find((row) => row.id === id)!
const band = (low: number, best: number, high: number) => ({ low, best, high, coverage: 0.9 })

describe('kitchen rounding', () => {
  test.each([
    ['cup-us', band(7.8, 8.03, 8.2), 8],
    ['cup-us', band(2.2, 2.28, 2.35), 2.25],
    ['g', band(440, 453.59, 467), 455],
    ['g', band(0.1, 0.25, 0.34), 0.26],
    ['ml', band(1855, 1892.7, 1930), 1895],
    ['tsp-us', band(0.7, 0.8, 0.9), 0.75],
    ['kg', band(24, 25.4, 26.5), 25.4],
  ])('%s %o', (id, value, expected) => {
    expect(roundForKitchen(unit(id), value).value).toBeCloseTo(expected, 9)
  })

  test('says when it leaves the band', () => {
    expect(roundForKitchen(unit('cup-us'), band(0.06, 0.07, 0.08))).toMatchObject({ value: 0, outside: true })
    expect(roundForKitchen(unit('cup-us'), band(7.8, 8.03, 8.2)).outside).toBe(false)
  })

  test('shifts no value by more than half its step, whatever the band', () => {
    const positive = fc.double({ min: 1e-6, max: 1e6, noNaN: true })
    fc.assert(
      fc.property(
        positive,
        fc.double({ min: 1, max: 4, noNaN: true }),
        fc.constantFrom(...modernUnits.filter((u) => u.value)),
        (best, spread, row) => {
          const { value, shift } = roundForKitchen(row, band(best / spread, best, best * spread))
          expect(Number.isFinite(value) && Number.isFinite(shift)).toBe(true)
          expect(value).toBeGreaterThanOrEqual(0)
        },
      ),
    )
  })
})

describe('numbers as a cook reads them', () => {
  test.each([
    ['cup-us', 2.25, '2¼'],
    ['cup-us', 0.5, '½'],
    ['cup-us', 8, '8'],
    ['lb', 1.125, '1⅛'],
    ['g', 455, '455'],
    ['l', 1.95, '1.95'],
  ])('%s %f is %s', (id, value, text) => {
    expect(kitchenNumber(unit(id), value)).toBe(text)
  })
})

test('a pottle of wine measure is eight US cups', () => {
  const values = inModernUnits('volume', band(1855, 1892.705892, 1930))
  expect(values.find((value) => value.unit === 'cup-us')).toMatchObject({ best: 8, text: '8 US cups', ucum: '[cup_us]', rounding: 0 })
})
