import { sayEggs } from '@core/modern'
import { workSheet } from '@core/sheet'
import { convert } from '@pottle/core'
import { describe, expect, test } from 'vitest'
import { stretchesOf } from '../../../packages/core/src/sheet/marks.js'
import { almondTart, bunsBy, lineOf, seedBuns, tartBy } from './ask.js'

const things = (text: string) => workSheet(text, { year: 1690 }).lines.map(({ thing }) => thing)

describe('the demo receipts', () => {
  test('have a line for every measured thing, in the order of the text', () => {
    const { lines } = tartBy()
    expect(lines.map(({ thing }) => thing)).toEqual(['almond', 'rose water', 'cream', 'egg', 'loaf', 'butter', 'sugar', 'mace', 'sack'])
    expect(lines.map(({ number }) => number)).toEqual([1, 2, 3, 4, 5, 6, 7, 8, 9])
    expect(lines.every(({ working, chosen }) => working !== null && chosen !== null)).toBe(true)
  })

  test('are told in modern amounts', () => {
    const sheet = tartBy()
    expect(lineOf(sheet, 'cream').working).toMatchObject({ amount: 240, unit: 'ml', text: '240 ml', metric: null })
    expect(lineOf(sheet, 'almond').working?.text).toBe('115 g')
    expect(lineOf(tartBy({ units: 'us' }), 'cream').working).toMatchObject({ amount: 1, unit: 'cup-us', text: '1 cup', metric: '240 ml' })
    expect(lineOf(tartBy({ units: 'uk' }), 'almond').working).toMatchObject({ text: '¼ lb', metric: '115 g' })
  })

  test('say which sense was chosen, why, and where the reader must choose', () => {
    const cream = lineOf(tartBy(), 'cream')
    expect(cream.chosen).toMatchObject({ id: 'pint.wine', label: expect.any(String), reason: expect.stringContaining('cream') })
    expect(cream.senses.reduce((sum, { likelihood }) => sum + likelihood, 0)).toBeCloseTo(1, 3)
    expect(cream.note).toMatch(/^Choose: .*wine.*ale/)
    expect(cream.sources.length).toBeGreaterThan(0)
  })

  test('name what has no amount', () => {
    expect(tartBy().unmeasured.map(({ thing }) => thing)).toEqual(expect.arrayContaining(['salt', 'paste']))
  })

  test('give the heat, a time for each dish, and the order of work', () => {
    const {
      oven,
      bake,
      order,
      bake: [small],
    } = tartBy()
    expect(oven).toHaveLength(1)
    expect(oven[0]).toMatchObject({ phrase: 'a quick Oven', heat: 'hot' })
    expect(bake.map(({ dish }) => dish)).toEqual(['small tin of 10 cm, filled 21 mm deep', 'large tin of 18 cm, filled 18 mm deep'])
    expect(small!.minutes.early).toBeLessThanOrEqual(small!.minutes.best)
    expect(small!.note).toContain('30 minutes')
    expect(order.map(({ lines }) => lines)).toEqual([[1, 2], [3], [4, 5], [6], [7, 8, 9], [], [], []])
    expect(order.find(({ minutes }) => minutes)?.minutes).toEqual({ low: 30, high: 30 })
    expect(tartBy({ oven: 'gas' }).oven[0]!.set).toMatch(/^gas mark/)
    expect(tartBy({ oven: 'fan' }).oven[0]!.set).toMatch(/fan$/)
  })

  test('number their footnotes in the order of the lines, each source once', () => {
    const { sources, lines } = tartBy()
    expect(sources.map(({ number }) => number)).toEqual(sources.map((_, i) => i + 1))
    expect(new Set(sources.map(({ id }) => id)).size).toBe(sources.length)
    expect(lines[0]!.sources[0]).toBe(1)
    expect(tartBy().totals.volume!.sources.map((number) => sources[number - 1]!.id)).toContain('cracow-solution-densities')
    expect(tartBy().dishes.fits[0]!.sources.map((number) => sources[number - 1]!.id)).toEqual(['common-practice'])
    expect(lines.flatMap((line) => line.sources).every((number) => sources[number - 1]!.number === number)).toBe(true)
  })
})

