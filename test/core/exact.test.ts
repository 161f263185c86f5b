/** Shortcuts of arithmetic against decimals of arbitrary length (decimal.js) and against the engine's own text. */
import { ExactNumber, exactRatio } from '@core/tables'
import { inModernUnits } from '@pottle/core'
import fc from 'fast-check'
import { expect, test } from 'vitest'
import { toDigits } from '../../packages/core/src/digits.js'

const digits = fc.tuple(fc.nat({ max: 10 ** 15 - 1 }), fc.nat({ max: 15 })).map(([all, places]) => {
  const text = String(all).padStart(places + 1, '0')
  return places === 0 ? text : `${text.slice(0, -places)}.${text.slice(-places)}`
})
const times = fc.oneof(
  fc.nat({ max: 1_000_000 }),
  fc.nat({ max: 10 ** 9 }).map((thousandths) => thousandths / 1000),
  fc.double({ min: 1e-6, max: 1e6, noNaN: true }),
  fc.constantFrom(1 / 3, 2 / 3, 0.5, 0.25, 0.1, 0.7000000000000001),
)

test('an exact number times another has the digits that decimals of any length give', () => {
  fc.assert(
    fc.property(digits, times, (text, by) => {
      expect(new ExactNumber(text).times(by)).toBe(exactRatio(text).times(by).toSignificantDigits(15).toString())
    }),
    { numRuns: 5000 },
  )
  expect(new ExactNumber('2/3').times(3)).toBe('2')
})

test('six significant digits are those of the engine, but for what lies halfway', () => {
  const isHalfway = (x: number): boolean => /^\d{6}5/.test(Math.abs(x).toExponential(17).replace('.', ''))
  fc.assert(
    fc.property(fc.double({ noNaN: true, noDefaultInfinity: true }), (x) => {
      if (!isHalfway(x)) expect(toDigits(x, 6)).toBe(Number(x.toPrecision(6)))
    }),
    { numRuns: 5000 },
  )
  // Ends of powers of ten, where a logarithm errs.
  for (let exponent = -9; exponent < 20; exponent++)
    for (const digit of ['1', '9.99999', '9.9999949', '9.9999951']) {
      const x = Number(`${digit}e${exponent}`)
      expect(toDigits(x, 6), String(x)).toBe(Number(x.toPrecision(6)))
    }
})

test('thousands are parted as the locale parts them', () => {
  const inMillimetres = (mm: number): string =>
    inModernUnits('length', { low: mm, best: mm, high: mm, coverage: 0.9 }).find(({ unit }) => unit === 'mm')!.text
  for (const mm of [9_995, 12_345, 100_000, 1_234_570, 987_654_000])
    expect(inMillimetres(mm)).toBe(`${mm < 10_000 ? mm : mm.toLocaleString('en-GB')} mm`)
})
