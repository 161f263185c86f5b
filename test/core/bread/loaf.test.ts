import { bandOf } from '@core/bands'
import { drawLoafSeries, type LoafQuestion, loafSeries, loafWeight } from '@core/bread'
import { describe, expect, it } from 'vitest'
import { PottleError } from '../../../packages/core/src/error.js'

const london = ['london', 'england', 'britain']
const band = (question: LoafQuestion) => bandOf(loafWeight(question).value)

/** The fault that a question is refused for. */
function refusalOf(act: () => unknown): { code: string; parameter: string; detail: string } {
  try {
    act()
  } catch (error) {
    if (error instanceof PottleError) return { code: error.code, ...error.faults[0]! }
    throw error
  }
  throw new Error('it was not refused')
}

describe('loafWeight', () => {
  it('runs the example of its docstring', () => {
    const { low, best, high } = band({ coin: 'penny', kind: 'white', year: 1680, place: london })
    expect(best).toBeCloseTo(212.4, 0)
    expect(low / best).toBeCloseTo(0.85, 1)
    expect(high / best).toBeCloseTo(1.18, 1)
  })

  it('goes by the price: a twopenny loaf is two penny ones', () => {
    const one = band({ coin: 'penny', year: 1690, place: london }).best
    for (const [coin, pence] of Object.entries({ farthing: 0.25, halfpenny: 0.5, twopenny: 2, sixpenny: 6, twelvepenny: 12 })) {
      expect(band({ coin, year: 1690, place: london }).best / one).toBeCloseTo(pence, 4)
    }
  })

  it('keeps white, wheaten and household at 2 : 3 : 4', () => {
    const [white, wheaten, household] = ['white', 'wheaten', 'household'].map((kind) => band({ kind, year: 1701, place: london }).best)
    expect(wheaten! / white!).toBeCloseTo(1.5, 4)
    expect(household! / white!).toBeCloseTo(2, 4)
  })

  it('takes manchet for white and cheat for wheaten', () => {
    const of = (kind: string) => band({ kind, year: 1630 }).best
    expect(of('manchet')).toBe(of('white'))
    expect(of('cheat')).toBe(of('wheaten'))
    expect(loafWeight({ kind: 'manchet', year: 1630 }).label).toBe('penny manchet')
  })

  it('names one doubt for every loaf of a bench and year', () => {
    const ids = (question: LoafQuestion) => loafWeight(question).value.flatMap(({ factors }) => factors.map(({ unknown }) => unknown.id))
    expect(ids({ coin: 'penny', kind: 'white', year: 1690, place: london })).toEqual(['loaf:1690:london'])
    expect(ids({ coin: 'twopenny', kind: 'household', year: 1690, place: london })).toEqual(['loaf:1690:london'])
    expect(ids({ year: 1690 })).toEqual(['loaf:1690:england'])
    expect(ids({ year: 1690, place: ['bristol', 'gloucestershire', 'england', 'britain'] })).toEqual(['loaf:1690:town'])
    expect(ids({ year: 1690, wheat: 30 })).toEqual(['loaf:1690:england:wheat=30'])
  })

  it('narrows as the caller knows more', () => {
    const width = (question: Partial<LoafQuestion>) => {
      const { low, high } = band({ year: 1700, place: london, ...question })
      return high / low
    }
    expect(width({ wheat: 30 })).toBeLessThan(width({}))
    expect(width({ wheat: 30, allowance: 12 })).toBeLessThan(width({ wheat: 30 }))
    expect(width({ place: ['york', 'yorkshire', 'north', 'england', 'britain'] })).toBeGreaterThan(width({}))
  })

  it('lets town and country be told apart where the place does not', () => {
    const best = (market?: 'town' | 'country') => band({ year: 1620, ...(market ? { market } : {}) }).best
    expect(best('country')).toBeGreaterThan(best('town'))
  })

  it('shows every step with its sources', () => {
    const { steps } = loafWeight({ coin: 'twopenny', kind: 'white', year: 1690, place: london, crumb: true })
    expect(steps.map(({ factor }) => factor)).toEqual([
      '34.67 s a quarter',
      '64/81 = 27.39 s',
      '+ 14 s (10 to 18)',
      '338.4 / 41.39 s = 8.176 oz',
      '31.1034768 g',
      '2',
      expect.stringMatching(/^within a factor of 1\.\d+, nine times in ten$/),
      '0.68 (0.6 to 0.75)',
    ])
    for (const step of steps) expect(step.sources.length, step.text).toBeGreaterThan(0)
  })

  it('gives the crumb as a part of the loaf, and a roll less of it', () => {
    const whole = { kind: 'white', year: 1736 }
    expect(band({ ...whole, crumb: true }).best / band(whole).best).toBeCloseTo(0.68, 4)
    expect(loafWeight({ ...whole, crumb: true }).label).toBe('crumb of a penny white loaf')
    const roll = { kind: 'roll', year: 1845 }
    expect(band({ ...roll, crumb: true }).best / band(roll).best).toBeCloseTo(0.57, 4)
  })

  it('keeps the three ounces apart', () => {
    const ounce = (year: number) => loafWeight({ kind: 'white', year, place: london }).steps.find(({ factor }) => factor.endsWith(' g'))
    expect(ounce(1300)!.factor).toBe('29.1595095 g')
    expect(ounce(1600)!.factor).toBe('31.1034768 g')
    expect(ounce(1720)!.factor).toBe('28.349523125 g')
  })

  it('gives loaves of fixed weight whatever wheat cost', () => {
    const quartern = loafWeight({ coin: 'quartern', year: 1780, place: london })
    expect(quartern.exact).toBe('1970.2918571875')
    expect(band({ coin: 'quartern', year: 1800, place: london }).best).toBe(band({ coin: 'quartern', year: 1780, place: london }).best)
    expect(band({ coin: 'quartern', year: 1850 }).best).toBeCloseTo(1814.37, 1)
    expect(band({ coin: 'half-peck loaf', year: 1770 }).best / band({ coin: 'quartern', year: 1770 }).best).toBeCloseTo(2, 6)
  })

  it('sells horse loaves at three a penny', () => {
    const white = band({ kind: 'white', coin: 'penny', year: 1600 }).best
    expect(band({ kind: 'horse', year: 1600 }).best).toBeCloseTo(white, 3)
    expect(band({ kind: 'horse', coin: 'penny', year: 1600 }).best).toBeCloseTo(3 * white, 2)
  })

  it('takes the common loaf of the year where no kind is named', () => {
    expect(loafWeight({ year: 1700 }).kind).toBe('white')
    expect(loafWeight({ year: 1800 }).kind).toBe('wheaten')
  })

  it('is not sure of what French rolls weighed', () => {
    const { low, best, high } = band({ kind: 'french roll', year: 1750, place: london })
    expect(high / low).toBeGreaterThan(2)
    expect(best).toBeCloseTo(0.9 * band({ kind: 'white', year: 1750, place: london }).best, 0)
  })
})