describe('a bake', () => {
  const tart = 'Take a pint of cream, half a pound of flour and four eggs. Bake it in a quick oven'

  test('is as unsure as the dish that the receipt had in mind', () => {
    const { minutes } = workSheet(`${tart} half an hour.`, { year: 1690 }).bake[0]!
    expect(minutes.late / minutes.early).toBeGreaterThan(1.5)
    expect(minutes.early).toBeLessThan(minutes.best)
  })

  test('spans the time that the receipt spans', () => {
    const spread = (words: string) => {
      const { minutes } = workSheet(`${tart} ${words}.`, { year: 1690 }).bake[0]!
      return minutes.late / minutes.early
    }
    expect(spread('half an hour or three quarters of an hour')).toBeGreaterThan(1.4 * spread('half an hour'))
  })

  test('is for small things where they are what bakes, and not where a measure or a cut is small', () => {
    const dish = (words: string) => workSheet(`${tart} half an hour. ${words}`, { year: 1690 }).bake[0]!.note
    expect(dish('Add a small teacupful of milk and a little salt, beaten small.')).not.toContain('small tin')
    expect(dish('Make them up in little round cakes.')).toContain('small tin')
  })

  test('is of the whole batch where the receipt bakes it as one', () => {
    const great = 'Take half a peck of flour, two pounds of butter, three pints of milk and ten eggs; set'
    const [one, many] = ['it', 'them'].map((what) => workSheet(`${great} ${what} in a quick oven two hours.`, { year: 1664 }).bake[0]!)
    expect(one!.note).toContain('the whole of it in one round')
    expect(many!.note).toContain('a large tin')
    // Heat goes in as the thickness to a power of 1 to 2: a layer a quarter as deep takes at most a quarter of the time.
    expect(one!.minutes.best).toBeLessThan(many!.minutes.best / 3)
  })

  test('says where so deep a dish wants a cooler oven', () => {
    const plan = { dish: { shape: 'round', diameter: 250, depth: 90 } } as const
    const sheet = workSheet('Take two pounds of flour, a pint of milk and 8 eggs. Bake them in a quick oven half an hour.', {
      year: 1750,
      plan,
    })
    expect(sheet.bake[0]!.note).toMatch(/cooler oven: its time is for \d+ °C/)
  })

  test('is told where an oven is warm enough for the dish as it is taken to be, and too cool for a deeper one', () => {
    const words = 'Take half a pound of flour and a pound of butter. Bake it in a cool oven half an hour.'
    const [bake] = workSheet(words, { year: 1700, plan: { dish: { shape: 'round', diameter: 250, depth: 90 } } }).bake
    expect(bake!.minutes.early).toBeLessThanOrEqual(bake!.minutes.best)
    expect(bake!.minutes.late).toBeGreaterThanOrEqual(bake!.minutes.best)
  })

  test('says why a larger dish bakes sooner, where it does', () => {
    const [small, large] = tartBy().bake
    expect(large!.minutes.best).toBeLessThan(small!.minutes.best)
    expect(large!.note).toContain('filled less deep')
    const [alike, other] = bunsBy().bake
    expect(Math.abs(alike!.minutes.best - other!.minutes.best)).toBeLessThan(1)
    expect(other!.note).not.toContain('filled less deep')
  })
})

describe('dishes', () => {
  test('are not filled over their brim', () => {
    for (let pints = 1; pints < 20; pints++)
      for (const { full, count } of workSheet(`Take ${pints} pints of cream.`, { year: 1690 }).dishes.fits)
        expect(full, `${count} for ${pints} pints`).toBeLessThanOrEqual(1.1)
  })
})

