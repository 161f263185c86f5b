/**
 * What statutes, standards and handbooks say of weights, capacities and counts, against what the library answers.
 *
 * Each case gives the figure as its source states it, brought to grams or millilitres by hand with the definitions of 1959
 * (1 inch = 25.4 mm, 1 lb = 453.59237 g = 7000 grains) and of 1976 (1 imperial gallon = 4.54609 l). The reach is a part of the figure: wide where
 * the source rounds, narrow where the law was exact.
 */

import { convert } from '@pottle/core'
import { afterAll, describe, expect, test } from 'vitest'

interface Case {
  readonly phrase: string
  readonly year: number
  readonly place?: string
  readonly thing?: string
  /** A standard that the case is about, where the phrase leaves it open. */
  readonly standard?: string
  /** The meaning that must be the likeliest. */
  readonly sense?: string
  /** g, ml or each. */
  readonly figure: number
  readonly reach: number
  readonly source: string
}

const cases: readonly Case[] = [
  // ---- weights
  {
    phrase: 'a pound of raisins',
    year: 1650,
    place: 'london',
    figure: 453.59237,
    reach: 0.001,
    sense: 'pound.avoirdupois',
    source: 'Nicholson 1912, ch. VII: common goods by the standards of 1582-88',
  },
  {
    phrase: 'a pound of beef',
    year: 1600,
    figure: 453.59237,
    reach: 0.001,
    source: '24 Hen. VIII c. 3, by Nicholson 1912, ch. VII: meat by avoirdupois',
  },
  {
    phrase: 'a pound of bread',
    year: 1587,
    place: 'london',
    standard: 'troy',
    figure: 373.2417216,
    reach: 0.001,
    source: 'Proclamation of 16 December 1587: bread by troy weight',
  },
  {
    phrase: 'a pound of sugar',
    year: 1300,
    standard: 'tower',
    figure: 349.914,
    reach: 0.002,
    source: 'Nicholson 1912, ch. IX: the Tower pound of 5400 grains',
  },
  {
    phrase: 'a pound of almonds',
    year: 1320,
    standard: 'mercantile',
    figure: 437.3926,
    reach: 0.001,
    source: 'Tract on weights and measures, c. 1300: 25 shillings, fifteen Tower ounces',
  },
  {
    phrase: 'a pound of cheese',
    year: 1450,
    figure: 453.074,
    reach: 0.005,
    sense: 'pound.avoirdupois-early',
    source: 'Nicholson 1912, ch. VII: sixteen ounces of 437 grains',
  },
  {
    phrase: 'half an ounce of senna',
    year: 1894,
    figure: 15.5517384,
    reach: 0.001,
    sense: 'ounce.apothecaries',
    source: "Enquire Within 1894, nos 661-662: the apothecaries' ounce of 480 grains",
  },
  {
    phrase: 'an ounce of cinnamon',
    year: 1830,
    figure: 28.349523125,
    reach: 0.001,
    sense: 'ounce.avoirdupois',
    source: 'Enquire Within 1894, no. 662: drugs and spices are bought by avoirdupois',
  },
  {
    phrase: 'a drachm of mace',
    year: 1653,
    figure: 3.8879346,
    reach: 0.001,
    sense: 'drachm.apothecaries',
    source: 'Culpeper 1653, Weights and Measures: sixty grains',
  },
  {
    phrase: 'a scruple of saffron',
    year: 1653,
    figure: 1.2959782,
    reach: 0.001,
    source: 'Culpeper 1653, Weights and Measures: twenty grains',
  },
  { phrase: 'three grains of musk', year: 1653, figure: 0.19439673, reach: 0.001, source: 'Culpeper 1653, Weights and Measures' },
  {
    phrase: 'a drachm of mace',
    year: 1855,
    place: 'dublin',
    standard: 'drachm.dublin',
    figure: 3.5437,
    reach: 0.001,
    source: 'Dublin Pharmacopoeia 1850, by Royle & Headland 1865: 54.7 grains',
  },
  {
    phrase: 'a drachm of pepper',
    year: 1880,
    standard: 'avoirdupois',
    figure: 1.7718452,
    reach: 0.001,
    source: 'Beeton, later edition, tables: 27 11/32 grains',
  },
  { phrase: 'a stone of wool', year: 1360, figure: 6350.29318, reach: 0.01, source: '25 Edw. III st. 5 c. 9' },
  { phrase: 'a stone of flour', year: 1850, figure: 6350.29318, reach: 0.001, source: '5 & 6 Will. IV c. 63, and Nicholson 1912' },
  { phrase: 'a stone of glass', year: 1302, figure: 2267.96185, reach: 0.001, source: 'Tract on weights and measures, c. 1300' },
  {
    phrase: 'a stone of beef',
    year: 1772,
    place: 'london',
    figure: 3628.73896,
    reach: 0.001,
    sense: 'stone.meat',
    source: 'Encyclopaedia Britannica 1772, Stone: eight pounds at Smithfield',
  },
  {
    phrase: 'a stone of beef',
    year: 1772,
    place: 'hertfordshire',
    figure: 5443.10844,
    reach: 0.001,
    source: 'Encyclopaedia Britannica 1772, Stone: twelve pounds in Hertfordshire',
  },
  {
    phrase: 'a stone of cheese',
    year: 1800,
    figure: 7257.47792,
    reach: 0.001,
    source: 'Nicholson 1912: sixteen pounds in most of England',
  },
  {
    phrase: 'sixteen stone of pork',
    year: 1845,
    place: 'kent',
    figure: 58059.82336,
    reach: 0.001,
    source: 'Acton 1845: sixteen Kentish stone are nine stone two pounds, 128 lb',
  },
  { phrase: 'a wey of cheese', year: 1431, figure: 101604.69088, reach: 0.01, source: '9 Hen. VI c. 8: thirty-two cloves of seven pounds' },
  {
    phrase: 'a wey of cheese',
    year: 1622,
    place: 'essex',
    figure: 152407.03632,
    reach: 0.001,
    sense: 'wey.essex',
    source: 'Malynes 1622, p. 50: 336 pounds',
  },
  {
    phrase: 'a wey of cheese',
    year: 1622,
    place: 'suffolk',
    figure: 116119.64672,
    reach: 0.001,
    sense: 'wey.suffolk',
    source: 'Malynes 1622, p. 50: 256 pounds',
  },
  { phrase: 'a tod of wool', year: 1800, figure: 12700.58636, reach: 0.001, source: 'Arithmetic tables of c. 1800: 28 pounds' },
  { phrase: 'a hundredweight of sugar', year: 1800, figure: 50802.34544, reach: 0.001, source: 'Nicholson 1912: 112 pounds' },
  {
    phrase: 'a hundredweight of pepper',
    year: 1300,
    figure: 48987.97596,
    reach: 0.001,
    source: 'Tract on weights and measures, c. 1300: thirteen stones and a half of eight pounds',
  },
  { phrase: 'a firkin of butter', year: 1670, figure: 25401.17272, reach: 0.01, source: '13 & 14 Car. II c. 26: 56 pounds net' },
  { phrase: 'a barrel of butter', year: 1800, figure: 101604.69088, reach: 0.001, source: 'Arithmetic tables of c. 1800: four firkins' },
  { phrase: 'a firkin of soap', year: 1712, figure: 29029.91168, reach: 0.001, source: '10 Anne c. 18 s. 9: 64 pounds' },
  { phrase: 'a barrel of soap', year: 1712, figure: 116119.64672, reach: 0.001, source: '10 Anne c. 18 s. 9: 256 pounds' },
  { phrase: 'a barrel of anchovies', year: 1800, figure: 13607.7711, reach: 0.001, source: 'Arithmetic tables of c. 1800: 30 pounds' },
  {
    phrase: 'a pound of butter',
    year: 1823,
    place: 'glasgow',
    figure: 636.09,
    reach: 0.001,
    sense: 'pound.tron-glasgow',
    source: 'Cleland 1823, p. 207: 22 oz 7 dr avoirdupois',
  },
  {
    phrase: 'a pound of butter',
    year: 1823,
    place: 'glasgow',
    figure: 636.27,
    reach: 0.001,
    source: 'Edinburgh Encyclopaedia, Weights: 1.40274 pounds avoirdupois',
  },
  {
    phrase: 'a pound of oatmeal',
    year: 1823,
    place: 'glasgow',
    figure: 494.345,
    reach: 0.001,
    sense: 'pound.dutch-glasgow',
    source: 'Cleland 1823, p. 207: 17 oz 7 dr avoirdupois',
  },
  {
    phrase: 'a pound of currants',
    year: 1823,
    place: 'glasgow',
    figure: 453.59237,
    reach: 0.001,
    source: 'Cleland 1823, p. 207: groceries by avoirdupois',
  },
  {
    phrase: 'a pound of butter',
    year: 1820,
    place: 'bute',
    figure: 680.388555,
    reach: 0.001,
    sense: 'pound.tron-bute',
    source: 'Cleland 1828, p. 218: 24 oz avoirdupois',
  },
  {
    phrase: 'a pound of butter',
    year: 1700,
    place: 'edinburgh',
    figure: 624.74,
    reach: 0.002,
    source: 'Scottish Archive Network: the Edinburgh tron pound',
  },
  {
    phrase: 'a pound of oatmeal',
    year: 1700,
    place: 'scotland',
    figure: 496,
    reach: 0.007,
    source: 'Scottish Archive Network: the Scots troy pound, 17 oz 8 dr avoirdupois',
  },
  {
    phrase: 'a pound of butter',
    year: 1850,
    place: 'cumberland',
    figure: 510.29141625,
    reach: 0.001,
    source: 'Nicholson 1912, ch. IX: eighteen ounces',
  },
  {
    phrase: 'a pound of butter',
    year: 1814,
    standard: 'butter-20',
    figure: 566.9904625,
    reach: 0.001,
    source: 'Literary Panorama, Nov. 1814, p. 195: markets with twenty ounces',
  },
  // ---- capacities
  {
    phrase: 'a pint of sack',
    year: 1672,
    place: 'london',
    figure: 473.176473,
    reach: 0.001,
    sense: 'pint.wine',
    source: '5 Anne c. 27 s. 17, which states the custom: 231 cubic inches to the gallon',
  },
  {
    phrase: 'a pint of ale',
    year: 1700,
    figure: 577.644006,
    reach: 0.001,
    sense: 'pint.ale',
    source: '11 Will. III c. 15; Nicholson 1912, ch. IX: 282 cubic inches to the gallon',
  },
  {
    phrase: 'a quart of ale',
    year: 1601,
    figure: 1147.09,
    reach: 0.008,
    source: 'Jefferson 1790: Exchequer quarts of 1601 hold 70 cubic inches',
  },
  {
    phrase: 'a gallon of wine',
    year: 1650,
    standard: 'wine-guildhall',
    figure: 3670.702,
    reach: 0.001,
    source: 'Nicholson 1912, ch. IX: the Guildhall gallon measured 224 cubic inches in 1645-47',
  },
  {
    phrase: 'a bushel of peas',
    year: 1700,
    figure: 35239.07,
    reach: 0.001,
    sense: 'bushel.corn',
    source: '8 & 9 Will. III c. 22: 18.5 inches wide, 8 deep',
  },
  { phrase: 'a peck of flour', year: 1700, figure: 8809.768, reach: 0.001, source: '8 & 9 Will. III c. 22: a quarter of the bushel' },
  {
    phrase: 'a peck of oats',
    year: 1750,
    standard: 'corn-272',
    figure: 8922.756,
    reach: 0.001,
    source: 'Commissioners 1819: 272.25 cubic inches to the gallon',
  },
  {
    phrase: 'a peck of flour',
    year: 1600,
    figure: 8797.56,
    reach: 0.002,
    source: 'Henry VII standard gallon as measured later: 268.43 cubic inches',
  },
  {
    phrase: 'a gallon of water',
    year: 1830,
    standard: 'imperial-1824',
    figure: 4543.707,
    reach: 0.0001,
    source: '5 Geo. IV c. 74: 277.274 cubic inches',
  },
  { phrase: 'a gallon of water', year: 1890, figure: 4546.09, reach: 0.0001, source: 'Units of Measurement Regulations 1995' },
  {
    phrase: 'a gallon of water',
    year: 1890,
    figure: 4541,
    reach: 0.002,
    source: '5 Geo. IV c. 74: ten pounds of water at 62 F, at 0.9988 g/ml',
  },
  { phrase: 'a gill of gin', year: 1890, place: 'london', figure: 142.0653, reach: 0.001, source: 'Imperial quarter pint' },
  {
    phrase: 'a pint of milk',
    year: 1830,
    standard: 'wine',
    figure: 473.176473,
    reach: 0.001,
    source: 'Kitchiner 1830: a wine pint of sixteen ounces',
  },
  {
    phrase: 'a pint of rice',
    year: 1845,
    figure: 568.26125,
    reach: 0.001,
    sense: 'pint.imperial',
    source: 'Acton 1845, whose pint of rice weighs a pound: the imperial pint',
  },
  {
    phrase: 'a noggin of whiskey',
    year: 1800,
    place: 'dublin',
    figure: 111.432,
    reach: 0.001,
    sense: 'noggin.irish',
    source: '9 Geo. II c. 9 (Ir.): 217.6 cubic inches to the gallon',
  },
  {
    phrase: 'a pint of milk',
    year: 1760,
    place: 'edinburgh',
    figure: 1694.488,
    reach: 0.001,
    sense: 'pint.stirling',
    source: 'Bryce, c. 1750: the Stirling jug, 103.404 cubic inches',
  },
  {
    phrase: 'a pint of milk',
    year: 1760,
    place: 'edinburgh',
    figure: 1698.5,
    reach: 0.003,
    source: 'Bryce, c. 1750: 26180 grains of water in the jug, at 0.9988 g/ml',
  },
  {
    phrase: 'a mutchkin of brandy',
    year: 1790,
    place: 'scotland',
    figure: 423.622,
    reach: 0.001,
    source: 'Cleland 1828 and Bryce: a quarter of the Stirling jug',
  },
  {
    phrase: 'a chopin of ale',
    year: 1790,
    place: 'scotland',
    figure: 847.244,
    reach: 0.001,
    source: 'Cleland 1828 and Bryce: half of the Stirling jug',
  },
  {
    phrase: 'a pint of cream',
    year: 1850,
    place: 'america',
    figure: 473.176473,
    reach: 0.001,
    sense: 'pint.us',
    source: 'Jefferson 1790: the wine gallon of 231 cubic inches',
  },
  {
    phrase: 'a bushel of wheat',
    year: 1850,
    place: 'america',
    figure: 35239.07,
    reach: 0.001,
    source: 'Jefferson 1790: the Winchester bushel',
  },
  // ---- casks
  { phrase: 'a firkin of ale', year: 1600, place: 'london', figure: 36969.216, reach: 0.001, source: '23 Hen. VIII c. 4: eight gallons' },
  { phrase: 'a firkin of beer', year: 1600, figure: 41590.368, reach: 0.001, source: '23 Hen. VIII c. 4: nine gallons' },
  { phrase: 'a kilderkin of beer', year: 1600, figure: 83180.737, reach: 0.001, source: '23 Hen. VIII c. 4: eighteen gallons' },
  { phrase: 'a barrel of ale', year: 1650, figure: 147876.866, reach: 0.001, source: '23 Hen. VIII c. 4: thirty-two gallons' },
  { phrase: 'a barrel of beer', year: 1650, figure: 166361.474, reach: 0.001, source: '23 Hen. VIII c. 4: thirty-six gallons' },
  {
    phrase: 'a barrel of beer',
    year: 1750,
    place: 'norwich',
    figure: 157119.17,
    reach: 0.001,
    source: '1 Will. & Mary c. 24 s. 4: thirty-four gallons outside London',
  },
  {
    phrase: 'a barrel of beer',
    year: 1750,
    place: 'london',
    figure: 166361.474,
    reach: 0.001,
    source: '1 Will. & Mary c. 24 s. 4: London keeps thirty-six',
  },
  { phrase: 'a barrel of beer', year: 1810, figure: 166361.474, reach: 0.001, source: '43 Geo. III c. 69 s. 12: thirty-six gallons' },
  { phrase: 'a barrel of beer', year: 1880, figure: 163659.24, reach: 0.001, source: '5 Geo. IV c. 74: thirty-six imperial gallons' },
  { phrase: 'a hogshead of wine', year: 1700, figure: 238480.942, reach: 0.001, source: '2 Hen. VI c. 11: sixty-three gallons' },
  { phrase: 'a tierce of wine', year: 1700, figure: 158987.295, reach: 0.001, source: '1 Ric. III c. 13: forty-two gallons' },
  { phrase: 'a puncheon of wine', year: 1700, figure: 317974.59, reach: 0.001, source: '2 Hen. VI c. 14: eighty-four gallons' },
  { phrase: 'a pipe of wine', year: 1700, figure: 476961.885, reach: 0.001, source: '2 Hen. VI c. 11: a hundred and twenty-six gallons' },
  { phrase: 'a barrel of honey', year: 1600, figure: 121133.177, reach: 0.001, source: '23 Eliz. c. 8: thirty-two wine gallons' },
  {
    phrase: 'a fluid ounce of rose-water',
    year: 1894,
    figure: 28.4130625,
    reach: 0.001,
    sense: 'fluid-ounce.imperial',
    source: 'Enquire Within 1894, nos 661-665: twenty to the pint',
  },
  {
    phrase: 'a fluid drachm of vinegar',
    year: 1873,
    figure: 3.55163,
    reach: 0.001,
    source: 'Pereira 1873, p. 68: a hundred and sixty to the imperial pint',
  },
]

let run = 0

describe('what the law and the handbooks say', () => {
  test.each(cases)('$phrase, $year: $source', ({ phrase, figure, reach, sense, source: _, ...options }) => {
    const { value, senses } = convert(phrase, options)
    expect(Math.abs(value.best / figure - 1)).toBeLessThanOrEqual(reach)
    expect(value.low).toBeLessThanOrEqual(figure)
    expect(value.high).toBeGreaterThanOrEqual(figure)
    if (sense) expect(senses[0]?.id).toBe(sense)
    run += 1
  })

  afterAll(() => {
    console.log(`${run} of ${cases.length} figures of statutes and handbooks hold`)
    expect(run).toBe(cases.length)
  })
})