describe('loafWeight refuses', () => {
  const cases: [string, LoafQuestion, string, string, RegExp][] = [
    ['a loaf before the statute', { year: 1265 }, 'no-answer', 'year', /1266/],
    ['a loaf after the tables', { year: 1901 }, 'no-answer', 'year', /1900/],
    ['a year that is no number', { year: Number.NaN }, 'bad-option', 'year', /whole number/],
    ['half a year', { year: 1690.5 }, 'bad-option', 'year', /whole number/],
    ['a price of nothing', { year: 1690, wheat: 0 }, 'bad-option', 'wheat', /above 0/],
    ['a price below nothing', { year: 1690, wheat: -3 }, 'bad-option', 'wheat', /above 0/],
    ['an absurd price', { year: 1690, wheat: 1001 }, 'bad-option', 'wheat', /at most 1000/],
    ['a price without end', { year: 1690, wheat: Number.POSITIVE_INFINITY }, 'bad-option', 'wheat', /at most 1000/],
    ['a negative allowance', { year: 1690, allowance: -1 }, 'bad-option', 'allowance', /0 or more/],
    ['an unknown coin', { year: 1690, coin: 'peny-farthing' }, 'bad-option', 'coin', /nearest/],
    ['a sixpenny loaf before sixpences', { year: 1500, coin: 'sixpenny' }, 'no-answer', 'coin', /1551/],
    ['a twopenny loaf before half-groats', { year: 1300, coin: 'twopenny' }, 'no-answer', 'coin', /1351/],
    ['a quartern loaf before there were any', { year: 1600, coin: 'quartern' }, 'no-answer', 'coin', /1700/],
    ['an unknown kind', { year: 1690, kind: 'wheatn' }, 'bad-option', 'kind', /wheaten/],
    ['a simnel of the assize in its cake days', { year: 1800, kind: 'simnel' }, 'no-answer', 'kind', /1709/],
    ['a roll before rolls', { year: 1400, kind: 'french roll' }, 'no-answer', 'kind', /1592/],
    ['a horse loaf under free sale', { year: 1850, kind: 'horse' }, 'no-answer', 'kind', /1814/],
    ['a place without a bench', { year: 1690, place: ['atlantis'] }, 'no-answer', 'place', /England/],
    ['a Scots loaf in Scots money', { year: 1690, place: ['edinburgh', 'scotland', 'britain'] }, 'no-answer', 'place', /1707/],
    ['an American loaf before the colonies', { year: 1600, place: ['america'] }, 'no-answer', 'place', /1620/],
  ]
  it.each(cases)('%s', (_, question, code, parameter, detail) => {
    const refusal = refusalOf(() => loafWeight(question))
    expect(refusal).toMatchObject({ code, parameter })
    expect(refusal.detail).toMatch(detail)
  })

  it('farthing and halfpenny loaves at no time: the statute itself sets them', () => {
    expect(band({ coin: 'farthing', kind: 'wastel', year: 1266, wheat: 12, allowance: 0 }).best).toBeCloseTo(198.3, 1)
    expect(band({ coin: 'halfpenny', kind: 'white', year: 1266 }).best).toBeGreaterThan(0)
  })
})