describe('relations between lines', () => {
  test('the like quantity is the same measure of another thing', () => {
    const sheet = bunsBy()
    expect(lineOf(sheet, 'sugar').value!.best).toBeCloseTo(lineOf(sheet, 'butter').value!.best, 3)
    expect(lineOf(sheet, 'sugar').measure).toBe('pound')
  })

  test('of each gives every thing its own line', () => {
    const [nutmeg, cinnamon] = [lineOf(bunsBy(), 'nutmeg'), lineOf(bunsBy(), 'cinnamon')]
    expect([nutmeg.start, nutmeg.end]).toEqual([cinnamon.start, cinnamon.end])
    expect(nutmeg.value).toEqual(cinnamon.value)
    expect(nutmeg.number).not.toBe(cinnamon.number)
  })

  test('an equal weight weighs as much as the other, whatever that is measured by', () => {
    const { lines } = workSheet('Take a pint of cream and an equal weight of sugar.', { year: 1690 })
    const cream = workSheet('Take a pint of cream.', { year: 1690 }).totals.mass!.best
    expect(lines[1]!.value).toMatchObject({ quantity: 'mass' })
    expect(lines[1]!.value!.best).toBeCloseTo(cream, 0)
  })

  test('a relation to a relation comes out', () => {
    const { lines } = workSheet('Take a pound of flour, as much sugar, and as much butter.', { year: 1750 })
    expect(lines.map(({ value }) => Math.round(value!.best))).toEqual([454, 454, 454])
  })

  test('as many are counted like the other, in their own measure', () => {
    const text = 'Take six eggs, as many spoonfuls of cream, the juice of as many lemons, three cloves and as many blades of mace.'
    const { lines } = workSheet(text, { year: 1750 })
    expect(lines.map(({ amount, measure, thing }) => `${amount!.low} ${measure} ${thing}`)).toEqual([
      '6 none egg',
      '6 spoonful cream',
      '6 none lemon',
      '3 none clove',
      '3 blade mace',
    ])
    expect(lines[2]!.part).toBe('juice')
  })

  test('their weight is that of what was counted, past other weighings', () => {
    const { lines } = workSheet(
      'Take ten eggs, twice their weight in sugar, half their weight in flour, and the weight of four in butter.',
      { year: 1750 },
    )
    const [, sugar, flour, butter] = lines.map(({ value }) => value!.best)
    expect(sugar! / flour!).toBeCloseTo(4, 1)
    expect(butter! / sugar!).toBeCloseTo(0.2, 1)
  })

  test('as much as a count weighs as much', () => {
    const { lines } = workSheet('Take three nutmegs and as much ginger.', { year: 1750 })
    expect(lines[1]!.value).toMatchObject({ quantity: 'mass' })
    expect(lines[1]!.value!.best).toBeCloseTo(workSheet('Take three nutmegs.', { year: 1750 }).totals.mass!.best, 1)
  })

  test('the same weight as of another is that of its kind', () => {
    const { lines } = workSheet('Take six ounces of beef suet, half a pound of raisins, and the same weight of sugar as of suet.', {
      year: 1835,
    })
    expect(lines[2]!.phrase).toBe('the same weight of sugar as of suet')
    expect(lines[2]!.value!.best).toBeCloseTo(lines[0]!.value!.best, 3)
  })

  test('every part of a thing has its own line', () => {
    const { lines } = workSheet('Take the rind and juice of 2 lemons.', { year: 1835 })
    expect(lines.map(({ part, phrase }) => `${part}: ${phrase}`)).toEqual([
      'rind: the rind and juice of 2 lemons',
      'juice: the rind and juice of 2 lemons',
    ])
    const [rind, juice] = lines.map(({ value }) => value!.best)
    expect(juice! / rind!).toBeGreaterThan(4)
  })

  test('a relation to nothing measured is a problem of the line alone', () => {
    const { lines } = workSheet('Take a pint of cream, and as much sugar as salt.', { year: 1690 })
    expect(lines[0]!.value).not.toBeNull()
    expect(lines.at(-1)!.value).toBeNull()
    expect(lines.at(-1)!.note).toContain('salt')
  })
})

