import { modernEggs } from '@core/modern'
import { describe, expect, it } from 'vitest'
import { egg } from '../../../packages/core/src/senses/egg.js'
import { answer, ask, bandFor, bestOf, reading, said } from './ask.js'

const eggs = (whole: number, yolks = 0, whites = 0, amount = whole + Math.max(yolks, whites)) =>
  ({ kind: 'eggparts', measure: 'none', thing: 'egg', amount: { low: amount, high: amount }, eggs: { whole, yolks, whites } }) as const

const many = (low: number, high = low, thing = 'egg') => ({ kind: 'counted', measure: 'none', thing, amount: { low, high } }) as const

describe('eggs', () => {
  it('grow with the centuries', () => {
    const at = (year: number) => bestOf(answer(egg, many(10), year))
    expect(at(1400)).toBeCloseTo(10 * 44 * 0.89, 3)
    expect(at(1830)).toBeCloseTo(453.59 * 0.89, 3)
    expect(at(1896)).toBeCloseTo(10 * 50.4 * 0.89, 3)
  })

  it('count the amount themselves', () => expect(answer(egg, many(3), 1830)[0]).toMatchObject({ quantity: 'mass', whole: true }))

  it('are weighed by white and yolk', () => {
    // Six whites and twelve yolks of 45.36 g eggs.
    expect(bestOf(answer(egg, eggs(6, 6), 1830))).toBeCloseTo(12 * 45.359 * 0.32 + 6 * 45.359 * 0.57, 3)
    expect(bestOf(answer(egg, eggs(0, 8), 1830))).toBeCloseTo(8 * 45.359 * 0.32, 3)
    expect(bestOf(answer(egg, eggs(0, 0, 5), 1830))).toBeCloseTo(5 * 45.359 * 0.57, 3)
  })

  it('are one count where the words give a range', () => {
    const band = bandFor(answer(egg, many(3, 5), 1830))
    expect(band.best).toBeCloseTo(4 * 45.359 * 0.89, 2)
    expect(band.low).toBeLessThan(3.2 * 45.359 * 0.89)
    const yolks = bandFor(answer(egg, { ...eggs(0, 4), amount: { low: 4, high: 6 } }, 1830))
    expect(yolks.best).toBeCloseTo(5 * 45.359 * 0.32, 2)
  })

  it('of other birds have their own weight', () => {
    expect(bestOf(answer(egg, many(1, 1, 'duck egg'), 1861))).toBeCloseTo(76 * 0.86, 3)
    expect(bestOf(answer(egg, many(2, 2, "pullet's egg"), 1830))).toBeCloseTo(2 * 30 * 0.89, 3)
    expect(bestOf(answer(egg, many(1, 1, 'quail egg'), 1850))).toBeCloseTo(8.9, 3)
  })

  it('may be large or small', () => {
    const of = (qualifier: string) => bestOf(answer(egg, { ...many(10), qualifier }, 1830))
    expect(of('large') / of('new-laid')).toBeCloseTo(1.1, 5)
    expect(of('small') / of('new-laid')).toBeCloseTo(0.88, 5)
  })

  it('by the hundred are six score', () => {
    const senses = answer(egg, { kind: 'measured', measure: 'hundred', thing: 'egg' }, 1700)
    expect(senses.map(({ likelihood }) => likelihood)).toEqual([0.85, 0.15])
    expect(bestOf(senses)).toBeCloseTo(120 * 45 * 0.89, 2)
  })

  it('take their place in the scale in the shell', () => {
    const reference = reading(many(6))
    const senses = answer(egg, { kind: 'comparison', measure: 'equal-weight', thing: 'sugar', reference }, 1830)
    expect(senses[0]).toMatchObject({ id: 'weighed-in-shell.hen.1790', quantity: 'mass', whole: true })
    expect(bestOf(senses)).toBeCloseTo(6 * 45.359, 3)
    expect(
      bestOf(answer(egg, { kind: 'comparison', measure: 'weight-of-eggs', thing: 'flour', amount: { low: 4, high: 4 } }, 1790)),
    ).toBeCloseTo(4 * 45.359, 3)
  })

  it('are weighed broken where only the whites are', () => {
    const senses = answer(egg, { kind: 'comparison', measure: 'weight-of-egg-whites', thing: 'almond', amount: { low: 7, high: 7 } }, 1836)
    expect(senses).toHaveLength(1)
    expect(bestOf(senses)).toBeCloseTo(7 * 45.359 * 0.57, 3)
    const yolks = answer(egg, { kind: 'comparison', measure: 'weight-of-egg-yolks', thing: 'sugar', amount: { low: 3, high: 5 } }, 1836)
    expect(bestOf(yolks)).toBeCloseTo(4 * 45.359 * 0.32, 3)
  })

  it('multiply as the words do', () => {
    const reference = reading(many(6))
    const senses = answer(
      egg,
      { kind: 'comparison', measure: 'equal-weight', amount: { low: 0.5, high: 0.5 }, thing: 'flour', reference },
      1830,
    )
    expect(bestOf(senses)).toBeCloseTo(3 * 45.359, 3)
  })

  it('share the likelihood over a span', () => {
    const senses = answer(egg, many(1), null)
    expect(senses.length).toBeGreaterThan(3)
    expect(senses.reduce((sum, { likelihood }) => sum + likelihood, 0)).toBeCloseTo(1, 10)
  })

  it('tell of a batch made with half of them as yolks', () => {
    const steps = (count: number) => answer(egg, many(count), 1700)[0]!.steps.map(({ sources }) => sources[0]!.id)
    expect(steps(12)).toContain('common-practice')
    expect(steps(11)).not.toContain('common-practice')
  })

  it('are refused where none is left, and where no number is given', () => {
    expect(said(() => answer(egg, eggs(0, 0, 0, 0), 1700))).toMatch(/^no-answer phrase: no egg is left/)
    expect(said(() => answer(egg, { ...many(1), amount: null }, 1700))).toMatch(/^no-answer phrase: these words name eggs but no number/)
  })

  it('leave other things alone', () => {
    expect(egg.answers(ask({ kind: 'counted', measure: 'none', thing: 'lemon' }, 1700))).toBe(false)
    expect(egg.answers(ask({ kind: 'measured', measure: 'pound', thing: 'egg' }, 1700))).toBe(false)
    expect(egg.answers(ask({ kind: 'comparison', measure: 'equal-weight', thing: 'sugar' }, 1700))).toBe(false)
  })
})

