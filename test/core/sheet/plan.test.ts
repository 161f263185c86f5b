import { type Plan, workSheet } from '@core/sheet'
import { describe, expect, test } from 'vitest'
import { almondTart, bunsBy, lineOf, refusal, tartBy } from './ask.js'

describe('scaling', () => {
  const whole = tartBy()

  test.each([
    [0.5, 0.5],
    ['1/2', 0.5],
    ['1/3', 1 / 3],
    ['1 1/2', 1.5],
    [2, 2],
  ])('by a factor: %s', (scale, factor) => {
    const sheet = tartBy({ scale })
    expect(sheet.scale).toMatchObject({ by: 'factor' })
    expect(sheet.scale.factor).toBeCloseTo(factor, 12)
    expect(sheet.totals.mass!.best).toBeCloseTo(whole.totals.mass!.best * factor, 1)
    expect(sheet.totals.volume!.high).toBeCloseTo(whole.totals.volume!.high * factor, 1)
    expect(lineOf(sheet, 'cream').value).toEqual(lineOf(whole, 'cream').value)
    expect(lineOf(sheet, 'cream').working!.value.best).toBeCloseTo(lineOf(whole, 'cream').value!.best * factor, 2)
  })

  test('by guests', () => {
    expect(tartBy({ guests: 12, serves: 6 }).scale.factor).toBe(2)
    const stated = workSheet('Take a pint of cream. Sufficient for 6 or 7 persons.', { year: 1861, plan: { guests: 13 } })
    expect(stated.scale).toMatchObject({ factor: 2, text: expect.stringContaining('by its own words') })
    const estimated = tartBy({ guests: 12 }).scale
    expect(estimated.by).toBe('guests')
    expect(estimated.text).toContain('estimate')
  })

  test('by the dish: the batch fills it', () => {
    const sheet = tartBy({ dish: { shape: 'round', diameter: 200, depth: 40, fill: 1 } })
    expect(sheet.totals.volume!.best).toBeCloseTo((Math.PI / 4) * 20 * 20 * 4, 0)
    expect(sheet.dishes.fits[0]).toMatchObject({ count: 1, full: 1 })
    const twice = tartBy({ dish: { shape: 'round', diameter: 400, depth: 40, fill: 1 } })
    expect(twice.scale.factor / sheet.scale.factor).toBeCloseTo(4, 5)
  })

  test('by several dishes', () => {
    const sheet = tartBy({ dish: [{ id: 'small-tart', count: 4 }, 'large-tart'] })
    expect(sheet.dishes.fits.map(({ count }) => count)).toEqual([4, 1])
    expect(sheet.dishes.fits.every(({ full }) => Math.abs(full - 1) < 0.001)).toBe(true)
    expect(sheet.scale.text).toContain('4 small tins of 10 cm and 1 large tin of 18 cm')
  })

  test('a dish beside another way of scaling tells how many are filled', () => {
    const sheet = tartBy({ scale: 2, dish: { id: 'small-tart' } })
    expect(sheet.scale.by).toBe('factor')
    expect(sheet.dishes.fits[0]!.fills).toBeCloseTo(2 * whole.dishes.fits[0]!.fills, 1)
    expect(sheet.dishes.fits[0]!.count).toBe(Math.round(sheet.dishes.fits[0]!.fills))
  })

  test('by the one thing there is least of', () => {
    expect(tartBy({ limit: { thing: 'cream', amount: 100, unit: 'ml' } }).scale.factor).toBeCloseTo(100 / 236.588, 3)
    expect(tartBy({ limit: { thing: 'almonds', amount: '1/2', unit: 'lb' } }).scale.factor).toBeCloseTo(2, 2)
    expect(tartBy({ limit: { thing: 'egg', amount: 2, unit: 'each' } }).scale.factor).toBe(0.5)
  })
})

