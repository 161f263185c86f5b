import { findGood, findSource, goods } from '@core/tables'
import { describe, expect, test } from 'vitest'

/** Millilitres of a US cup and its parts: 8 fl oz of 231/128 cubic inches (NIST Handbook 44, Appendix C). */
const cup = 236.588
const tbsp = cup / 16
const tsp = cup / 48
const flOz = cup / 8

/**
 * USDA National Nutrient Database for Standard Reference, Release 26 (2013), files FOOD_DES and WEIGHT:
 * the good, the food's number and name there, its gram weight, and the measure that weighs it, in ml.
 */
const weighed: readonly [good: string, food: string, grams: number, measure: number][] = [
  ['milk', '01077 Milk, whole', 244, cup],
  ['buttermilk', '01088 Milk, buttermilk', 245, cup],
  ['whey', '01114 Whey, sweet', 246, cup],
  ['cream', '01053 Cream, fluid, heavy whipping', 238, cup],
  ['thin-cream', '01050 Cream, fluid, light', 240, cup],
  ['sour-cream', '01056 Cream, sour', 230, cup],
  ['butter', '01001 Butter, salted', 227, cup],
  ['grated-cheese', '01032 Cheese, parmesan, grated', 100, cup],
  ['egg', '01123 Egg, whole', 243, cup],
  ['olive-oil', '04053 Oil, olive', 216, cup],
  ['claret', '14096 Alcoholic beverage, wine, table, red', 29.4, flOz],
  ['brandy', '14037 Alcoholic beverage, distilled, all, 80 proof', 27.8, flOz],
  ['vinegar', '02048 Vinegar, cider', 239, cup],
  ['lemon-juice', '09152 Lemon juice, raw', 244, cup],
  ['orange-juice', '09206 Orange juice, raw', 248, cup],
  ['honey', '19296 Honey', 21, tbsp],
  ['treacle', '19304 Molasses', 337, cup],
  ['syrup', '19353 Syrups, maple', 315, cup],
  ['jam', '19297 Jams and preserves', 20, tbsp],
  ['marmalade', '19303 Marmalade, orange', 320, cup],
  ['sugar-granulated', '19335 Sugars, granulated', 200, cup],
  ['icing-sugar', '19336 Sugars, powdered', 120, cup],
  ['wholemeal', '20080 Wheat flour, whole-grain', 120, cup],
  ['barley-meal', '20130 Barley flour or meal', 148, cup],
  ['oat-flour', '20132 Oat flour', 104, cup],
  ['rice-flour', '20061 Rice flour, white', 158, cup],
  ['starch', '20027 Cornstarch', 128, cup],
  ['arrowroot', '20003 Arrowroot flour', 128, cup],
  ['tapioca', '20068 Tapioca, pearl', 152, cup],
  ['pearl-barley', '20005 Barley, pearled', 200, cup],
  ['barley', '20004 Barley, hulled', 184, cup],
  ['pease', '16085 Peas, split', 197, cup],
  ['lentils', '16069 Lentils', 192, cup],
  ['salt', '02047 Salt, table', 6, tsp],
  ['ginger', '02021 Spices, ginger, ground', 1.8, tsp],
  ['cinnamon', '02010 Spices, cinnamon, ground', 2.6, tsp],
  ['nutmeg', '02025 Spices, nutmeg, ground', 2.2, tsp],
  ['mace', '02022 Spices, mace, ground', 1.7, tsp],
  ['cloves', '02011 Spices, cloves, ground', 2.1, tsp],
  ['pepper', '02030 Spices, pepper, black', 2.3, tsp],
  ['peppercorns', '02030 Spices, pepper, black', 2.9, tsp],
  ['cayenne', '02031 Spices, pepper, red or cayenne', 1.8, tsp],
  ['mustard-flour', '02024 Spices, mustard seed, ground', 2.0, tsp],
  ['caraway', '02005 Spices, caraway seed', 2.1, tsp],
  ['coriander', '02013 Spices, coriander seed', 1.8, tsp],
  ['saffron', '02037 Spices, saffron', 0.7, tsp],
  ['parsley', '11297 Parsley, fresh', 60, cup],
  ['capers', '02054 Capers', 8.6, tbsp],
  ['currants', '09085 Currants, zante, dried', 144, cup],
  ['raisins', '09298 Raisins, seedless', 145, cup],
  ['prunes', '09291 Plums, dried (prunes)', 174, cup],
  ['dates', '09087 Dates, deglet noor', 147, cup],
  ['gooseberries', '09107 Gooseberries, raw', 150, cup],
  ['raspberries', '09302 Raspberries, raw', 123, cup],
  ['strawberries', '09316 Strawberries, raw', 144, cup],
  ['mulberries', '09190 Mulberries, raw', 140, cup],
  ['almonds', '12061 Nuts, almonds', 143, cup],
  ['almonds-ground', '12061 Nuts, almonds', 95, cup],
  ['pistachios', '12151 Nuts, pistachio nuts', 123, cup],
  ['breadcrumbs-soft', '18069 Bread, white', 45, cup],
  ['breadcrumbs-dry', '18079 Bread crumbs, dry, grated', 108, cup],
  ['chocolate', '19078 Baking chocolate, unsweetened', 132, cup],
  ['onions', '11282 Onions, raw', 160, cup],
  ['green-peas', '11304 Peas, green, raw', 145, cup],
  ['apricots', '09021 Apricots, raw', 155, cup],
  ['blackberries', '09042 Blackberries, raw', 144, cup],
  ['whortleberries', '09050 Blueberries, raw', 148, cup],
  ['fruit-pulp', '09019 Applesauce, canned, unsweetened', 244, cup],
  ['dried-apples', '09011 Apples, dried, sulfured', 86, cup],
  ['melon', '09181 Melons, cantaloupe, raw', 160, cup],
  ['pineapple', '09266 Pineapple, raw', 165, cup],
  ['pomegranate', '09286 Pomegranates, raw', 87, cup / 2],
  ['banana', '09040 Bananas, raw', 150, cup],
  ['tamarind', '09322 Tamarinds, raw', 120, cup],
  ['mussels', '15164 Mollusks, mussel, blue, raw', 150, cup],
  ['caviar', '15012 Fish, caviar, granular', 16, tbsp],
  ['baking-powder', '18369 Leavening agents, baking powder', 4.6, tsp],
]

