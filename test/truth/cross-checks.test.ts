/**
 * Figures of the tables beside published sources that their rows do not cite: what a second witness says of the same thing. Each part names its
 * source, and what is asked is as near as two witnesses of that kind come.
 */
import { bandOf } from '@core/bands'
import { loafWeight, wheatIn } from '@core/bread'
import { findHeat } from '@core/heat'
import { findGood, goods, loafCoins } from '@core/tables'
import { convert } from '@pottle/core'
import { afterAll, describe, expect, test } from 'vitest'

const pound = 453.59237
const ounce = pound / 16
/** US cup, eight fluid ounces of a gallon of 231 cubic inches, in ml. */
const cup = 236.588

let compared = 0
const near = (ours: number, theirs: number, part: number, what: string): void => {
  compared += 1
  expect(Math.abs(Math.log(ours / theirs)), `${what}: ${ours} beside ${theirs}`).toBeLessThan(part)
}
afterAll(() => {
  console.log(`cross-checks: ${compared} figures beside a second witness`)
  expect(compared).toBe(106)
})

describe('wheat by decades, beside the modern series of G. Clark (2004) in Allen and Unger', () => {
  // Means of ten years from his series for England, shillings the imperial quarter; ours are from Rogers, and from Windsor after 1594.
  const decades: readonly (readonly [from: number, shillings: number])[] = [
    [1270, 5.61],
    [1280, 4.73],
    [1290, 6.06],
    [1300, 4.82],
    [1310, 7.38],
    [1320, 6.21],
    [1330, 4.78],
    [1340, 4.67],
    [1350, 6.32],
    [1360, 6.31],
    [1370, 6.81],
    [1380, 4.63],
    [1390, 4.95],
    [1400, 5.4],
    [1410, 5.58],
    [1420, 4.56],
    [1430, 6.13],
    [1440, 4.54],
    [1450, 5.11],
    [1460, 5.14],
    [1470, 5.4],
    [1480, 6.12],
    [1490, 5.24],
    [1500, 5.96],
    [1510, 5.73],
    [1520, 7.81],
    [1530, 8.6],
    [1540, 9.46],
    [1550, 15.57],
    [1560, 14.01],
    [1570, 15.86],
    [1580, 18.66],
    [1590, 28.5],
    [1600, 27.52],
    [1610, 32.67],
    [1620, 32.27],
    [1630, 39.22],
    [1640, 39.67],
    [1650, 37.37],
    [1660, 37.03],
    [1670, 35.15],
    [1680, 30.13],
    [1690, 39.58],
  ]
  test.each(decades)('the ten years from %i: about %d s', (from, shillings) => {
    const years = Array.from({ length: 10 }, (_, i) => wheatIn(from + i).shillings)
    near(years.reduce((sum, each) => sum + each) / 10, shillings / 1.0315, 0.2, `wheat from ${from}`)
  })

  test('and all of them together within four parts in the hundred', () => {
    const ratios = decades.map(([from, shillings]) => {
      const years = Array.from({ length: 10 }, (_, i) => wheatIn(from + i).shillings)
      return Math.log(years.reduce((sum, each) => sum + each) / 10 / shillings)
    })
    near(Math.exp(ratios.reduce((sum, each) => sum + each) / ratios.length), 1.03, 0.04, 'the mean of all decades')
  })
})

describe("wheat beside the averages in Curtler's note 416 (Short History of English Agriculture, 1909)", () => {
  // His round averages for the country; ours are Smith's from Windsor and, for 1765, from Eton.
  test.each([
    [1724, 36],
    [1725, 46],
    [1726, 35],
    [1728, 52],
    [1730, 30],
    [1732, 24],
    [1736, 30],
    [1740, 42],
    [1744, 23],
    [1750, 30],
    [1755, 35],
    [1760, 38],
    [1765, 42],
  ] as const)('%i: about %d s', (year, shillings) => {
    near(wheatIn(year).shillings, shillings, 0.28, `wheat in ${year}`)
  })

  test('1718 to 1722: about 27 s', () => {
    const years = [1718, 1719, 1720, 1721, 1722].map((year) => wheatIn(year).shillings)
    near(years.reduce((sum, each) => sum + each) / 5, 27, 0.1, 'wheat 1718 to 1722')
  })
})

