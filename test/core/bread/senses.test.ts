import { bandOf, mixtureBand } from '@core/bands'
import { loavesOver, readLoafName, wheatIn } from '@core/bread'
import type { Reading, ReadingKind } from '@core/reading'
import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { PottleError } from '../../../packages/core/src/error.js'
import { loaf } from '../../../packages/core/src/senses/loaf.js'
import { settingOf } from '../../../packages/core/src/setting.js'

interface Said {
  readonly kind?: ReadingKind
  readonly measure?: string | null
  readonly thing?: string | null
  readonly qualifier?: string | null
  readonly part?: string
}

function reading({ kind = 'priced', measure = 'none', thing = null, qualifier = null, part }: Said): Reading {
  const amount = { low: 1, high: 1 }
  return { kind, amount, measure, thing, qualifier, eggs: null, understood: [], unread: [], ...(part ? { part } : {}) }
}

const question = (said: Said, year: string | null = '1690', place = 'england') => ({
  reading: reading(said),
  setting: settingOf(year, place),
})
const sensesOf = (said: Said, year: string | null = '1690', place = 'england') => loaf.senses(question(said, year, place))
const ids = (said: Said, year?: string | null, place?: string) => sensesOf(said, year, place).map(({ id }) => id)

describe('which readings are loaves', () => {
  it.each<Said>([
    { measure: 'penny loaf' },
    { measure: 'halfpenny loaf', thing: 'bread' },
    { measure: 'twopenny loaf', thing: 'white loaf' },
    { measure: 'sixpenny loaf' },
    { measure: 'shilling loaf' },
    { measure: 'quartern loaf', thing: 'bread' },
    { measure: 'half-quartern loaf' },
    { measure: 'half-peck loaf' },
    { measure: 'penny manchet', thing: 'manchet' },
    { measure: 'penny white loaf' },
    { measure: 'penny roll' },
    { measure: 'penny French roll', thing: 'roll' },
    { kind: 'counted', thing: 'manchet' },
    { kind: 'counted', thing: 'French roll' },
    { kind: 'measured', measure: 'loaf', thing: 'white bread' },
  ])('$measure $thing', (said) => {
    expect(loaf.answers(question(said))).toBe(true)
  })

  it.each<Said>([
    { kind: 'measured', measure: 'loaf', thing: 'sugar' },
    { kind: 'counted', thing: 'loaf sugar' },
    { kind: 'measured', measure: 'roll', thing: 'lemon peel' },
    { kind: 'counted', thing: 'sweetbread' },
    { kind: 'counted', thing: 'egg' },
    { kind: 'counted', thing: 'white' },
    { kind: 'counted', thing: 'French bean' },
    { kind: 'counted', thing: 'rye' },
    { kind: 'measured', measure: 'pound', thing: 'bread' },
    { kind: 'measured', measure: 'quartern', thing: 'flour' },
    { measure: 'penny Naples biscuit' },
    { measure: 'pennyworth', thing: 'saffron' },
  ])('not $measure $thing', (said) => {
    expect(loaf.answers(question(said))).toBe(false)
  })
})

