/** Callers without a compiler: whatever they pass, the one error comes back, and it names what was wrong. */
import * as pottle from '@pottle/core'
import { describe, expect, it } from 'vitest'

const junk: readonly unknown[] = [
  null,
  0,
  -1,
  Number.NaN,
  Number.POSITIVE_INFINITY,
  '',
  {},
  [],
  true,
  10n,
  Symbol('s'),
  () => 1,
  '\ud800',
  '__proto__',
  'constructor',
  Object.create(null),
  { toJSON: () => 10n },
  new Date(Number.NaN),
]

const receipt = 'Take a pint of cream, four eggs and a spoonful of sugar; bake it in a slow oven half an hour.'

const sheet =
  (plan: (value: unknown) => unknown) =>
  (value: never): unknown =>
    pottle.workSheet(receipt, { year: 1700, plan: plan(value) as never })

const plan = {
  food: 'custard',
  from: { shape: 'tart', size: { depth: 25, diameter: 70 }, minutes: 30, celsius: 177 },
  to: { shape: 'pie', size: { depth: 35, diameter: 220 } },
}

/** Each takes one value of the wrong kind. */
const calls: Readonly<Record<string, (value: never) => unknown>> = {
  phrase: (value) => pottle.convert(value),
  options: (value) => pottle.convert('a pint of milk', value),
  year: (value) => pottle.convert('a pint of milk', { year: value }),
  place: (value) => pottle.convert('a pint of milk', { place: value }),
  thing: (value) => pottle.convert('a pint of milk', { thing: value }),
  to: (value) => pottle.convert('a pint of milk', { to: value }),
  coverage: (value) => pottle.convert('a pint of milk', { coverage: value }),
  standard: (value) => pottle.convert('a pint of milk', { standard: value }),
  setting: (value) => pottle.settingOf(1700, value),
  reading: (value) => pottle.readPhrase(value),
  heat: (value) => pottle.findHeat(value),
  heatYear: (value) => pottle.findHeat('a slow oven', value),
  heatId: (value) => pottle.heatById(value),
  sugar: (value) => pottle.sugarHeight(value),
  liquid: (value) => pottle.liquidHeat(value),
  loaf: (value) => pottle.loafWeight(value),
  coin: (value) => pottle.loafWeight({ year: 1700, coin: value }),
  kind: (value) => pottle.loafWeight({ year: 1700, kind: value }),
  market: (value) => pottle.loafWeight({ year: 1700, market: value }),
  bench: (value) => pottle.loafWeight({ year: 1700, place: value }),
  wheat: (value) => pottle.loafWeight({ year: 1700, wheat: value }),
  series: (value) => pottle.loafSeries(value),
  weighLoaf: (value) => pottle.weighLoaf(value),
  loafYear: (value) => pottle.weighLoaf({ year: value }),
  loafCoin: (value) => pottle.weighLoaf({ year: 1690, coin: value }),
  loafCoverage: (value) => pottle.weighLoaf({ year: 1690, coverage: value }),
  oneYear: (value) => pottle.oneYear(value),
  loafName: (value) => pottle.readLoafName(value),
  oven: (value) => pottle.brickOven(value),
  curve: (value) => pottle.brickOven().curve(4, value),
  bake: (value) => pottle.bakePlan(value),
  shape: (value) => pottle.bakePlan({ ...plan, to: { ...plan.to, shape: value } }),
  contains: (value) => pottle.bakePlan({ ...plan, contains: value }),
  fanRule: (value) => pottle.bakePlan({ ...plan, fanRule: value }),
  order: (value) => pottle.bakingOrder([value]),
  cautions: (value) => pottle.cautionsFor(value),
  things: (value) => pottle.cautionsFor({ things: value }),
  measure: (value) => pottle.describeMeasure(value),
  picture: (value) => pottle.drawCoolingCurve(value),
  scale: (value) => pottle.drawHeatScale(value),
  receipt: (value) => pottle.readReceipt(value),
  sheetText: (value) => pottle.workSheet(value),
  sheetOptions: (value) => pottle.workSheet(receipt, value),
  sheetTitle: (value) => pottle.workSheet(receipt, { title: value }),
  sheetYear: (value) => pottle.workSheet(receipt, { year: value }),
  sheetPlace: (value) => pottle.workSheet(receipt, { place: value }),
  sheetCoverage: (value) => pottle.workSheet(receipt, { coverage: value }),
  plan: sheet((value) => value),
  planField: sheet((value) => ({ tart: value })),
  planScale: sheet((scale) => ({ scale })),
  planGuests: sheet((guests) => ({ guests })),
  planServes: sheet((serves) => ({ guests: 4, serves })),
  planUnits: sheet((units) => ({ units })),
  planEggs: sheet((eggClass) => ({ eggClass })),
  planOven: sheet((oven) => ({ oven })),
  planDish: sheet((dish) => ({ dish })),
  planDishes: sheet((dish) => ({ dish: ['small-tart', dish] })),
  planDishId: sheet((id) => ({ dish: { id } })),
  planShape: sheet((shape) => ({ dish: { shape, diameter: 100, depth: 30 } })),
  planLength: sheet((diameter) => ({ dish: { shape: 'round', diameter, depth: 30 } })),
  planUnit: sheet((unit) => ({ dish: { shape: 'round', diameter: 100, depth: 30, unit } })),
  planVolume: sheet((volume) => ({ dish: { shape: 'mould', volume } })),
  planFill: sheet((fill) => ({ dish: { id: 'small-tart', fill } })),
  planCount: sheet((count) => ({ dish: { id: 'small-tart', count } })),
  planLimit: sheet((limit) => ({ limit })),
  planLimitThing: sheet((thing) => ({ limit: { thing, amount: 1, unit: 'g' } })),
  planLimitAmount: sheet((amount) => ({ limit: { thing: 'cream', amount, unit: 'ml' } })),
  planLimitUnit: sheet((unit) => ({ limit: { thing: 'cream', amount: 1, unit } })),
  planFixed: sheet((fixed) => ({ fixed })),
  planStandards: sheet((standards) => ({ fixed: { standards } })),
  planStandard: sheet((pint) => ({ fixed: { standards: { pint } } })),
  planSizes: sheet((sizes) => ({ fixed: { sizes } })),
  planSize: sheet((spoonful) => ({ fixed: { sizes: { spoonful } } })),
  planSizeOf: sheet((ml) => ({ fixed: { sizes: { spoonful: { ml } } } })),
  planLines: sheet((lines) => ({ fixed: { lines } })),
  planLine: sheet((line) => ({ fixed: { lines: { 1: line } } })),
  planLineStandard: sheet((standard) => ({ fixed: { lines: { 1: { standard } } } })),
  planEgg: sheet((egg) => ({ fixed: { egg } })),
  planDensities: sheet((densities) => ({ fixed: { densities } })),
  planDensity: sheet((cream) => ({ fixed: { densities: { cream } } })),
  planHeat: sheet((oven) => ({ fixed: { oven } })),
}

describe('values of the wrong kind', () => {
  it.each(Object.entries(calls))('%s', (_, call) => {
    for (const value of junk) {
      try {
        call(value as never)
      } catch (error) {
        expect(error).toBeInstanceOf(pottle.PottleError)
        expect((error as pottle.PottleError).faults.length).toBeGreaterThan(0)
      }
    }
  })

  it('a phrase of an amount that hangs on another says so', () => {
    expect(() => pottle.convert('as much sugar as flour', { year: 1700 })).toThrow(/sugar here is as much as flour/)
  })

  it('things without a weight are told by their number', () => {
    const { value, senses } = pottle.convert('a dozen larks', { year: 1750 })
    expect(value).toMatchObject({ quantity: 'count', unit: 'each', best: 12 })
    expect(senses[0]?.exact).toBe('12')
  })
})