describe('dishes', () => {
  test('lengths in inches and centimetres', () => {
    const byUnit = (dish: Plan['dish']) => tartBy({ dish }).scale.factor
    const round = byUnit({ shape: 'round', diameter: 203.2, depth: 25.4 })
    expect(byUnit({ shape: 'round', diameter: 8, depth: 1, unit: 'in' })).toBeCloseTo(round, 10)
    expect(byUnit({ shape: 'round', diameter: '8 in', depth: '2.54cm' })).toBeCloseTo(round, 10)
    expect(byUnit({ shape: 'round', diameter: 20.32, depth: 2.54, unit: 'cm' })).toBeCloseTo(round, 10)
  })

  test('every shape', () => {
    const size = { length: 200, width: 100, depth: 50 } as const
    const box = tartBy({ dish: { shape: 'rectangle', ...size } }).scale.factor
    expect(tartBy({ dish: { shape: 'loaf', ...size } }).scale.factor).toBeCloseTo(box, 10)
    expect(tartBy({ dish: { shape: 'oval', ...size } }).scale.factor / box).toBeCloseTo(Math.PI / 4, 10)
    expect(tartBy({ dish: { shape: 'square', side: 200, depth: 25 } }).scale.factor).toBeCloseTo(box, 10)
    expect(tartBy({ dish: { shape: 'mould', volume: 1000 } }).scale.factor).toBeCloseTo(box, 10)
  })

  test('taper and paste take room', () => {
    const plain = tartBy({ dish: { shape: 'round', diameter: 100, depth: 25 } }).scale.factor
    expect(tartBy({ dish: { shape: 'round', diameter: 100, depth: 25, taper: 15 } }).scale.factor).toBeLessThan(plain)
    expect(tartBy({ dish: { shape: 'round', diameter: 100, depth: 25, lining: 3 } }).scale.factor).toBeLessThan(plain)
  })

  test('each has its time', () => {
    const { bake } = tartBy({
      dish: [
        { shape: 'round', diameter: 90, depth: 25, count: 3 },
        { shape: 'round', diameter: 220, depth: 45 },
      ],
    })
    expect(bake).toHaveLength(2)
    expect(bake[1]!.minutes.best).toBeGreaterThan(bake[0]!.minutes.best)
  })
})

describe('fixes', () => {
  test('this pint: by the measure, by its family, or for one line', () => {
    for (const fixed of [{ standards: { pint: 'ale' } }, { standards: { gallon: 'gallon.ale' } }, { lines: { 3: { standard: 'ale' } } }]) {
      const sheet = tartBy({ fixed })
      expect(lineOf(sheet, 'cream').chosen).toMatchObject({ id: 'pint.ale', likelihood: 1 })
      expect(lineOf(sheet, 'cream').note).toBeNull()
      expect(sheet.fixed[0]!.lines).toEqual([3])
      expect(sheet.totals.mass!.best).toBeGreaterThan(tartBy().totals.mass!.best)
    }
  })

  test('that loaf, that spoon, that egg', () => {
    const sheet = tartBy({ fixed: { sizes: { 'penny loaf': { g: 300 }, spoonful: { ml: 15 }, egg: { g: 50 } } } })
    expect(lineOf(sheet, 'loaf').value).toMatchObject({ low: 150, best: 150, high: 150 })
    expect(lineOf(sheet, 'sack').value).toMatchObject({ quantity: 'volume', best: 45 })
    expect(lineOf(sheet, 'egg').chosen!.label).toContain('50 g')
    expect(sheet.fixed).toHaveLength(3)
  })

  test('a density, and the oven', () => {
    const sheet = bunsBy({ fixed: { densities: { flour: 0.5 }, oven: 180 }, units: 'us' })
    expect(lineOf(sheet, 'flour').working!.text).toMatch(/cups?/)
    expect(sheet.oven[0]).toMatchObject({ heat: 'fixed', phrase: 'a moderate oven', set: '180 °C' })
    expect(sheet.fixed.map(({ what }) => what)).toEqual(
      ['density of flour', 'oven'].map((what) => expect.stringContaining(what.split(' ')[0]!)),
    )
  })

  test('one that bears on no line is shown as such', () => {
    expect(tartBy({ fixed: { standards: { bushel: 'corn' } } }).fixed).toEqual([{ what: 'bushel', value: 'corn', lines: [] }])
  })
})

