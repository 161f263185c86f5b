import { bandOf, constant, jointBand, type Line, mixtureBand, product, rectangle, sum, times, triangle, unknown } from '@core/bands'
import { describe, expect, it } from 'vitest'

const meanings = [
  { id: 'wine', weight: 0.6, ml: 473.176 },
  { id: 'ale', weight: 0.3, ml: 577.292 },
  { id: 'imperial', weight: 0.1, ml: 568.261 },
]
const pints = (count: number): Line['options'] => meanings.map(({ id, weight, ml }) => ({ id, weight, value: constant(count * ml) }))
const width = ({ low, high }: { low: number; high: number }) => high - low

describe('the sum of lines', () => {
  it('of none is nothing', () => {
    expect(jointBand([])).toEqual({ low: 0, best: 0, high: 0, coverage: 0.9 })
  })

  it('of one is the mixture', () => {
    const options = pints(2).map((option, i) => ({ ...option, value: times(option.value, unknown(`d${i}`, triangle(0.9, 1, 1.2))) }))
    expect(jointBand([{ options }])).toEqual(mixtureBand(options))
    expect(jointBand([{ choice: 'pint', options }])).toEqual(mixtureBand(options))
  })

  it('of sure lines is the band of their sum', () => {
    const flour = unknown('flour', triangle(0.48, 0.55, 0.65))
    const values = [product(300, flour), product(200, flour), product(50, unknown('milk', rectangle(1, 1.1)))]
    expect(jointBand(values.map((value) => ({ options: [{ id: 'only', weight: 1, value }] })))).toEqual(bandOf(sum(...values)))
  })

  it('has for its best the sum of the bests of the lines', () => {
    const lines = [{ options: pints(1) }, { options: pints(2).map((option) => ({ ...option, weight: option.id === 'ale' ? 9 : 1 })) }]
    expect(jointBand(lines).best).toBe(Number((473.176 + 2 * 577.292).toPrecision(6)))
  })
})

describe('lines of one choice', () => {
  it('mean the same pint throughout', () => {
    const lines = [1, 2, 3].map((count) => ({ choice: 'pint', options: pints(count) }))
    expect(jointBand(lines)).toEqual(mixtureBand(pints(6)))
  })

  it('have a wider band than lines that choose for themselves', () => {
    const counts = [1, 1, 2, 2, 3]
    const together = jointBand(counts.map((count) => ({ choice: 'pint', options: pints(count) })))
    const alone = jointBand(counts.map((count) => ({ options: pints(count) })))
    expect(width(together)).toBeGreaterThan(1.25 * width(alone))
    expect(together.best).toBe(alone.best)
  })

  it('do not heed the order or the scale of the weights', () => {
    const turned = pints(2)
      .map((option) => ({ ...option, weight: option.weight * 7 }))
      .reverse()
    expect(
      jointBand([
        { choice: 'pint', options: pints(1) },
        { choice: 'pint', options: turned },
      ]),
    ).toEqual(mixtureBand(pints(3)))
  })

  it('keep their own weights where these differ, and agree as far as they can', () => {
    const line = (weights: readonly number[]): Line => ({
      choice: 'pint',
      options: weights.map((weight, i) => ({ id: 'ab'[i]!, weight, value: constant(i) })),
    })
    // a and a with 0.5, b and b with 0.2, and b with a with 0.3: the sum is 0, 2 and 1.
    const lines = [line([0.5, 0.5]), line([0.8, 0.2])]
    expect(jointBand(lines, 0.5)).toMatchObject({ low: 0, high: 1 })
    expect(jointBand(lines, 0.7)).toMatchObject({ low: 0, high: 2 })
  })

  it('may lack each other’s meanings', () => {
    const wine = { choice: 'pint', options: [{ id: 'wine', weight: 1, value: constant(10) }] }
    const other = { choice: 'pint', options: [{ id: 'ale', weight: 1, value: constant(1) }] }
    expect(jointBand([wine, other])).toEqual(bandOf(constant(11)))
  })
})

describe('an unknown in two lines', () => {
  const density = unknown('density', rectangle(0.5, 1.5))
  const lone = (id: string) => unknown(id, rectangle(0.5, 1.5))
  const line = (value: ReturnType<typeof product>): Line => ({ options: [{ id: 'only', weight: 1, value }] })

  it('is the same unknown', () => {
    const shared = jointBand([line(product(1, density)), line(product(2, density))])
    expect(shared).toEqual(bandOf(product(3, density)))
    expect(width(shared)).toBeGreaterThan(width(jointBand([line(product(1, lone('a'))), line(product(2, lone('b')))])))
  })

  it('cancels out', () => {
    expect(jointBand([line(product(1, density)), line(product(-1, density))])).toMatchObject({ low: 0, best: 0, high: 0 })
  })

  it('is the same through choices of several meanings', () => {
    const options = pints(1).map((option) => ({ ...option, value: times(option.value, density) }))
    expect(
      jointBand([
        { choice: 'pint', options },
        { choice: 'pint', options },
      ]),
    ).toEqual(mixtureBand(options.map((option) => ({ ...option, value: times(option.value, 2) }))))
  })

  it('may not have two shapes', () => {
    expect(() => jointBand([line(product(1, density)), line(product(1, unknown('density', rectangle(1, 2))))])).toThrow('density:')
  })
})

describe('a long sheet', () => {
  it('of three hundred lines stays within its lines and near the normal limit', () => {
    const lines = Array.from({ length: 300 }, (_, i) => ({
      options: pints(1).map((option) => ({
        ...option,
        value: times(option.value, unknown(`fill${i}`, triangle(0.9, 1, 1.1))),
      })),
    }))
    const { low, high } = jointBand(lines, 0.95)
    const mean = meanings.reduce((total, { weight, ml }) => total + weight * ml, 0)
    // Var(XY) for X the pint and Y the filling, of mean 1 and variance 0.1² / 6.
    const square = meanings.reduce((total, { weight, ml }) => total + weight * ml * ml, 0)
    const deviation = Math.sqrt(square * (1 + 0.01 / 6) - mean * mean)
    expect(high / (300 * mean + 1.96 * Math.sqrt(300) * deviation)).toBeCloseTo(1, 3)
    expect(low).toBeLessThanOrEqual(300 * mean - 1.96 * Math.sqrt(300) * deviation + 1)
  })
})
