import { describe, expect, it } from 'vitest'
import { pennyworth } from '../../../packages/core/src/senses/pennyworth.js'
import { answer, ask, bandFor, bestOf, said } from './ask.js'

const worth = (measure: string, thing: string | null) => ({ kind: 'priced', measure, thing }) as const

describe('a pennyworth', () => {
  it.each([
    ['pepper', 1720, 18.8, 'mass'],
    ['ginger', 1750, 30.3, 'mass'],
    ['sugar', 1620, 29, 'mass'],
    ['saffron', 1532, 2.362, 'mass'],
    ['egg', 1620, 3.4, 'count'],
    ['vinegar', 1620, 181.1, 'volume'],
  ])('of %s in %i is %f', (thing, year, amount, quantity) => {
    const [sense] = answer(pennyworth, worth('pennyworth', thing), year)
    expect(sense!.quantity).toBe(quantity)
    expect(bestOf([sense!])).toBeCloseTo(amount, 1)
  })

  it('is as much again for a larger coin', () => {
    const of = (measure: string) => bestOf(answer(pennyworth, worth(measure, 'pepper'), 1720))
    expect(of("groat's worth") / of('pennyworth')).toBeCloseTo(4, 5)
    expect(of('halfpenny worth') / of('pennyworth')).toBeCloseTo(0.5, 5)
    expect(of('sixpennyworth') / of('pennyworth')).toBeCloseTo(6, 5)
    expect(of('shillingsworth') / of('pennyworth')).toBeCloseTo(12, 5)
  })

  it('of saffron in 1532 tells both prices', () => {
    const senses = answer(pennyworth, worth('pennyworth', 'saffron'), 1532)
    const { low, high } = bandFor(senses)
    expect(low).toBeLessThan(1.2)
    expect(high).toBeGreaterThan(2.3)
  })

  it('of a thing without a price cannot be known', () => {
    expect(said(() => answer(pennyworth, worth('pennyworth', 'cochineal'), 1764))).toMatch(
      /^no-answer thing: how much cochineal a penny bought hung on the price of the day, and these tables have no price of it: it can't be known/,
    )
    expect(said(() => answer(pennyworth, worth('pennyworth', 'saffron'), 1764))).toMatch(/^no-answer year: .* from 1500 to 1699 alone/)
    expect(said(() => answer(pennyworth, worth('pennyworth', null), 1764))).toMatch(/^no-answer thing: a penny's worth of what/)
    expect(said(() => answer(pennyworth, worth('centsworth', 'pepper'), 1887, 'america'))).toMatch(
      /^no-answer year: .* in England from 1500 to 1849/,
    )
  })

  it('leaves loaves alone', () => {
    expect(pennyworth.answers(ask(worth('penny loaf', 'bread'), 1700))).toBe(false)
    expect(pennyworth.answers(ask({ kind: 'measured', measure: 'pint', thing: 'milk' }, 1700))).toBe(false)
  })
})