describe('rounding', () => {
  test.each(['metric', 'us', 'uk'] as const)('keeps the ratios of the lines: %s', (units) => {
    for (const scale of [1, 0.5, '1/3', 4]) {
      const { lines, rounding } = tartBy({ units, scale })
      const plain = lines.filter(({ eggs }) => eggs === null)
      for (const { working } of plain) expect(Math.abs(working!.moved)).toBeLessThan(0.12)
      expect(rounding).toMatch(/^Rounding moves no line by more than/)
    }
  })

  test('on scales and jugs no two lines part by more than a twentieth', () => {
    const moved = tartBy({ scale: '2/3' })
      .lines.filter(({ eggs }) => eggs === null)
      .map(({ working }) => working!.moved)
    expect(Math.max(...moved) - Math.min(...moved)).toBeLessThan(0.05)
  })
})

describe('bad input', () => {
  const cream = 'Take a pint of cream.'
  const refused: readonly (readonly [string, unknown, string])[] = [
    ['a scale of nothing', { scale: 0 }, 'plan.scale'],
    ['a scale below nothing', { scale: -1 }, 'plan.scale'],
    ['a scale in words', { scale: 'half' }, 'plan.scale'],
    ['a scale over nothing', { scale: '1/0' }, 'plan.scale'],
    ['no number', { scale: Number.NaN }, 'plan.scale'],
    ['two ways to scale', { scale: 2, guests: 4, serves: 2 }, 'plan.guests'],
    ['serves without guests', { serves: 2 }, 'plan.serves'],
    ['half a guest', { guests: 0.5 }, 'plan.guests'],
    ['a dish too small to exist', { dish: { shape: 'round', diameter: 1, depth: 1 } }, 'plan.dish.diameter'],
    ['a dish with no room in it', { dish: { shape: 'round', diameter: 20, depth: 20, lining: 9 } }, 'plan.dish'],
    ['a dish without a depth', { dish: { shape: 'round', diameter: 100 } }, 'plan.dish.depth'],
    ['a shape that is none', { dish: { shape: 'star' } }, 'plan.dish.shape'],
    ['a dish that no one knows', { dish: 'small-trat' }, 'plan.dish'],
    ['the second of two dishes', { dish: ['small-tart', { shape: 'round', diameter: 'wide', depth: 20 }] }, 'plan.dish.1.diameter'],
    ['no dishes', { dish: [] }, 'plan.dish'],
    ['a unit of length that is none', { dish: { shape: 'round', diameter: 9, depth: 1, unit: 'yard' } }, 'plan.dish.unit'],
    ['units that are none', { units: 'old' }, 'plan.units'],
    ['an egg that is none', { eggClass: 'egg-us-lage' }, 'plan.eggClass'],
    ['an oven that is none', { oven: 'wood' }, 'plan.oven'],
    ['a field that is none', { sclae: 2 }, 'plan.sclae'],
    ['a limit in no unit', { limit: { thing: 'cream', amount: 1, unit: 'cupp' } }, 'plan.limit.unit'],
    ['a limit of what is not there', { limit: { thing: 'saffron', amount: 1, unit: 'g' } }, 'plan.limit.thing'],
    ['a limit in a unit that does not fit', { limit: { thing: 'cream', amount: 1, unit: 'mm' } }, 'plan.limit.unit'],
    ['a fix that is none', { fixed: { pint: 'wine' } }, 'plan.fixed.pint'],
    ['a measure that is none', { fixed: { standards: { pinnt: 'wine' } } }, 'plan.fixed.standards.pinnt'],
    ['a standard that is none', { fixed: { standards: { pint: 'martian' } } }, 'plan.fixed.standards.pint'],
    ['an unused standard that is none', { fixed: { standards: { bushel: 'martian' } } }, 'plan.fixed.standards.bushel'],
    ['a line that is none', { fixed: { lines: { 9: { g: 3 } } } }, 'plan.fixed.lines.9'],
    ['a size of nothing', { fixed: { sizes: { spoonful: {} } } }, 'plan.fixed.sizes.spoonful'],
    ['a line fixed to nothing', { fixed: { lines: { 1: {} } } }, 'plan.fixed.lines.1'],
    ['a weight that is none', { fixed: { egg: -3 } }, 'plan.fixed.egg'],
  ]

  test.each(refused)('%s', (_, plan, parameter) => {
    const { code, parameters, details } = refusal(cream, { year: 1690, plan: plan as Plan })
    expect(code).toBe('bad-option')
    expect(parameters).toContain(parameter)
    expect(details).not.toMatch(/undefined|NaN(?!\d)|\[object/)
  })

  const contradictions: readonly (readonly [string, Plan, readonly string[]])[] = [
    ['a class and a weight', { eggClass: 'egg-uk-m', fixed: { egg: 52 } }, ['plan.eggClass', 'plan.fixed.egg']],
    ['a standard and a size', { fixed: { standards: { pint: 'wine' }, sizes: { pint: { ml: 500 } } } }, ['standards.pint', 'sizes.pint']],
    ['a family and a measure', { fixed: { standards: { pint: 'wine', gallon: 'ale' } } }, ['standards.pint', 'standards.gallon']],
    ['a family and a size', { fixed: { standards: { gallon: 'ale' }, sizes: { pint: { ml: 500 } } } }, ['standards.gallon', 'sizes.pint']],
    ['grams and millilitres', { fixed: { sizes: { pint: { g: 500, ml: 500 } } } }, ['sizes.pint.g', 'sizes.pint.ml']],
    ['a line by both', { fixed: { lines: { 1: { standard: 'wine', ml: 500 } } } }, ['lines.1.standard', 'lines.1.ml']],
  ]

  test.each(contradictions)('contradictory fixes name both: %s', (_, plan, both) => {
    const { code, parameters, details } = refusal(cream, { year: 1690, plan })
    expect(code).toBe('bad-option')
    for (const name of both) expect(`${parameters.join(' ')} ${details}`).toContain(name)
  })

  test('all faults of a plan are told at once', () => {
    expect(refusal(cream, { plan: { scale: 0, oven: 'wood' as 'gas', units: 'old' as 'us' } }).parameters.sort()).toEqual([
      'plan.oven',
      'plan.scale',
      'plan.units',
    ])
  })

  test.each(['', '   \n\t ', undefined, 3])('a text of nothing: %j', (text) => {
    expect(refusal(text as string, {}).parameters).toEqual(['text'])
  })

  test('a year, a place, a title and a coverage that won’t do', () => {
    expect(refusal(cream, { year: '3000' }).parameters).toEqual(['year'])
    expect(refusal(cream, { place: 'atlantis' }).parameters).toEqual(['place'])
    expect(refusal(cream, { title: '' }).parameters).toEqual(['title'])
    expect(refusal(cream, { coverage: 2 }).parameters).toEqual(['coverage'])
  })

  test('what the receipt can’t tell has no answer', () => {
    expect(refusal('Take some cream.', { plan: { dish: 'basin' } })).toMatchObject({ code: 'no-answer', parameters: ['plan.dish'] })
    expect(refusal('Take some cream.', { plan: { guests: 4 } })).toMatchObject({ code: 'no-answer', parameters: ['plan.guests'] })
  })

  test('the same call gives the same sheet', () => {
    const once = workSheet(almondTart.text, { year: '1690~', plan: { scale: '1/3' } })
    expect(workSheet(almondTart.text, { year: '1690~', plan: { scale: '1/3' } })).toEqual(once)
  })
})