describe('shared unknowns', () => {
  const wide = ({ low, high }: { low: number; high: number }) => high - low

  test('two pints of one receipt are the same pint, so that doubt does not cancel', () => {
    const one = workSheet('Take a pint of cream.', { year: 1690 }).totals.volume!
    const two = workSheet('Take a pint of cream. Then add half a pint of cream, and half a pint of cream.', { year: 1690 }).totals.volume!
    expect(wide(two)).toBeCloseTo(2 * wide(one), 1)
    expect(two.best).toBeCloseTo(2 * one.best, 2)
  })

  test('so are the eggs', () => {
    const one = workSheet('Take ten eggs.', { year: 1690 }).totals.mass!
    const two = workSheet('Take five eggs; then five eggs more.', { year: 1690 }).totals.mass!
    expect(two.low).toBeCloseTo(one.low, 0)
    expect(two.high).toBeCloseTo(one.high, 0)
  })

  test('totals are sums of the lines, and say what they leave out', () => {
    const { lines, totals } = workSheet('Take a pound of flour and a pint of milk, and as much sugar as salt.', { year: 1750 })
    expect(totals.mass!.best).toBeGreaterThan(lines[0]!.value!.best)
    expect(totals.mass!.without).toEqual([lines.at(-1)!.number])
  })

  test('dry things give up their air in a batch', () => {
    const { totals } = workSheet('Take a quart of flour and a quart of milk.', { year: 1800 })
    expect(totals.volume!.best).toBeLessThan(totals.mass!.best)
  })
})

describe('quantities left open', () => {
  test('are worked out from the rest and marked as estimates', () => {
    const milk = lineOf(bunsBy(), 'milk')
    expect(milk).toMatchObject({ estimate: true, phrase: 'as much warm milk as will make it into a thick batter' })
    expect(milk.note).toContain('estimate')
    const { low, best, high } = milk.value!
    expect(low).toBeGreaterThanOrEqual(0)
    expect(best).toBeGreaterThan(300)
    expect(high).toBeGreaterThan(best)
  })

  test('flour may be what is open', () => {
    const { lines } = workSheet('Take a pint of milk and three eggs, and so much flour as will make it a batter.', { year: 1830 })
    expect(lines.at(-1)).toMatchObject({ thing: 'flour', estimate: true })
    expect(lines.at(-1)!.value!.best).toBeGreaterThan(100)
  })

  test('may be told with how warm they go in', () => {
    const { lines, warmths } = workSheet('Take a pound of flour, and as much cream, blood-warm, as will make it into a light paste.', {
      year: 1664,
    })
    expect(lines[1]).toMatchObject({ thing: 'cream', estimate: true })
    expect(warmths).toHaveLength(1)
  })

  test('stay unmeasured where nothing tells them', () => {
    const sheet = workSheet('Take a pint of cream, and as much sugar as will sweeten it.', { year: 1690 })
    expect(sheet.lines.map(({ thing }) => thing)).toEqual(['cream'])
    expect(sheet.unmeasured.map(({ thing }) => thing)).toContain('sugar')
  })
})

describe('eggs', () => {
  test('whole, yolks and whites are a list', () => {
    const egg = { label: 'egg', plural: 'eggs' } as Parameters<typeof sayEggs>[1]
    expect(sayEggs({ whole: 6, yolks: 7, whites: 2 }, egg)).toBe('6 eggs, 7 yolks and 2 whites')
    expect(sayEggs({ whole: 6, yolks: 1, whites: 0 }, egg)).toBe('6 eggs and 1 yolk')
  })

  test('are cracked whole, and what is left over is told', () => {
    const { eggs } = tartBy()
    expect(eggs).toMatchObject({ unit: 'egg-eu-m', whole: 2, yolks: 1, whites: 0, cracked: 3, left: { yolks: 0, whites: 1 } })
    expect(eggs!.text).toContain('1 white left over')
  })

  test('follow the class and the weight of the cook’s own', () => {
    expect(tartBy({ units: 'us' }).eggs!.unit).toBe('egg-us-large')
    expect(tartBy({ eggClass: 'egg-uk-l' }).eggs!.unit).toBe('egg-uk-l')
    const mine = tartBy({ fixed: { egg: 44 } })
    expect(mine.eggs).toMatchObject({ whole: 2, yolks: 2, cracked: 4 })
    expect(mine.fixed[0]).toMatchObject({ value: '44 g in its shell', lines: [4] })
  })

  test.each(['ten eggs', 'six yolks of eggs', 'eight eggs, leaving out four of the whites'])(
    '%s are the same eggs on a sheet as in an answer',
    (phrase) => {
      const line = workSheet(phrase, { year: 1830, plan: { eggClass: 'egg-uk-m' } }).lines[0]!
      expect(line.working!.text).toBe(convert(phrase, { year: 1830 }).modern.find(({ unit }) => unit === 'egg-uk-m')!.text)
    },
  )

  test('less than half of one is weighed', () => {
    const { lines, eggs } = workSheet('Take the yolk of an egg.', { year: 1790, plan: { scale: 0.1 } })
    expect(lines[0]!.working!.text).toMatch(/^[\d.]+ g of yolk$/)
    expect(eggs!.cracked).toBe(0)
  })
})

