import { constant, exact, lognormal, power, product, rectangle, spread, sum, times, triangle, unknown } from '@core/bands'
import { describe, expect, it } from 'vitest'
import { PottleError } from '../../../packages/core/src/error.js'

function faultOf(attempt: () => unknown): string {
  try {
    attempt()
  } catch (error) {
    if (error instanceof PottleError) return error.message
    throw error
  }
  return 'no fault'
}

describe('shapes', () => {
  it('are plain data', () => {
    expect(exact(231)).toEqual({ shape: 'exact', value: 231 })
    expect(rectangle(45, 60)).toEqual({ shape: 'rectangle', low: 45, high: 60 })
    expect(triangle(1, 2, 4)).toEqual({ shape: 'triangle', low: 1, best: 2, high: 4 })
    expect(lognormal(30, 2)).toEqual({ shape: 'lognormal', best: 30, factor: 2 })
  })

  it('are exact where they have no width', () => {
    for (const shape of [rectangle(3, 3), triangle(3, 3, 3), lognormal(3, 1), spread({ low: 3, best: 3, high: 3 })]) {
      expect(shape).toEqual(exact(3))
    }
  })

  it('let a row be a triangle', () => {
    expect(spread({ low: 1, best: 1, high: 2 })).toEqual(triangle(1, 1, 2))
  })

  it.each([
    [() => exact(Number.NaN), 'value: NaN is not a finite number'],
    [() => exact(Number.POSITIVE_INFINITY), 'value: Infinity is not a finite number'],
    [() => rectangle(2, 1), 'high: 1 is below the low of 2; the order is low <= high'],
    [() => triangle(1, 0, 2), 'best: 0 is below the low of 1; the order is low <= best <= high'],
    [() => triangle(1, 3, 2), 'high: 2 is below the best of 3; the order is low <= best <= high'],
    [() => spread({ low: 1, best: Number.NaN, high: 2 }), 'best: NaN is not a finite number'],
    [() => lognormal(0, 2), 'best: 0 is not above 0, as the median of a log-normal must be'],
    [() => lognormal(1, 0.5), 'factor: 0.5 is below 1; the band runs from best / factor to best * factor'],
    [() => unknown('', exact(1)), 'id: an unknown needs a name, for two of the same name are the same unknown'],
    [() => unknown('x', { shape: 'rectangle', low: 2, high: 1 }), 'high: 1 is below the low of 2; the order is low <= high'],
    [() => constant(Number.NaN), 'value: NaN is not a finite number'],
    [() => product(Number.NEGATIVE_INFINITY), 'coefficient: -Infinity is not a finite number'],
    [() => power(unknown('x', exact(1)), Number.NaN), 'power: NaN is not a finite number'],
  ])('name what was wrong: %#', (attempt, message) => {
    expect(faultOf(attempt)).toBe(message)
  })
})

describe('expressions', () => {
  const x = unknown('x', rectangle(1, 2))
  const y = unknown('y', rectangle(3, 4))

  it('are sums of products', () => {
    expect(constant(3)).toEqual([{ coefficient: 3, factors: [] }])
    expect(product(2, x, power(y, -1))).toEqual([
      {
        coefficient: 2,
        factors: [
          { unknown: x, power: 1 },
          { unknown: y, power: -1 },
        ],
      },
    ])
    expect(sum(constant(1), product(2, x))).toEqual([...constant(1), ...product(2, x)])
    expect(sum()).toEqual([])
  })

  it('are multiplied by numbers, unknowns, powers and each other', () => {
    const e = sum(constant(1), product(2, x))
    expect(times(e, 3)).toEqual(sum(constant(3), product(6, x)))
    expect(times(e, y)).toEqual(sum(product(1, y), product(2, x, y)))
    expect(times(e, power(y, -1))).toEqual(sum(product(1, power(y, -1)), product(2, x, power(y, -1))))
    expect(times(e, sum(constant(1), product(1, y)))).toEqual(sum(constant(1), product(1, y), product(2, x), product(2, x, y)))
  })
})