it('refuses a market that is none', () => {
  const market = 'fair' as unknown as 'town'
  expect(refusalOf(() => loafWeight({ year: 1690, market }))).toMatchObject({ code: 'bad-option', parameter: 'market' })
})

describe('loafSeries', () => {
  it('gives each year what loafWeight gives it', () => {
    const series = loafSeries({ coin: 'penny', kind: 'white', from: 1660, to: 1710, place: london })
    expect(series).toHaveLength(51)
    const { low, best, high } = band({ coin: 'penny', kind: 'white', year: 1690, place: london })
    expect(series[30]).toEqual({ year: 1690, low, best, high })
    expect(series.every((row) => row.low < row.best && row.best < row.high)).toBe(true)
  })

  it('refuses years that run backwards or leave the tables', () => {
    expect(refusalOf(() => loafSeries({ from: 1700, to: 1690 }))).toMatchObject({ code: 'bad-option', parameter: 'to' })
    expect(refusalOf(() => loafSeries({ from: 1700, to: 1950 }))).toMatchObject({ code: 'no-answer', parameter: 'year' })
    expect(refusalOf(() => loafSeries({ from: 1700, to: Number.NaN }))).toMatchObject({ code: 'bad-option', parameter: 'to' })
  })
})

describe('drawLoafSeries', () => {
  const of = (from: number, to: number, kind = 'white') =>
    drawLoafSeries(loafSeries({ coin: 'penny', kind, from, to }), { coin: 'penny', kind, place: 'England' })

  it('tells its story in words for those who do not see it', () => {
    const svg = of(1660, 1710)
    expect(svg).toMatch(/^<svg xmlns="http:\/\/www.w3.org\/2000\/svg" viewBox="0 0 \d+ \d+"/)
    expect(svg).toContain('<title id="loaf-title">The weight of a penny white loaf, England, 1660 to 1710</title>')
    expect(svg).toMatch(/<desc id="loaf-story">Best estimates run from \d+ g in 1709 to \d+ g in 1687;/)
    expect(svg).toContain('role="img"')
  })

  it('needs nothing from elsewhere', () => {
    expect(of(1600, 1800)).not.toMatch(/href|url\(|<script|<style|@import/)
  })

  it('draws one year, and six centuries', () => {
    expect(of(1690, 1690)).toContain('<circle')
    expect(of(1266, 1900, 'wheaten')).toContain('spaced by ratio')
    for (const svg of [of(1690, 1690), of(1266, 1900, 'wheaten')]) expect(svg).not.toMatch(/NaN|Infinity|undefined/)
  })

  it('keeps marks of the caller from becoming marks of the drawing', () => {
    const svg = drawLoafSeries(loafSeries({ from: 1690, to: 1691 }), { coin: 'penny', kind: 'white', place: '<b>&"' })
    expect(svg).toContain('&lt;b&gt;&amp;&quot;')
  })

  it('refuses what cannot be drawn', () => {
    const loaf = { coin: 'penny', kind: 'white', place: 'England' }
    expect(refusalOf(() => drawLoafSeries([], loaf))).toMatchObject({ code: 'bad-option', parameter: 'series' })
    expect(refusalOf(() => drawLoafSeries([{ year: 1690, low: 0, best: 1, high: 2 }], loaf))).toMatchObject({ parameter: 'series' })
  })
})