describe('the text', () => {
  const odd = '\ufeff Take  a pynte of creme,\r\n\tvj egges & a pound of ſugar;\u00a0🥚 then <b>"stir"</b> it.\n\n'

  test.each([almondTart.text, seedBuns.text, odd])('is kept to the last character', (text) => {
    const sheet = workSheet(text, { year: 1690 })
    expect(sheet.text).toBe(text)
    expect(
      stretchesOf(sheet)
        .map((stretch) => stretch.text)
        .join(''),
    ).toBe(text)
    for (const { start, end, phrase } of [...sheet.lines, ...sheet.unmeasured]) expect(text.slice(start, end)).toBe(phrase)
    for (const step of sheet.order) expect(text.slice(step.start, step.end)).toBe(step.text)
  })

  test('the steps hold every word of it', () => {
    const squeezed = (text: string) => text.replace(/\s+/g, '')
    expect(
      squeezed(
        tartBy()
          .order.map(({ text }) => text)
          .join(''),
      ),
    ).toBe(squeezed(almondTart.text))
  })

  test('a list of ingredients is one thing to lay out', () => {
    const text = 'Ingredients: 1 lb. of flour; 6 oz. of suet; 2 eggs. Mix them; boil four hours. Cost, 2s. 3d. Serve it hot.'
    expect(workSheet(text, { year: 1861 }).order.map((step) => step.text)).toEqual([
      'Ingredients: 1 lb. of flour; 6 oz. of suet; 2 eggs.',
      'Mix them;',
      'boil four hours.',
      'Cost, 2s. 3d.',
      'Serve it hot.',
    ])
  })

  test('a menu without one measure gives a sheet that says so', () => {
    const sheet = workSheet('First course: pottage, a boiled ham, pigeons. Second course: tarts and jellies.', { year: 1740 })
    expect(sheet.lines).toEqual([])
    expect(sheet.totals).toEqual({ mass: null, volume: null })
    expect(sheet.eggs).toBeNull()
    expect(sheet.notes[0]).toContain('no measure')
  })

  test('another language is no error', () => {
    expect(() => workSheet('Prenez de la crème et du sucre, mêlez bien le tout; 砂糖を入れる。', { year: 1700 })).not.toThrow()
  })

  test('numbers that are no measures stay out', () => {
    expect(things('Let it stand three hours, and serve it to four persons.')).toEqual([])
  })

  test('lines of the same words are worked alike, however many', () => {
    const text = almondTart.text.repeat(60)
    const sheet = workSheet(text, { year: 1690 })
    expect(sheet.lines).toHaveLength(540)
    expect(sheet.totals.mass!.best).toBeCloseTo(60 * tartBy().totals.mass!.best, -2)
  })

  test.each([
    ['spaces', ' '.repeat(50_000)],
    ['stops', '.'.repeat(50_000)],
    ['as much', 'as much '.repeat(8_000)],
    ['then', ', and then'.repeat(8_000)],
    ['commas', 'cream, as, '.repeat(5_000)],
  ])('hostile runs of %s end soon', (_, run) => {
    expect(workSheet(`Take a pint of cream ${run} and stir.`, { year: 1690 }).lines.length).toBeGreaterThan(0)
  })
})