describe('modern eggs', () => {
  const inClass = (parts: Parameters<typeof eggs>, year: number, id: string) => {
    const senses = answer(egg, eggs(...parts), year)
    const [whole, yolks = 0, whites = 0] = parts
    const found = modernEggs(
      senses.map(({ likelihood, value }) => ({ weight: likelihood, value })),
      { whole, yolks, whites },
    )
    return found.find(({ unit }) => unit === id)!
  }

  it('are fewer and larger', () => {
    // 363 g in shell against 57 and 58 g.
    expect(inClass([8], 1800, 'egg-us-large').best).toBeCloseTo(6.45, 1)
    expect(inClass([8], 1800, 'egg-eu-m').best).toBeCloseTo(6.34, 1)
    expect(inClass([8], 1800, 'egg-uk-l').best).toBeCloseTo(5.41, 1)
  })

  it('come as a recipe that can be cracked', () => {
    expect(inClass([10], 1690, 'egg-eu-m').text).toBe('8 EU medium eggs')
    expect(inClass([6, 4], 1830, 'egg-eu-m').text).toBe('5 EU medium eggs and 3 yolks')
    expect(inClass([1], 1830, 'egg-us-medium').text).toBe('1 US medium egg')
    expect(inClass([0, 6], 1830, 'egg-us-large').text).toBe('5 yolks of US large eggs')
    expect(inClass([4, 0, 4], 1830, 'egg-uk-m').text).toBe('4 UK medium eggs and 2 whites')
  })

  it('keep the band', () => {
    const { low, best, high } = inClass([10], 1830, 'egg-us-large')
    expect(low).toBeLessThan(best)
    expect(high).toBeGreaterThan(best)
  })
})
