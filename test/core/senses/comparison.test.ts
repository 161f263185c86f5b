import { describe, expect, it } from 'vitest'
import { comparison, ellipsoid } from '../../../packages/core/src/senses/comparison.js'
import { answer, ask, bandFor, bestOf, said } from './ask.js'

const as = (measure: string, thing: string | null = 'butter') => ({ kind: 'comparison', measure, thing }) as const

describe('the bigness of a thing', () => {
  it.each([
    ['bigness of a walnut', 21.28],
    ['size of a walnut', 21.28],
    ['the bigness of a nutmeg', 4.24],
    ['as big as a hazel-nut', 2.12],
    ['bigness of a filbert', 2.12],
    ['bigness of a pea', 0.268],
    ["bigness of a pigeon's egg", 16.5],
    ['walnut', 21.28],
  ])('%s is %f ml', (measure, ml) => expect(bestOf(answer(comparison, as(measure), 1700))).toBeCloseTo(ml, 2 - Math.round(Math.log10(ml))))

  it('has a wide and honest band', () => {
    const { low, best, high } = bandFor(answer(comparison, as('bigness of a walnut'), 1700))
    expect(low).toBeLessThan(best * 0.85)
    expect(high).toBeGreaterThan(best * 1.15)
  })

  it('shows the computation', () =>
    expect(answer(comparison, as('bigness of a nutmeg'), 1700)[0]!.steps[0]!.factor).toBe(
      '(π/6) × 25 mm (20 to 30) × 18 mm (15 to 20)² = 4.24 ml (2.36 to 6.28)',
    ))

  it('of an egg grows with the eggs', () => {
    const at = (year: number) => bestOf(answer(comparison, as("bigness of a hen's egg", 'forcemeat'), year))
    expect(at(1650)).toBeCloseTo(44 / 1.09, 3)
    expect(at(1896)).toBeCloseTo(50.4 / 1.09, 3)
  })

  it('of an egg is two ounces of butter in American kitchens', () => {
    const [likeliest, other] = answer(comparison, as('bigness of an egg'), 1877, 'america')
    expect(likeliest).toMatchObject({ id: 'as.egg.table', quantity: 'mass', likelihood: 0.75 })
    expect(bestOf([likeliest!])).toBe(56.699)
    expect(other).toMatchObject({ quantity: 'volume' })
  })

  it('of an egg is the egg itself in an English kitchen before that', () =>
    expect(answer(comparison, as('bigness of an egg'), 1740)[0]).toMatchObject({ id: 'as.egg.volume.hen.1700', quantity: 'volume' }))

  it('is that of a ball for what is round', () => expect(ellipsoid(10, 10)).toBeCloseTo(0.5236, 4))

  it('leaves other phrases alone', () => {
    expect(comparison.answers(ask(as('equal-weight'), 1700))).toBe(false)
    expect(comparison.answers(ask({ kind: 'counted', measure: 'none', thing: 'walnut' }, 1700))).toBe(false)
    expect(comparison.answers(ask({ kind: 'measured', measure: 'pint', thing: 'walnut' }, 1700))).toBe(false)
    expect(comparison.answers(ask({ kind: 'measured', measure: 'bigness of a walnut', thing: 'butter' }, 1700))).toBe(true)
  })

  it('says so of what has no size in the tables', () =>
    expect(said(() => comparison.senses(ask(as('bigness of a moonstone'), 1700)))).toMatch(/^no-answer phrase: .* how big a moonstone is/))

  it('is refused for a sense that is not there', () =>
    expect(said(() => comparison.senses({ ...ask(as('bigness of a walnut'), 1700), standard: 'giant' }))).toMatch(/^no-answer standard/))
})