/** Densities that follow from what a statute, a metrologist or a cook prints: pounds of 453.59237 g in measures of legal size. */
const pound = 453.59237
const winePint = (231 / 8) * 16.387064
const imperialPint = 4546.09 / 8
const stated: readonly [good: string, source: string, density: number][] = [
  ['water', 'geo-4-5-c-74', (10 * pound) / (277.274 * 16.387064)],
  ['wheat', 'nicholson-1912', (62.5 * pound) / (2150.4202 * 16.387064)],
  ['rice', 'acton-1845', pound / imperialPint],
  ['rye-flour', 'farmer-1896', pound / ((13 / 3) * cup)],
  ['boulted-flour', 'farmer-1896', pound / (3.875 * cup)],
  ['sugar-loaf-lump', 'leslie-1828', pound / (2 * winePint)],
  ['maize-meal', 'leslie-1828', (1.125 * pound) / (2 * winePint)],
  ['minced-meat', 'parloa-1880', pound / winePint],
]

const printedBy: readonly [good: string, source: string, density: number][] = [
  ['wheat-flour', 'leslie-1828', pound / (2 * winePint)],
  ['wheat-flour', 'acton-1845', (3.5 * pound) / (4 * imperialPint)],
  ['rice', 'acton-1845', pound / imperialPint],
  ['breadcrumbs', 'acton-1845', (6 * pound) / 16 / (0.75 * imperialPint)],
  ['butter', 'tyree-1878', pound / winePint],
  ['butter', 'leslie-1828', pound / (2 * winePint)],
  ['muscovado', 'leslie-1857', (18 * pound) / 16 / (2 * winePint)],
  ['sugar-loaf-pounded', 'peterson-1856', pound / ((4.5 / 4) * winePint)],
]

const good = (id: string) => goods.find((row) => row.id === id)!

