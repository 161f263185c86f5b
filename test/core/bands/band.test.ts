import {
  bandOf,
  bestOf,
  constant,
  type Expression,
  exact,
  lognormal,
  mixtureBand,
  power,
  product,
  rectangle,
  scaleBand,
  sum,
  times,
  triangle,
  unknown,
} from '@core/bands'
import { describe, expect, it } from 'vitest'

const glass = unknown('glass', rectangle(45, 60))
const flour = unknown('flour', triangle(0.48, 0.55, 0.65))
const handful = unknown('handful', lognormal(30, 2))

describe('one unknown comes out exactly', () => {
  it('a rectangle', () => {
    expect(bandOf(product(1, glass))).toEqual({ low: 45.75, best: 52.5, high: 59.25, coverage: 0.9 })
    expect(bandOf(product(1, glass), 0.5)).toEqual({ low: 48.75, best: 52.5, high: 56.25, coverage: 0.5 })
  })

  it('a triangle', () => {
    // F(x) = (x - low)² / ((high - low)(best - low)) up to the peak, and the mirror image of it beyond.
    const rise = Math.sqrt(0.05 * 0.17 * 0.07)
    const fall = Math.sqrt(0.05 * 0.17 * 0.1)
    expect(bandOf(product(1, flour))).toEqual({
      low: Number((0.48 + rise).toPrecision(6)),
      best: 0.55,
      high: Number((0.65 - fall).toPrecision(6)),
      coverage: 0.9,
    })
  })

  it('a log-normal: nine times in ten between best / factor and best * factor', () => {
    expect(bandOf(product(1, handful))).toEqual({ low: 15, best: 30, high: 60, coverage: 0.9 })
  })

  it('a linear function of it, rising or falling', () => {
    expect(bandOf(sum(constant(100), product(-2, glass)))).toEqual({ low: -18.5, best: -5, high: 8.5, coverage: 0.9 })
    expect(bandOf(sum(product(-1, handful), product(3, handful)))).toEqual({ low: 30, best: 60, high: 120, coverage: 0.9 })
  })

  it('a power of it, and a product of log-normals', () => {
    expect(bandOf(product(4500, power(glass, -1)))).toEqual({ low: 75.9494, best: 85.7143, high: 98.3607, coverage: 0.9 })
    const spoon = unknown('spoon', lognormal(2, 1.5))
    const factor = Math.exp(Math.hypot(Math.log(2), Math.log(1.5)))
    const { low, high } = bandOf(product(1, handful, spoon))
    expect(low).toBe(Number((60 / factor).toPrecision(6)))
    expect(high).toBe(Number((60 * factor).toPrecision(6)))
  })
})

describe('what is exact stays exact', () => {
  it.each<[string, Expression, number]>([
    ['a constant', constant(1892.705892), 1892.71],
    ['nothing', sum(), 0],
    ['exact unknowns', product(4, unknown('inch', exact(25.4)), power(unknown('two', exact(2)), -1)), 50.8],
    ['x - x', sum(product(1, flour), product(-1, flour)), 0],
    ['x / x', product(3, flour, power(flour, -1)), 3],
    ['xy - yx', sum(product(1, flour, glass), product(-1, glass, flour)), 0],
    ['nothing of it', product(0, handful), 0],
  ])('%s', (_, e, value) => {
    expect(bandOf(e)).toEqual({ low: value, best: value, high: value, coverage: 0.9 })
  })

  it('x + x = 2x', () => {
    expect(bandOf(sum(product(1, flour, glass), product(1, glass, flour)))).toEqual(bandOf(product(2, flour, glass)))
  })

  it('a common factor before the bracket is the same as in it', () => {
    const salt = unknown('salt', rectangle(1, 2))
    const bracket = times(sum(product(3, glass), product(2, salt)), flour)
    expect(bandOf(bracket)).toEqual(bandOf(sum(product(2, flour, salt), product(3, flour, glass))))
  })
})

describe('the best', () => {
  it('takes every unknown at its best', () => {
    expect(bestOf(sum(product(2, glass, flour), constant(-1)))).toBe(56.75)
    expect(bestOf(product(2, power(handful, 2)))).toBe(1800)
  })

  it('is never outside of its band, however lopsided the shapes', () => {
    const steep = ['a', 'b', 'c'].map((id) => unknown(id, triangle(1, 1, 2)))
    expect(bandOf(product(1, steep[0]!))).toMatchObject({ low: 1, best: 1, high: 1.77639 })
    expect(bandOf(product(1, ...steep))).toMatchObject({ low: 1, best: 1 })
  })
})

