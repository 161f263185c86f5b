import {
  type Band,
  bandOf,
  bestOf,
  type Expression,
  jointBand,
  lognormal,
  mixtureBand,
  power,
  product,
  rectangle,
  type Shape,
  scaleBand,
  sum,
  times,
  triangle,
  type Unknown,
  unknown,
} from '@core/bands'
import fc from 'fast-check'
import { describe, expect, it } from 'vitest'

const settings = { seed: 1826, numRuns: 40 }

const shapes: fc.Arbitrary<Shape> = fc.oneof(
  fc.tuple(fc.double({ min: 0.1, max: 100, noNaN: true }), fc.double({ min: 1.001, max: 3, noNaN: true })).map(([low, ratio]) => {
    return rectangle(low, low * ratio)
  }),
  fc
    .tuple(
      fc.double({ min: 0.1, max: 100, noNaN: true }),
      fc.double({ min: 1.001, max: 3, noNaN: true }),
      fc.double({ min: 0, max: 1, noNaN: true }),
    )
    .map(([low, ratio, peak]) => triangle(low, low + peak * low * (ratio - 1), low * ratio)),
  fc.tuple(fc.double({ min: 0.1, max: 100, noNaN: true }), fc.double({ min: 1.01, max: 3, noNaN: true })).map(([best, factor]) => {
    return lognormal(best, factor)
  }),
)

const unknownsOf = (count: number): fc.Arbitrary<readonly Unknown[]> =>
  fc.array(shapes, { minLength: count, maxLength: count }).map((list) => list.map((shape, i) => unknown(`u${i}`, shape)))

const coverages = fc.double({ min: 0.05, max: 0.99, noNaN: true })

/** Phrase-like expressions of three unknowns: products, quotients, sums, brackets, and sums that hang together. */
const expressions: fc.Arbitrary<Expression> = unknownsOf(3).chain(([a, b, c]) =>
  fc.constantFrom(
    product(2, a!),
    product(3, a!, b!),
    product(1, a!, b!, power(c!, -1)),
    sum(product(3, a!), product(1, b!)),
    sum(product(1, a!, c!), product(-0.5, b!, c!)),
    sum(product(1, a!, b!), product(1, b!, c!), product(1, c!)),
  ),
)

function expectNear(one: Band, other: Band, tolerance: number): void {
  const scale = Math.max(Math.abs(one.low), Math.abs(one.high))
  for (const end of ['low', 'best', 'high'] as const) expect(Math.abs(one[end] - other[end]) / scale).toBeLessThan(tolerance)
}

describe('bands', () => {
  it('grow with the coverage', () => {
    fc.assert(
      fc.property(expressions, coverages, coverages, (e, one, other) => {
        const [narrow, wide] = [bandOf(e, Math.min(one, other)), bandOf(e, Math.max(one, other))]
        expect(wide.low).toBeLessThanOrEqual(narrow.low)
        expect(wide.high).toBeGreaterThanOrEqual(narrow.high)
      }),
      settings,
    )
  })

  it('hold their best, which is that of the expression', () => {
    fc.assert(
      fc.property(expressions, coverages, (e, coverage) => {
        const { low, best, high } = bandOf(e, coverage)
        expect(best).toBe(bestOf(e))
        expect(low <= best && best <= high).toBe(true)
      }),
      settings,
    )
  })

  it('give the same digits for the same question', () => {
    fc.assert(
      fc.property(expressions, (e) => {
        expect(bandOf(e)).toEqual(bandOf(structuredClone(e)))
      }),
      settings,
    )
  })

  it('scale with what they measure', () => {
    fc.assert(
      fc.property(expressions, fc.double({ min: 0.01, max: 1000, noNaN: true }), (e, by) => {
        expectNear(bandOf(times(e, by)), scaleBand(bandOf(e), by), 1e-4)
        expectNear(bandOf(times(e, -by)), scaleBand(bandOf(e), -by), 1e-4)
      }),
      settings,
    )
  })

  it('do not heed the order of factors or terms', () => {
    fc.assert(
      fc.property(unknownsOf(3), ([a, b, c]) => {
        expectNear(bandOf(product(1, a!, b!, c!)), bandOf(product(1, c!, a!, b!)), 1e-5)
        expectNear(bandOf(sum(product(2, a!), product(1, b!, c!))), bandOf(sum(product(1, c!, b!), product(2, a!))), 1e-5)
        const linked = [product(1, a!, b!), product(1, b!, c!), product(1, c!)]
        expectNear(bandOf(sum(...linked)), bandOf(sum(...linked.reverse())), 1e-3)
      }),
      { ...settings, numRuns: 20 },
    )
  })

  it('stay within the ends that bounded inputs allow', () => {
    const bounded = shapes.filter((shape) => shape.shape !== 'lognormal')
    const ends = (shape: Shape) => (shape.shape === 'rectangle' || shape.shape === 'triangle' ? [shape.low, shape.high] : [])
    fc.assert(
      fc.property(bounded, bounded, bounded, (p, q, r) => {
        const [a, b, c] = [unknown('a', p), unknown('b', q), unknown('c', r)]
        const corners = ends(p).flatMap((x) => ends(q).flatMap((y) => ends(r).map((z) => ({ x, y, z }))))
        for (const [e, f] of [
          [product(1, a, b, power(c, -1)), ({ x, y, z }: { x: number; y: number; z: number }) => (x * y) / z],
          [sum(product(1, a), product(1, b), product(-1, c)), ({ x, y, z }: { x: number; y: number; z: number }) => x + y - z],
        ] as const) {
          const { low, high } = bandOf(e, 0.999)
          const values = corners.map(f)
          const slack = 1e-5 * Math.max(...values.map(Math.abs))
          expect(low).toBeGreaterThanOrEqual(Math.min(...values) - slack)
          expect(high).toBeLessThanOrEqual(Math.max(...values) + slack)
        }
      }),
      settings,
    )
  })
})

