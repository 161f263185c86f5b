import { describe, expect, it } from 'vitest'
import { coin } from '../../../packages/core/src/senses/coin.js'
import { coneOn } from '../../../packages/core/src/senses/coin-size.js'
import { answer, ask, bandFor, bestOf, said } from './ask.js'

const on = (name: string, thing: string | null = 'cayenne') =>
  ({ kind: 'comparison', measure: `as much as will lie on a ${name}`, thing }) as const
const of = (use: string, name: string) => ({ kind: 'comparison', measure: `${use} of a ${name}` }) as const

describe('as much as will lie on a coin', () => {
  it('is a cone on its disc', () => {
    const [sense] = answer(coin, on('sixpence'), 1830)
    expect(sense).toMatchObject({ id: 'sixpence.1816', quantity: 'volume', likelihood: 1 })
    expect(bestOf([sense!])).toBeCloseTo(coneOn(19.4, 36), 4)
  })

  it('has a layer of one millimetre as its low end and the steepest cone as its high one', () => {
    const { low, high } = bandFor(answer(coin, on('sixpence'), 1830), 0.998)
    expect(low).toBeCloseTo((Math.PI * 9.5 ** 2) / 1000, 1)
    expect(high).toBeCloseTo(coneOn(19.5, 45), 1)
  })

  it('shrank with the coin', () => {
    const at = (year: number) => bestOf(answer(coin, on('shilling', 'salt'), year))
    expect(at(1600)).toBeGreaterThan(at(1750))
    expect(at(1750)).toBeGreaterThan(at(1850))
  })

  it('is a choice of hammered and milled money before the recoinage', () => {
    const senses = answer(coin, on('shilling'), 1680)
    expect(senses.map(({ id }) => id)).toEqual(['shilling.1601', 'shilling.milled'])
    expect(senses[0]!.likelihood).toBeGreaterThan(0.7)
  })

  it('takes any powder', () => expect(bestOf(answer(coin, on('sixpence', 'moonstone powder'), 1830))).toBeCloseTo(coneOn(19.4, 36), 4))

  it('is read in other words too', () => {
    expect(coin.answers(ask({ kind: 'comparison', measure: 'so much as can lie on the half crown' }, 1700))).toBe(true)
    expect(coin.answers(ask({ kind: 'comparison', measure: 'as much as will lie on a silver sixpence' }, 1700))).toBe(true)
  })
})

describe('coins as lengths and weights', () => {
  it.each([
    ['thickness', 'crown', 1850, 2.4, 2.9],
    ['thickness', 'shilling', 1600, 0.8, 1.0],
    ['thickness', 'shilling', 1750, 1.1, 1.3],
    ['thickness', 'half-crown', 1850, 1.7, 2.0],
    ['thickness', 'penny', 1847, 2.4, 2.7],
    ['thickness', 'sixpence', 1850, 0.9, 1.1],
    ['breadth', 'groat', 1400, 26, 28],
    ['size', 'half-crown', 1844, 32, 33],
  ])('the %s of a %s in %i is %f to %f mm', (use, name, year, low, high) => {
    const [sense] = answer(coin, of(use, name), year)
    expect(sense!.quantity).toBe('length')
    expect(bestOf([sense!])).toBeGreaterThanOrEqual(low)
    expect(bestOf([sense!])).toBeLessThanOrEqual(high)
  })

  it('are weights by the worn coin', () => {
    const senses = answer(coin, of('weight', 'groat'), 1500)
    expect(senses[0]).toMatchObject({ id: 'groat.1464', quantity: 'mass' })
    expect(bestOf(senses)).toBeCloseTo(3.11 * 0.97, 2)
  })
})

describe('a coin that was not there', () => {
  it('is named with what was current', () => {
    const error = said(() => answer(coin, on('sixpence'), 1400))
    expect(error).toMatch(/^no-answer year: no sixpence was current in 1400; it is known from 1551 to 1914\./)
    expect(error).toMatch(/Current then: farthing, halfpenny, penny, twopence or half-groat, groat$/)
  })

  it('may belong to another country', () => {
    expect(said(() => answer(coin, on('dime'), 1880))).toMatch(/it is known from 1796 to 1914 in america/)
    expect(bestOf(answer(coin, on('dime'), 1880, 'america'))).toBeGreaterThan(0.4)
  })
})

it('leaves other measures alone', () => {
  expect(coin.answers(ask({ kind: 'priced', measure: 'penny loaf' }, 1700))).toBe(false)
  expect(coin.answers(ask({ kind: 'comparison', measure: 'bigness of a walnut' }, 1700))).toBe(false)
  expect(coin.answers(ask({ kind: 'measured', measure: 'crown' }, 1700))).toBe(false)
})