describe('unknowns that may be 0 or below', () => {
  const warmer = unknown('warmer', rectangle(-5, 15))
  const rise = unknown('rise', triangle(0.002, 0.003, 0.005))

  it('a square is never below 0', () => {
    const { low, high } = bandOf(product(1, power(unknown('u', rectangle(-1, 2)), 2)))
    // P(U² <= s²) = 2s / 3 up to 1 and (1 + s) / 3 beyond.
    expect(low).toBeCloseTo(0.075 ** 2, 4)
    expect(high).toBeCloseTo(1.85 ** 2, 3)
  })

  it('a product with one keeps its ends on their sides', () => {
    const { low, high } = bandOf(product(1, warmer, rise))
    expect(low).toBeLessThan(0)
    expect(high).toBeGreaterThan(0)
    expect(bandOf(product(-1, warmer, rise)).low).toBeCloseTo(-high, 6)
  })

  it('a range from 0 up may be multiplied and squared, not divided by', () => {
    const some = unknown('some', rectangle(0, 2))
    expect(bandOf(product(1, power(some, 2)))).toMatchObject({ low: 0.01, high: 3.61 })
    expect(() => bandOf(product(1, power(some, -1)))).toThrow('some: cannot be raised to -1, as it may be 0')
    expect(() => bandOf(product(1, power(warmer, 0.5)))).toThrow('warmer: cannot be raised to 0.5, as it may be below 0')
    expect(() => bandOf(product(1, power(unknown('nil', exact(0)), -2)))).toThrow('nil: cannot be raised to -2')
  })

  it('a range below 0 keeps its sign through powers', () => {
    const below = unknown('below', rectangle(-4, -2))
    expect(bandOf(product(1, power(below, -1)))).toEqual({ low: -0.47619, best: -0.333333, high: -0.25641, coverage: 0.9 })
    expect(bandOf(product(1, power(below, 2)))).toMatchObject({ low: 4.41, high: 15.21 })
  })
})

describe('mixtures', () => {
  const wine = { weight: 3, value: constant(473.176473) }
  const ale = { weight: 1, value: constant(577.292) }

  it('take the best of the heaviest part and the ends of them all', () => {
    expect(mixtureBand([ale, wine])).toEqual({ low: 473.176, best: 473.176, high: 577.292, coverage: 0.9 })
    expect(mixtureBand([wine, { ...ale, weight: 0.1 }])).toMatchObject({ low: 473.176, high: 473.176 })
  })

  it('take the wider band where an end falls between two meanings', () => {
    expect(
      mixtureBand([
        { ...wine, weight: 0.05 },
        { ...ale, weight: 0.95 },
      ]),
    ).toMatchObject({ low: 473.176, high: 577.292 })
  })

  it('leave out what has no weight', () => {
    expect(mixtureBand([wine, { ...ale, weight: 0 }])).toEqual(bandOf(wine.value))
  })

  it('are solved exactly between overlapping rectangles', () => {
    const parts = [
      { weight: 1, value: product(1, unknown('a', rectangle(0, 1))) },
      { weight: 1, value: product(1, unknown('b', rectangle(0, 3))) },
    ]
    // F(x) = x/2 + x/6 up to 1, and 1/2 + x/6 beyond.
    expect(mixtureBand(parts)).toMatchObject({ low: 0.075, high: 2.7 })
  })
})

describe('faults', () => {
  it.each([0, 1, -0.5, 1.5, Number.NaN])('a coverage of %d', (coverage) => {
    expect(() => bandOf(constant(1), coverage)).toThrow('coverage:')
  })

  it('one id with two shapes', () => {
    const other = unknown('glass', rectangle(40, 60))
    expect(() => bandOf(product(1, glass, other))).toThrow('glass: this unknown has two different shapes')
    expect(() => bestOf(sum(product(1, glass), product(1, other)))).toThrow('glass:')
    expect(() => mixtureBand([product(1, glass), product(1, other)].map((value) => ({ weight: 1, value })))).toThrow('glass:')
    expect(bandOf(sum(product(1, glass), product(1, unknown('glass', rectangle(45, 60)))))).toEqual(bandOf(product(2, glass)))
  })

  it('weights that are none', () => {
    expect(() => mixtureBand([])).toThrow('weight: at least one meaning needs a weight above 0')
    expect(() => mixtureBand([{ weight: 0, value: constant(1) }])).toThrow('weight:')
    expect(() => mixtureBand([{ weight: -1, value: constant(1) }])).toThrow('weight: -1 is not a finite number from 0 up')
    expect(() => mixtureBand([{ weight: Number.NaN, value: constant(1) }])).toThrow('weight: NaN')
  })

  it('numbers too large to hold', () => {
    expect(() => bandOf(product(1e308, glass))).toThrow('value: the numbers are too large to reckon with')
    expect(() => bestOf(product(1e308, glass))).toThrow('value:')
    expect(() => bandOf(product(1e308, glass, flour))).toThrow('value:')
  })

  it('scaling by what is no number', () => {
    expect(() => scaleBand(bandOf(constant(1)), Number.NaN)).toThrow('by: NaN is not a finite number')
  })
})

describe('scaling a band', () => {
  it('turns its ends about for a number below 0', () => {
    const band = { low: 1, best: 2, high: 4, coverage: 0.8 }
    expect(scaleBand(band, -3)).toEqual({ low: -12, best: -6, high: -3, coverage: 0.8 })
    expect(scaleBand(band, 0)).toEqual({ low: 0, best: 0, high: 0, coverage: 0.8 })
  })
})