describe('the price of the quartern loaf, as newspapers remembered it', () => {
  /** Pence for so many ounces of the London loaf. */
  const pence = (year: number, ounces: number, wheat?: number): number => {
    const place = ['london', 'england', 'britain']
    const { best } = bandOf(loafWeight({ year, kind: 'wheaten', coin: 'penny', place, ...(wheat ? { wheat } : {}) }).value)
    return (ounces * ounce) / best
  }

  test('22 1/2 d on 5 March 1801, with wheat at its highest ever, 156 s 2 d (Notes and Queries 1861; Rogers, Six Centuries)', () => {
    near(pence(1801, 69.5, (156 + 2 / 12) / 1.0315), 22.5, 0.1, 'the quartern loaf of March 1801')
  })

  test('two fifths of that in March 1861 (Notes and Queries 1861)', () => {
    near(pence(1861, 64), 9, 0.15, 'the four-pound loaf of 1861')
  })
})

describe('loaves of fixed weight, beside other statements of them', () => {
  test.each([
    // A sack of flour makes 347 lb of bread, or eighty quarterns.
    ['a quartern loaf', 347 / 80, 'HC Deb. 2 April 1822'],
    // Pounds and ounces, the half ounces left out.
    ['a peck loaf', 17 + 6 / 16, 'Ernle, appendix on the assize, p. 453'],
    ['a half-peck loaf', 8 + 11 / 16, 'Ernle, appendix on the assize, p. 453'],
    ['a quartern loaf', 4 + 5 / 16, 'Ernle, appendix on the assize, p. 453'],
    ['a half-quartern loaf', 2 + 2 / 16, 'Ernle, appendix on the assize, p. 453'],
  ] as const)('%s is %d lb (%s)', (phrase, pounds, _) => {
    near(convert(phrase, { year: 1790, place: 'london' }).value.best / pound, pounds, 0.03, phrase)
  })

  test('a peck loaf from fourteen pounds of flour is the bread of the sack, 347 lb from 280 (Ernle; HC Deb. 2 April 1822)', () => {
    near(convert('a peck loaf', { year: 1790, place: 'london' }).value.best / pound / 14, 347 / 280, 0.01, 'bread to flour')
  })
})

describe('oven words beside a household book of 1976 (Better Homes and Gardens, New Cook Book), which has no vote here', () => {
  test.each([
    ['a very slow oven', 250, 275],
    ['a slow oven', 300, 325],
    ['a moderate oven', 350, 375],
    ['a hot oven', 400, 425],
    ['a very hot oven', 450, 475],
  ] as const)('%s is %d to %d F', (phrase, low, high) => {
    const { value } = findHeat(phrase, { year: 1976 })
    const middle = ((low + high) / 2 - 32) / 1.8
    near(value.best + 273.15, middle + 273.15, 0.05, phrase)
    // Undated words, with the slack of the years in which words and degrees met, hold its middle.
    const undated = findHeat(phrase).value
    expect(undated.low).toBeLessThanOrEqual(middle)
    expect(undated.high).toBeGreaterThanOrEqual(middle)
  })
})

describe('oven words in the order of a ladder of about 1866 and of a baker of 1904', () => {
  const ladders: readonly (readonly [source: string, words: readonly string[]])[] = [
    ['an American household book of about 1866', ['a slow oven', 'a moderate oven', 'a quick oven', 'a scorching oven']],
    ['Austin in Ashton 1904: the three heats of a baker', ['a slack oven', 'a solid oven', 'a sharp oven']],
  ]
  test.each(ladders)('%s', (_, words) => {
    const bests = words.map((phrase) => findHeat(phrase, { year: 1900 }).value.best)
    for (const [i, best] of bests.slice(1).entries()) {
      compared += 1
      expect(best, `${words[i + 1]} above ${words[i]}`).toBeGreaterThan(bests[i]!)
    }
  })
})

