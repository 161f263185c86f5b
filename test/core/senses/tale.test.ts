import { convert, workSheet } from '@pottle/core'
import { describe, expect, test } from 'vitest'
import { egg } from '../../../packages/core/src/senses/egg.js'
import { tale } from '../../../packages/core/src/senses/tale.js'
import { toldBy } from '../../../packages/core/src/senses/told.js'
import { answer, ask, bestOf } from './ask.js'

const plainly = { kind: 'counted', measure: 'none', amount: { low: 100, high: 100 } } as const
const hundred = { ...plainly, tale: 'hundred' } as const

describe('a number word that meant more than it says', () => {
  test('gives every meaning for each one that the words count', () => {
    const told = toldBy(ask({ ...hundred, thing: 'herring' }, 1880))
    expect(told.map(({ each }) => each)).toEqual([1.32, 1])
    expect(told.reduce((sum, { likelihood }) => sum + likelihood, 0)).toBeCloseTo(1, 12)
  })

  test('counts tales where it is the measure itself', () => {
    expect(toldBy(ask({ measure: 'hundred', thing: 'herring' }, 1880))[0]!.each).toBe(132)
    expect(toldBy(ask({ measure: 'long hundred', thing: 'egg' }, 1700))[0]!.each).toBe(120)
  })

  test('says nothing of a plain count, and nothing new of a dozen', () => {
    expect(toldBy(ask({ ...plainly, thing: 'egg' }, 1700))).toEqual([])
    const dozen = answer(tale, { ...hundred, tale: 'dozen', thing: 'orange' }, 1700)
    expect(dozen.map(({ id }) => id)).toEqual(['orange'])
  })

  test('weighs things whose weight is known, and counts the others', () => {
    const oranges = answer(tale, { ...hundred, thing: 'orange' }, 1700)
    expect(oranges[0]!.quantity).toBe('mass')
    expect(bestOf(oranges)).toBeCloseTo(1.2 * 130, 6)
    const herrings = answer(tale, { ...hundred, thing: 'herring' }, 1880)
    expect(herrings[0]).toMatchObject({ quantity: 'count', exact: '1.32' })
  })

  test('keeps the word that makes the things small', () => {
    const [large, small] = [null, 'small'].map((qualifier) => bestOf(answer(tale, { ...hundred, thing: 'onion', qualifier }, 1700)))
    expect(small!).toBeLessThan(large! * 0.9)
  })

  // Nicholson 1912 ch. VIII: of goods that are weighed a hundred is a hundredweight, of 112 pounds.
  test('is a weight of goods that are weighed', () => {
    const raisins = answer(tale, { ...hundred, thing: 'raisin' }, 1700)
    expect(raisins[0]!.quantity).toBe('mass')
    expect(bestOf(raisins)).toBeCloseTo((112 * 453.59237) / 100, 3)
  })

  test('multiplies eggs that are counted already', () => {
    const eggs = answer(egg, { ...hundred, thing: 'egg', eggs: { whole: 100, yolks: 0, whites: 0 } }, 1700)
    const plain = answer(egg, { ...plainly, thing: 'egg', eggs: { whole: 100, yolks: 0, whites: 0 } }, 1700)
    expect(bestOf(eggs) / bestOf(plain)).toBeCloseTo(1.2, 9)
  })

  test('is not taken for the plain number that the same words may be', () => {
    const told = convert('a hundred of herrings', { year: 1880 }).value.best
    const plain = convert('five score herrings', { year: 1880 }).value.best
    expect([told, plain]).toEqual([132, 100])
  })

  test('is a weight of what is weighed', () => {
    expect(convert('a hundred of sugar', { year: 1750 }).value).toMatchObject({ unit: 'g', best: 50802.3 })
  })

  test('counts out on a sheet what the trade would have sent', () => {
    const [line] = workSheet('Take a hundred of oranges and squeeze them.', { year: 1700 }).lines
    expect(line!.working).toMatchObject({ amount: 120, unit: 'each' })
  })
})