describe('what an unnamed loaf was', () => {
  it('is white, wheaten or household, and the law of 1758 turns the odds', () => {
    expect(ids({ measure: 'penny loaf' }, '1690')).toEqual(['penny-loaf.white', 'penny-loaf.wheaten', 'penny-loaf.household'])
    expect(ids({ measure: 'penny loaf' }, '1790')[0]).toBe('penny-loaf.wheaten')
    for (const year of ['1300', '1690', '1790', '1650/1800', null]) {
      const total = sensesOf({ measure: 'penny loaf' }, year).reduce((sum, { likelihood }) => sum + likelihood, 0)
      expect(total).toBeCloseTo(1, 9)
    }
  })

  it('gives the reason for the odds, then the steps of the loaf', () => {
    const [white] = sensesOf({ measure: 'penny loaf' }, '1690', 'london')
    expect(white!.steps[0]).toMatchObject({ factor: 'white 0.75', grade: 'judgement' })
    expect(white!.steps[1]!.text).toContain('Windsor')
  })

  it('takes the kind wherever the words put it', () => {
    for (const said of [
      { measure: 'penny white loaf' },
      { measure: 'penny loaf', thing: 'white bread' },
      { measure: 'penny loaf', qualifier: 'white' },
    ]) {
      expect(ids(said)).toEqual(['penny-loaf.white'])
    }
    expect(ids({ measure: 'twopenny loaf', thing: 'brown bread' })).toEqual(['twopenny-loaf.household'])
  })

  it('takes the crumb wherever the words put it', () => {
    const whole = bandOf(sensesOf({ measure: 'penny white loaf' })[0]!.value).best
    for (const said of [{ part: 'crumb' }, { thing: 'crumb' }, { qualifier: 'crumb' }]) {
      const [sense] = sensesOf({ measure: 'penny white loaf', ...said })
      expect(sense!.label).toBe('crumb of a penny white loaf')
      expect(bandOf(sense!.value).best / whole).toBeCloseTo(0.68, 3)
    }
    // A grated loaf keeps its crust: grating says nothing of cutting it off.
    expect(sensesOf({ measure: 'penny white loaf', thing: 'grated bread' })[0]!.label).toBe('penny white loaf')
  })

  it('asks for a size where no price is named', () => {
    expect(ids({ kind: 'counted', thing: 'manchet' }, '1670')).toEqual(['manchet.harrison', 'penny-loaf.manchet', 'manchet.household'])
    expect(ids({ kind: 'measured', measure: 'loaf', thing: 'white bread' }, '1658')[0]).toBe('penny-loaf.white')
    expect(ids({ kind: 'counted', measure: 'loaf', thing: 'bread' }, '1800')).toContain('quartern.assize')
  })

  it('takes a horse loaf without a price for one of three a penny', () => {
    const [horse] = sensesOf({ kind: 'counted', measure: 'loaf', thing: 'horse bread' }, '1600')
    expect(horse).toMatchObject({ id: 'horse-loaf', label: 'horse loaf', likelihood: 1 })
    expect(bandOf(horse!.value).best).toBeCloseTo(bandOf(sensesOf({ measure: 'penny white loaf' }, '1600')[0]!.value).best, 3)
  })

  it('keeps the custom of six ounces beside the rule, for the penny manchet of its time', () => {
    expect(ids({ measure: 'penny manchet' }, '1690', 'london')).toEqual(['penny-loaf.manchet', 'manchet.custom'])
    expect(ids({ measure: 'penny manchet' }, '1630', 'london')).toEqual(['penny-loaf.manchet'])
    expect(ids({ measure: 'penny manchet' }, '1640/1660', 'london')).toEqual(['penny-loaf.manchet', 'manchet.custom'])
    expect(sensesOf({ measure: 'penny manchet' }, '1690')[1]!.steps.map(({ grade }) => grade)).toEqual(['judgement', 'practice'])
  })

  it('gives loaves of fixed weight by the law or the custom of the day', () => {
    expect(ids({ measure: 'quartern loaf' }, '1780')).toEqual(['quartern.assize'])
    expect(ids({ measure: 'quartern loaf' }, '1825', 'london')).toEqual(['quartern.assize', 'quartern.four-pound-london'])
    expect(ids({ measure: 'quartern loaf' }, '1860')).toEqual(['quartern.four-pound'])
    expect(sensesOf({ measure: 'quartern loaf' }, '1780')[0]!.exact).toBe('1970.2918571875')
  })

  it('lets the caller insist', () => {
    const insist = (standard: string) => loaf.senses({ ...question({ measure: 'penny loaf' }), standard }).map(({ id }) => id)
    expect(insist('wheaten')).toEqual(['penny-loaf.wheaten'])
    expect(insist('manchet')).toEqual(['penny-loaf.manchet'])
    expect(insist('penny-loaf.household')).toEqual(['penny-loaf.household'])
    expect(() => insist('imperial')).toThrow('penny-loaf.white')
  })
})