describe('the densities of things', () => {
  test('a hundred and twenty-five of them at least are weighed', () => {
    expect(goods.filter((row) => row.density).length).toBeGreaterThanOrEqual(125)
  })

  test.each(weighed)('%s is as heavy as %s', (id, food, grams, measure) => {
    const row = good(id)
    const ratio = row.density!.best / (grams / measure)
    expect(Math.abs(ratio - 1)).toBeLessThan(0.005)
    const number = food.slice(0, 5)
    expect(row.source.some((one) => one.id === 'usda-sr26' && one.at?.startsWith(number))).toBe(true)
  })

  test.each(stated)('%s is as heavy as %s says', (id, source, density) => {
    const row = good(id)
    expect(Math.abs(row.density!.best / density - 1)).toBeLessThan(0.005)
    expect(row.source.some((one) => one.id === source)).toBe(true)
  })

  test.each(printedBy)('%s is printed as %s has it', (id, source, density) => {
    const entries = good(id).printed!.filter((one) => one.source.some((cited) => cited.id === source))
    expect(entries).toHaveLength(1)
    expect(Math.abs(entries[0]!.density / density - 1)).toBeLessThan(0.005)
  })

  test('low, best and high rise, and stay within what kitchens hold', () => {
    for (const { id, density } of goods) {
      if (!density) continue
      const { low, best, high } = density
      expect(0.02 < low && low <= best && best <= high && high < 1.6, `${id}: ${low} ${best} ${high}`).toBe(true)
    }
  })

  test('a printed density lies in the band of its good, or in a packed tail, or says why it cannot be right', () => {
    for (const { id, density, printed } of goods)
      for (const one of printed ?? []) {
        const possible = density!.low * 0.9 <= one.density && one.density <= density!.high * 1.2
        expect(possible !== Boolean(one.fault), `${id} ${one.density}`).toBe(true)
      }
  })

  test('a best figure copied from no handbook says that it is a judgement', () => {
    for (const row of goods) {
      const handbooks = row.source.filter((one) => one.id !== 'pottle-judgement')
      if (row.source[0]!.id === 'pottle-judgement')
        expect([row.id, row.grade, row.checked === 'read']).toEqual([row.id, 'judgement', false])
      else expect(handbooks.length, row.id).toBeGreaterThan(0)
    }
  })
})

describe('the names of things', () => {
  test('no spelling belongs to two', () => {
    const owner = new Map<string, string>()
    const shared: string[] = []
    for (const row of goods)
      for (const name of new Set([row.id, row.id.replaceAll('-', ' '), ...row.names])) {
        if (owner.has(name)) shared.push(`${name}: ${owner.get(name)}, ${row.id}`)
        owner.set(name, row.id)
      }
    expect(shared).toEqual([])
  })

  test('every name is in lower case and has no space at its ends', () => {
    expect(goods.flatMap((row) => row.names).filter((name) => name !== name.trim().toLowerCase())).toEqual([])
  })

  test.each([
    ['flour', 'wheat-flour'],
    ['sugar', 'sugar-loaf-pounded'],
    ['verious', 'verjuice'],
    ['new milk', 'milk'],
    ['clouted cream', 'clotted-cream'],
    ['rose water', 'rosewater'],
    ['amydon', 'starch'],
    ['raysons of coraunce', 'currants'],
    ['hony', 'honey'],
    ['yest', 'barm'],
    ['canel', 'cinnamon'],
    ['indian meal', 'maize-meal'],
    ['currant', 'currants'],
    ['red currants', 'fresh-currants'],
    ['beef suet', 'suet'],
    ['muskles', 'mussels'],
    ['mock turtle', 'offal'],
    ['drink', 'thin-liquid'],
  ])('%s is %s', (name, id) => {
    expect(findGood(name)?.id).toBe(id)
  })
})

describe('heaps of powder', () => {
  test('what cooks heap on coins and knife points has an angle of repose', () => {
    const heaped = 'salt wheat-flour sugar-loaf-pounded mace nutmeg ginger cinnamon cloves pepper cayenne mustard-flour'.split(' ')
    expect(heaped.filter((id) => !good(id).repose)).toEqual([])
  })

  test('the angle is one at which a powder flows and stands: 25 to 45 degrees (USP 29, chapter 1174)', () => {
    for (const { id, repose } of goods) {
      if (!repose) continue
      expect(25 <= repose.low && repose.low <= repose.best && repose.best <= repose.high && repose.high <= 45, id).toBe(true)
      expect(
        repose.source.every((one) => findSource(one.id)),
        id,
      ).toBe(true)
    }
  })
})
