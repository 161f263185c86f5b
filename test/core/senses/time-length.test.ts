import { describe, expect, it } from 'vitest'
import { consistency } from '../../../packages/core/src/senses/consistency.js'
import { length } from '../../../packages/core/src/senses/length.js'
import { time } from '../../../packages/core/src/senses/time.js'
import { answer, ask, bandFor, bestOf, said } from './ask.js'

describe('times', () => {
  it.each([
    ['paternoster while', 24],
    ['Ave Maria while', 10],
    ['miserere', 150],
    ['mileway', 1200],
    ['mile-way', 1200],
    ['furlong way', 150],
    ['walm', 25],
    ['hour', 3600],
    ['quarter of an hour', 900],
  ])('a %s is %f s', (measure, seconds) => {
    const [sense] = answer(time, { kind: 'time', measure }, 1450)
    expect(sense!.quantity).toBe('time')
    expect(bestOf([sense!])).toBe(seconds)
  })

  it('by the clock are exact', () => expect(answer(time, { kind: 'time', measure: 'hour' }, 1700)[0]!.exact).toBe('3600'))

  it('by prayer are not', () => {
    const senses = answer(time, { kind: 'time', measure: 'paternoster' }, 1450)
    expect(senses[0]!.exact).toBeUndefined()
    expect(bandFor(senses).high - bandFor(senses).low).toBeGreaterThan(5)
  })

  it('leave other kinds alone', () => {
    expect(time.answers(ask({ kind: 'measured', measure: 'hour' }, 1700))).toBe(false)
    expect(time.answers(ask({ kind: 'time', measure: 'aeon' }, 1700))).toBe(false)
  })
})

describe('lengths', () => {
  it.each([
    ['inch', 25.4],
    ['inches', 25.4],
    ['finger', 18],
    ["hand's breadth", 95],
    ['span', 228.6],
    ['nail', 57.15],
    ['ell', 1143],
    ['straw', 3.5],
    ['thickness of a straw', 3.5],
    ['length of a finger', 77],
    ['back of a knife', 1.8],
    ['thickness of a pancake', 2.5],
    ['bigness of a pancake', 190],
    ['thickness of a nutmeg', 18],
    ['depth of a finger', 18],
  ])('a %s is %f mm', (measure, mm) => expect(bestOf(answer(length, { kind: 'length', measure }, 1700))).toBe(mm))

  it('are exact where the law is', () => expect(answer(length, { kind: 'length', measure: 'inch' }, 1700)[0]!.exact).toBe('25.4'))

  it('are read in a comparison that names the thickness', () => {
    expect(length.answers(ask({ kind: 'comparison', measure: 'thickness of a straw' }, 1700))).toBe(true)
    expect(length.answers(ask({ kind: 'comparison', measure: 'bigness of a walnut' }, 1700))).toBe(false)
    expect(length.answers(ask({ kind: 'comparison', measure: 'walnut' }, 1700))).toBe(false)
  })
})

describe('consistencies', () => {
  const of = (measure: string) => answer(consistency, { kind: 'consistency', measure }, 1830)

  it.each([
    ['pour batter', 1.9],
    ['drop batter', 0.98],
    ['soft dough', 0.7],
    ['stiff enough to roll', 0.57],
    ['pancake batter', 3.57],
    ['as thick as pancake batter', 3.57],
    ['thickness of cream', 3.57],
    ['as thin as thin cream', 6.5],
  ])('%s takes %f ml to the gram', (measure, ratio) => {
    expect(of(measure)[0]!.quantity).toBe('ratio')
    expect(bestOf(of(measure))).toBe(ratio)
  })

  it('run from thin to stiff', () => {
    const rising = [
      'raised paste',
      'stiff dough',
      'soft dough',
      'drop batter',
      'pour batter',
      'pancake batter',
      'thin cream',
      'white sauce',
    ]
    const ratios = rising.map((name) => bestOf(of(name)))
    expect(ratios).toEqual([...ratios].sort((a, b) => a - b))
  })

  it('that no handbook puts in figures are refused', () =>
    expect(said(() => of('as thick as mud'))).toMatch(
      /^no-answer phrase: no handbook puts a thickness like "as thick as mud" in figures; there are figures for/,
    ))
})