describe('unknowns that are the same', () => {
  it('x + x = 2x and x - x = 0', () => {
    fc.assert(
      fc.property(expressions, (e) => {
        expect(bandOf(sum(e, e))).toEqual(bandOf(times(e, 2)))
        expect(bandOf(sum(e, times(e, -1)))).toEqual({ low: 0, best: 0, high: 0, coverage: 0.9 })
      }),
      settings,
    )
  })
})

describe('mixtures', () => {
  it('of one part are that part, and of equal parts any of them', () => {
    fc.assert(
      fc.property(expressions, fc.integer({ min: 1, max: 4 }), (e, count) => {
        expect(mixtureBand(Array.from({ length: count }, () => ({ weight: 0.3, value: e })))).toEqual(bandOf(e))
      }),
      settings,
    )
  })

  it('lie between the ends of their parts', () => {
    fc.assert(
      fc.property(fc.array(expressions, { minLength: 2, maxLength: 4 }), (list) => {
        const renamed = list.map((e, i) =>
          e.map(({ coefficient, factors }) => ({
            coefficient,
            factors: factors.map(({ unknown: { id, shape }, power }) => ({ unknown: unknown(`${id}.${i}`, shape), power })),
          })),
        )
        const bands = renamed.map((e) => bandOf(e))
        const mixture = mixtureBand(renamed.map((value) => ({ weight: 1, value })))
        expect(mixture.low).toBeGreaterThanOrEqual(Math.min(...bands.map(({ low }) => low)))
        expect(mixture.high).toBeLessThanOrEqual(Math.max(...bands.map(({ high }) => high)))
      }),
      settings,
    )
  })
})

describe('sums of lines', () => {
  it('that choose together have a band at least as wide as lines that choose alone', () => {
    const weights = fc.double({ min: 0.2, max: 1, noNaN: true })
    const values = fc.double({ min: 1, max: 3, noNaN: true })
    fc.assert(
      fc.property(unknownsOf(3), weights, weights, values, ([a, b, c], one, other, value) => {
        const lines = [a!, b!, c!].map((x) => ({
          options: [
            { id: 'small', weight: one, value: product(1, x) },
            { id: 'large', weight: other, value: product(value, x) },
          ],
        }))
        const width = ({ low, high }: Band) => high - low
        const [together, alone] = [jointBand(lines.map((line) => ({ ...line, choice: 'c' }))), jointBand(lines)]
        // The best may hold an end of either: that is no width of the distribution.
        const held = [together, alone].some(({ low, best, high }) => low === best || best === high)
        if (!held) expect(width(together)).toBeGreaterThan(0.98 * width(alone))
      }),
      settings,
    )
  })
})
