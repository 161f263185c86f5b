import { findGood } from '@core/tables'
import { describe, expect, it } from 'vitest'
import { keyOf } from '../../../packages/core/src/senses/name.js'
import { vessel } from '../../../packages/core/src/senses/vessel.js'
import { answer, ask, bandFor, bestOf, said } from './ask.js'

describe('names', () => {
  it.each([
    ['Table-spoonfuls', 'tablespoon'],
    ['tablespoonsful', 'tablespoon'],
    ['wine glass full', 'wineglass'],
    ["hen's egg", 'henegg'],
    ['the point of a knife', 'pointofknife'],
    ['berries', 'berry'],
    ['peas', 'pea'],
    ['glass', 'glass'],
    ['full', 'full'],
  ])('%s is %s', (name, key) => expect(keyOf(name)).toBe(key))
})

describe('spoons', () => {
  it('grow with the centuries', () => {
    const at = (year: number) => bestOf(answer(vessel, { measure: 'spoonful', thing: 'rose-water' }, year))
    expect(at(1653)).toBe(11.7)
    expect(at(1750)).toBe(14.8)
    expect(at(1850)).toBe(15)
  })

  it('hold a fluid drachm of the wine pint in 1830 and of the imperial in 1870', () => {
    expect(bestOf(answer(vessel, { measure: 'tea-spoonful', thing: 'vinegar' }, 1830))).toBe(3.697)
    expect(bestOf(answer(vessel, { measure: 'teaspoon', thing: 'vinegar' }, 1870))).toBe(3.552)
  })

  it('share the likelihood out over the years of a span', () => {
    const senses = answer(vessel, { measure: 'spoonful', thing: 'vinegar' }, '1680/1719')
    expect(senses.map(({ id }) => id).sort()).toEqual(['spoonful.1700', 'spoonful.early'])
    expect(senses.reduce((sum, { likelihood }) => sum + likelihood, 0)).toBeCloseTo(1, 10)
    expect(senses[0]!.likelihood).toBeCloseTo(0.5, 1)
  })

  it('stand rounded when dry, before level measuring', () => {
    expect(findGood('flour')?.classes).toContain('dry')
    const of = (qualifier: string | null, year: number, place = 'england') =>
      bestOf(answer(vessel, { measure: 'tablespoonful', thing: 'flour', qualifier }, year, place))
    expect(of(null, 1830)).toBeCloseTo(2 * 14.787, 2)
    expect(of('level', 1830)).toBeCloseTo(14.787, 2)
    expect(of('heaped', 1830)).toBeCloseTo(2.5 * 14.787, 2)
    expect(of(null, 1905, 'america')).toBeCloseTo(14.787, 2)
  })

  it('say so in a step', () => {
    const [sense] = answer(vessel, { measure: 'tablespoonful', thing: 'flour' }, 1830)
    expect(sense!.steps.map(({ factor }) => factor)).toEqual(['14.787 ml (12 to 21.3)', '2 (1.2 to 2.5)'])
  })

  it('are not heaped with a liquid', () => {
    expect(answer(vessel, { measure: 'tablespoonful', thing: 'milk' }, 1830)[0]!.steps).toHaveLength(1)
  })

  it('are refused before they were in use', () => {
    expect(said(() => answer(vessel, { measure: 'saltspoonful', thing: 'salt' }, 1700))).toMatch(
      /^no-answer year: the tables know the salt-spoonful from 1817 to 1914/,
    )
  })
})

describe('cups and glasses', () => {
  it.each([
    ['wineglass', 'brandy', 1830, 'england', 58],
    ['wine-glassful', 'brandy', 1840, 'america', 59.147],
    ['tea-cup', 'milk', 1894, 'england', 170.478],
    ['teacup', 'yeast', 1836, 'america', 120],
    ['coffee-cupful', 'rice', 1837, 'america', 236.588],
    ['breakfast-cup', 'milk', 1861, 'england', 284.13],
    ['tumbler', 'water', 1828, 'america', 236.588],
    ['cup', 'sugar', 1880, 'america', 236.588],
  ])('a %s of %s in %i, %s, is %f ml', (measure, thing, year, place, ml) =>
    expect(bestOf(answer(vessel, { measure, thing }, year, place))).toBe(ml),
  )

  it('heap a little', () => {
    expect(bestOf(answer(vessel, { measure: 'cup', thing: 'sugar', qualifier: 'heaped' }, 1880, 'america'))).toBeCloseTo(1.2 * 236.588, 2)
  })

  it('that nobody sized are refused in words', () => {
    expect(said(() => answer(vessel, { measure: 'basket', thing: 'plum' }, 1800))).toBe(
      'no-answer phrase: nobody knows how much a basket held. It came in every size, and no book read says what one held. Give a measure of the thing instead',
    )
  })
})

describe('hands', () => {
  it("a cook's handful of herbs is larger than the apothecaries'", () => {
    const senses = answer(vessel, { measure: 'handful', thing: 'parsley' }, 1669)
    expect(senses[0]).toMatchObject({ id: 'handful.herb', quantity: 'mass' })
    expect(bestOf(senses)).toBe(45)
    expect(bandFor(senses).low).toBeGreaterThan(15)
  })

  it('a handful of sage is two ounces', () => expect(bestOf(answer(vessel, { measure: 'handful', thing: 'sage' }, 1830))).toBe(56.7))

  it("Bradley's rosemary is a bundle a foot long", () =>
    expect(answer(vessel, { measure: 'handful', thing: 'rosemary' }, 1736)[0]!.id).toBe('handful.bundle'))

  it.each([
    ['flour', 50],
    ['salt', 65],
    ['currants', 60],
  ])('a handful of %s is %i g', (thing, grams) => expect(bestOf(answer(vessel, { measure: 'handful', thing }, 1700))).toBe(grams))

  it('a handful of a thing unknown is a volume', () =>
    expect(answer(vessel, { measure: 'handful', thing: 'moonstone' }, 1700)[0]!.quantity).toBe('volume'))

  it('a pinch of seed takes all the fingers', () => {
    expect(bestOf(answer(vessel, { measure: 'pinch', thing: 'salt' }, 1822))).toBe(0.35)
    expect(bestOf(answer(vessel, { measure: 'pinch', thing: 'caraway' }, 1672))).toBe(4)
  })

  it("a knife's end of flour is half a tea-spoon", () =>
    expect(answer(vessel, { measure: 'knife-point', thing: 'flour' }, 1845)[0]).toMatchObject({
      id: 'knife-point.flour',
      quantity: 'volume',
    }))
})

describe('what the caller insists on', () => {
  const question = ask({ measure: 'handful', thing: 'parsley' }, 1669)
  it('is a sense by the last part of its name', () =>
    expect(vessel.senses({ ...question, standard: 'apothecary' })).toMatchObject([{ id: 'handful.herb.apothecary', likelihood: 1 }]))
  it('is refused where there is none', () =>
    expect(said(() => vessel.senses({ ...question, standard: 'giant' }))).toMatch(/^no-answer standard: no sense goes by "giant" here/))
})

it('leaves other measures and other kinds of phrase alone', () => {
  expect(vessel.answers(ask({ measure: 'pint' }, 1700))).toBe(false)
  expect(vessel.answers(ask({ measure: null, kind: 'counted' }, 1700))).toBe(false)
  expect(vessel.answers(ask({ measure: 'hand', kind: 'length' }, 1700))).toBe(false)
})