describe('a date that leaves years open', () => {
  it('is one loaf for each law that the years fall under', () => {
    expect(ids({ measure: 'penny white loaf' }, '1700/1720')).toEqual(['penny-loaf.white.anne', 'penny-loaf.white.books'])
    expect(ids({ measure: 'penny white loaf' }, '1660/1690')).toEqual(['penny-loaf.white'])
  })

  it('says which years, and how far wheat ran', () => {
    const step = sensesOf({ measure: 'penny white loaf' }, '1660/1690')[0]!.steps.at(-1)!
    expect(step.text).toMatch(/any from 1660 to 1690/)
  })

  it('ends where the mixture of its years ends', () => {
    const years = Array.from({ length: 31 }, (_, i) => ({ year: 1660 + i, weight: 1 / 31 }))
    const [span] = loavesOver({ coin: 'penny', kind: 'white' }, years, '1660/1690')
    const together = bandOf(span!.loaf.value)
    const mixed = mixtureBand(
      years.map(({ year, weight }) => ({
        weight,
        value: loavesOver({ coin: 'penny', kind: 'white' }, [{ year, weight: 1 }], '')[0]!.loaf.value,
      })),
    )
    expect(together.low / mixed.low).toBeCloseTo(1, 1)
    expect(together.high / mixed.high).toBeCloseTo(1, 1)
  })

  it('is the very loaf of the year where it is one year', () => {
    const [one] = loavesOver({ coin: 'penny', kind: 'white' }, [{ year: 1690, weight: 1 }], '1690')
    expect(one!.loaf.value[0]!.factors[0]!.unknown.id).toBe('loaf:1690:england')
  })

  it('gives one unknown one shape, whatever the kind and coin', () => {
    const shapes = new Map<string, string>()
    for (const year of ['1690', '1650/1700', '1690~', '17XX', null]) {
      for (const measure of ['penny loaf', 'twopenny loaf', 'sixpenny loaf', 'penny roll', 'quartern loaf', 'penny manchet']) {
        for (const { value } of safely(() => sensesOf({ measure }, year))) {
          for (const { unknown } of value.flatMap(({ factors }) => factors)) {
            const shape = JSON.stringify(unknown.shape)
            expect(shapes.get(unknown.id) ?? shape, unknown.id).toBe(shape)
            shapes.set(unknown.id, shape)
          }
        }
      }
    }
    expect(shapes.size).toBeGreaterThan(10)
  })

  it('weighs in the centuries in which such a loaf was common', () => {
    const [first] = sensesOf({ measure: 'penny loaf' }, null)
    expect(first!.id).toBe('penny-loaf.white.books')
  })

  it('leaves out the years beyond the tables, and refuses where none is left', () => {
    expect(ids({ measure: 'penny loaf' }, '1890/1914')).toContain('penny-loaf.wheaten')
    expect(() => sensesOf({ measure: 'penny loaf' }, '1910')).toThrow('1900')
    expect(() => sensesOf({ measure: 'sixpenny loaf' }, '1400')).toThrow('1551')
  })
})

describe('readLoafName', () => {
  it('runs the example of its docstring', () => {
    const { coin, kind, crumb, bread, other } = readLoafName('two-penny white loaf')
    expect([coin!.id, kind!.id, crumb, bread, other]).toEqual(['twopenny', 'white', false, true, []])
  })

  it('never breaks on any words, nor lingers', () => {
    fc.assert(fc.property(fc.string({ maxLength: 400 }), (words) => Array.isArray(readLoafName(words).other)))
    expect(readLoafName('half '.repeat(2000)).other.length).toBeLessThan(20)
  })
})

describe('any year', () => {
  it('answers with rising finite bands, or with a named refusal', () => {
    const coins = ['farthing', 'halfpenny', 'penny', 'twopenny', 'sixpenny', 'eighteenpenny', 'quartern', 'half-peck']
    const kinds = ['white', 'wheaten', 'household', 'wastel', 'simnel', 'horse', 'french roll']
    const any = fc.record({
      coin: fc.constantFrom(...coins),
      kind: fc.constantFrom(...kinds),
      year: fc.integer({ min: 1200, max: 1950 }),
      place: fc.constantFrom('london', 'york', 'kent', 'england', 'dublin', 'edinburgh', 'virginia'),
    })
    fc.assert(
      fc.property(any, ({ coin, kind, year, place }) => {
        const { places } = settingOf(1700, place)
        const spans = safely(() => loavesOver({ coin, kind, place: places }, [{ year, weight: 1 }], String(year)))
        for (const { loaf: found } of spans) {
          const { low, best, high } = bandOf(found.value)
          expect(low > 0 && low <= best && best <= high && Number.isFinite(high)).toBe(true)
        }
      }),
      { numRuns: 300 },
    )
    expect(wheatIn(1700).shillings).toBeGreaterThan(0)
  })
})

/** What an act gives, or nothing where it is refused by name; any other error is a fault. */
function safely<T>(act: () => readonly T[]): readonly T[] {
  try {
    return act()
  } catch (error) {
    if (error instanceof PottleError) return []
    throw error
  }
}