describe('densities of solutions at 18 C (Cracow University of Technology), beside the liquids of the kitchen', () => {
  const inBand = (id: string, density: number): void => {
    const { low, high } = findGood(id)!.density!
    near(Math.min(high, Math.max(low, density)), density, 0.004, id)
  }
  test.each([
    // Parts by weight in a hundred: brandy of 40 to 50 by volume holds 33 to 43 of alcohol by weight.
    ['brandy', 0.9463, 'alcohol 35'],
    ['brandy', 0.9367, 'alcohol 40'],
    ['gin', 0.9463, 'alcohol 35'],
    ['rum', 0.9367, 'alcohol 40'],
    ['brine', 1.0711, 'salt 10'],
    ['brine', 1.109, 'salt 15, which floats an egg'],
    ['brine', 1.148, 'salt 20'],
    ['mead', 1.0183, 'sugar 5'],
    ['wort', 1.0386, 'sugar 10'],
    ['wort', 1.0597, 'sugar 15'],
    ['wort', 1.0815, 'sugar 20'],
    ['mead', 1.0815, 'sugar 20'],
    ['water', 0.9986, 'nothing'],
  ] as const)('%s: %d (%s in a hundred)', (id, density, _) => inBand(id, density))
})

describe('spirits by the pharmacopoeias that the row does not rest its best figure on', () => {
  test.each([
    ['London and Edinburgh, by Paris, Pharmacologia', 0.835],
    ['Dublin, by Paris, Pharmacologia', 0.84],
    ['United States alcohol, by an American reprint', 0.82],
    ['proof spirit of London and Dublin, by Paris', 0.93],
    ['British proof spirit, Essentials of Materia Medica', 0.92],
  ] as const)('%s: %d', (_, gravity) => {
    const { low, high } = findGood('spirit of wine')!.density!
    near(Math.min(high, Math.max(low, gravity)), gravity, 0.001, 'spirit of wine')
  })
})

describe('a housewife of 1915 (Thomas, Mary at the Farm) beside the tables, whose figures for these come from elsewhere', () => {
  test.each([
    ['wheat-flour', pound / (4 * cup), 'four cups of flour weigh a pound'],
    ['sugar-granulated', pound / (2 * cup), 'two cups of sugar, good measure, weigh a pound'],
    ['butter', pound / (2 * cup), 'two cups of butter are a pound'],
    ['milk', pound / (2 * cup), 'a pint of liquid is a pound'],
    ['water', (8 * ounce) / cup, 'a cup of water is eight ounces'],
  ] as const)('%s weighs %d g/ml: %s', (id, density, _) => {
    const good = goods.find((row) => row.id === id)!
    near(Math.min(good.density!.high, Math.max(good.density!.low, density)), density, 0.075, id)
  })

  test('two table-spoonfuls of liquid are an ounce', () => {
    near(convert('two tablespoonfuls of water', { year: 1914, place: 'america', to: 'g' }).value.best, ounce, 0.1, 'two spoonfuls')
  })

  test('a piece of butter the size of an egg is two ounces', () => {
    near(convert('butter the size of an egg', { year: 1914, place: 'america', to: 'g' }).value.best, 2 * ounce, 0.2, 'butter as an egg')
  })
})

describe('loaves by their coins, beside what a newspaper and a manual say of when the coins began', () => {
  const first = (id: string): number => loafCoins.find((row) => row.id === id)!.years[0]
  test.each([
    ['twelvepenny', 1485, 1509, 'shillings were first coined by Henry VII (New Zealand Tablet, 11 September 1902)'],
    ['sixpenny', 1547, 1553, 'sixpences by Edward VI (New Zealand Tablet; Jewitt, English Coins and Tokens)'],
    ['threepenny', 1547, 1553, 'threepenny bits by Edward VI (New Zealand Tablet; Jewitt)'],
    ['three-halfpenny', 1558, 1603, 'three-halfpences by Elizabeth (Jewitt)'],
    ['fourpenny', 1279, 1377, 'groats by Edward I, and in numbers by Edward III (a page on hammered coin)'],
  ] as const)('%s: from %i to %i: %s', (id, from, to, _) => {
    compared += 1
    expect(first(id)).toBeGreaterThanOrEqual(from)
    expect(first(id)).toBeLessThanOrEqual(to)
  })
})
