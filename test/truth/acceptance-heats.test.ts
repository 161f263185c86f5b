/** Oven heats, tests, sugar, liquids, brick ovens and bakes, asked in the words of books, against the degrees that sources print. */
import { bakePlan, brickOven, findHeat, liquidHeat, sugarHeight } from '@pottle/core'
import { afterAll, describe, expect, test } from 'vitest'

const fahrenheit = (celsius: number): number => (celsius * 9) / 5 + 32
const celsius = (degF: number): number => ((degF - 32) * 5) / 9

const counts = new Map<string, number>()
const wanted = new Map<string, number>()
const count = (what: string): void => void counts.set(what, (counts.get(what) ?? 0) + 1)

function rows<Row extends readonly unknown[]>(what: string, list: readonly Row[], check: (row: Row) => void): void {
  wanted.set(what, list.length)
  describe(what, () => {
    test.each(list.map((row) => [row.join(' | '), row] as const))('%s', (_, row) => {
      check(row)
      count(what)
    })
  })
}

/** The heat that a phrase stands for, as the sources rank it. */
const ranks: readonly (readonly [phrase: string, year: number, heat: string, source: string])[] = [
  ['a warm oven', 1655, 'drying', 'A Queens Delight 1655: drying candied fruit'],
  ['a temperate oven', 1660, 'drying', 'May 1660: drying rice to grind'],
  ['a very cool oven', 1733, 'very-cool', 'Eales 1733: wafers'],
  ['a very soft ouen', 1660, 'very-slow', 'May 1660: a green tart kept green'],
  ['a very mild oven', 1660, 'very-slow', 'May 1660: almond drops that only rise'],
  ['a slacke ouen', 1650, 'slow', 'Simmons 1796, Eaton 1822: iced tarts'],
  ['a mild oven', 1660, 'slow', 'May 1660: cheesecakes'],
  ['a gentle oven', 1736, 'slow', 'Bradley 1736: drying roots'],
  ['a gentle oven', 1866, 'moderate', 'American household book c. 1866'],
  ['a soaking oven', 1861, 'moderately-slow', 'Beeton 1861: raised pies'],
  ['a moderate oven', 1822, 'moderate', 'Soyer 1846'],
  ['a pretty quick oven', 1764, 'moderately-hot', 'Moxon 1764: great cakes'],
  ['a whot ouen', 1596, 'hot', 'Farmer 1896'],
  ['a brisk oven', 1861, 'hot', 'Beeton 1861, par. 1190'],
  ['a very quick oven', 1733, 'very-hot', 'Eales 1733: biscuit'],
  ['an oven as hot as possible', 1669, 'fierce', 'Digby 1669: brawn'],
  ['a furious oven', 1832, 'fierce', 'Child 1832: flour blackens at once'],
  ['a scorching oven', 1866, 'scorching', 'American household book c. 1866'],
]

rows('heats by their rank', ranks, ([phrase, year, heat]) => {
  const found = findHeat(phrase, { year })
  expect(found.heat.id).toBe(heat)
  expect(found.unread).toEqual([])
})

/** Degrees that a test or a duty has in a book: the band must hold them. */
const tests: readonly (readonly [phrase: string, year: number, low: number, high: number, source: string])[] = [
  ['white paper browns delicately in five minutes', 1914, 380, 380, 'Kinne & Cooley 1914'],
  ['paper deep golden brown in five minutes', 1914, 425, 450, 'Kinne & Cooley 1914'],
  ['notepaper golden brown in seven minutes', 1932, 270, 270, 'English country cookery of about 1932'],
  ['paper browns in a minute and a half', 1938, 375, 375, 'A Guide to Royal Success in Baking'],
  ['paper browns in half a minute', 1938, 475, 475, 'A Guide to Royal Success in Baking'],
  ['count fifteen with your hand in the oven', 1914, 380, 380, 'Kinne & Cooley 1914'],
  ['you can hold your hand in it ten seconds', 1914, 425, 450, 'Kinne & Cooley 1914'],
  ['when the bread is drawn', 1907, 200, 250, 'Beeton 1907: the oven after 45 minutes'],
  ['as hot as for bread', 1907, 400, 500, 'Beeton 1907: the oven as bread goes in'],
  ['gas mark 4', 1930, 350, 350, 'The gas mark: 275 degF and 25 a mark'],
  ['gas mark 1/2', 1950, 250, 250, 'The gas mark: 25 degF less a halving'],
]

rows('tests and duties by their degrees', tests, ([phrase, year, low, high]) => {
  const { value } = findHeat(phrase, { year })
  expect(fahrenheit(value.low)).toBeLessThanOrEqual(high + 0.5)
  expect(fahrenheit(value.high)).toBeGreaterThanOrEqual(low - 0.5)
})

/** Two signs of one book, the cooler first. */
const order: readonly (readonly [cooler: string, hotter: string, year: number, source: string])[] = [
  ['paper light yellow in five minutes', 'paper dark yellow in five minutes', 1893, 'Parloa 1893: sponge cake below cup cakes'],
  ['paper dark yellow in five minutes', 'paper dark brown in five minutes', 1893, 'Parloa 1893: cup cakes below pastry'],
  ['flour browns in five minutes', 'flour browns in one minute', 1893, 'Kellogg 1893: loaves below rolls'],
  ['hold your hand in the oven while you count thirty', 'hold your hand in the oven and count twenty', 1846, 'Beecher 1846'],
  ['as hot as for manchet', 'a little hotter than for manchet', 1658, 'The Compleat Cook 1658'],
  ['as hot as for white bread', 'as hot as for brown bread', 1832, 'Child 1832'],
]

rows('signs in the order of their book', order, ([cooler, hotter, year]) => {
  expect(findHeat(cooler, { year }).value.best).toBeLessThan(findHeat(hotter, { year }).value.best)
})

const farmer = 'Farmer, text of 1910'
const sugars: readonly (readonly [height: string, year: number, degF: number, reach: number, source: string])[] = [
  ['small thread', 1910, 215, 0.5, farmer],
  ['large thread', 1910, 217, 0.5, farmer],
  ['pearl', 1910, 220, 0.5, farmer],
  ['large pearl', 1910, 222, 0.5, farmer],
  ['blow', 1910, 230, 0.5, farmer],
  ['feather', 1910, 232, 0.5, farmer],
  ['soft ball', 1910, 238, 0.5, farmer],
  ['hard ball', 1910, 248, 0.5, farmer],
  ['small crack', 1910, 290, 0.5, farmer],
  ['crack', 1910, 310, 0.5, farmer],
  ['caramel', 1910, 350, 0.5, farmer],
  ['blown', 1761, 230, 3, 'Lambert 1761, by Farmer'],
  ['souffle', 1846, 230, 3, 'Soyer 1846, by Farmer'],
  ['candy height', 1672, 235, 5, 'Woolley 1672: candy that takes fruit, blow to soft ball by Farmer'],
]

rows('sugar', sugars, ([height, year, degF, reach]) => {
  expect(Math.abs(fahrenheit(sugarHeight(height, year).value.best) - degF)).toBeLessThanOrEqual(reach)
})

const liquids: readonly (readonly [words: string, year: number, low: number, high: number, source: string])[] = [
  ['milk-warm', 1660, 90, 98, 'Leslie 1837: milk for rennet 90 to 96'],
  ['blood warm', 1750, 98, 100, 'Parloa 1880: blood-warm 100 in cold weather'],
  ['luke warme', 1600, 80, 92, 'Beeton 1861: lukewarm 80 and 85'],
  ['tepid', 1896, 65, 92, farmer],
  ['a gentle simmer', 1830, 212, 212, 'Kitchiner 1830'],
  ['scalding', 1896, 196, 196, farmer],
  ['half boiling, half cold', 1850, 130, 130, 'Heat content of water at 45 and 212'],
]

rows('liquids', liquids, ([words, year, low, high]) => {
  const { value } = liquidHeat(words, year)
  expect(fahrenheit(value.low)).toBeLessThanOrEqual(high + 2)
  expect(fahrenheit(value.high)).toBeGreaterThanOrEqual(low - 2)
})

/** Newton's law of cooling from 450 degF in a room of 65, hours and degF by time constant. */
const cooling: readonly (readonly [timeConstant: number, hours: number, degF: number])[] = [
  [10, 1, 413],
  [10, 4, 323],
  [10, 12, 181],
  [6, 2, 341],
  [6, 8, 166],
  [16, 6, 330],
  [16, 24, 151],
]

rows('a cooling oven', cooling, ([timeConstant, hours, degF]) => {
  const { at } = brickOven({ start: celsius(450), ambient: celsius(65), timeConstant })
  expect(Math.abs(fahrenheit(at(hours).value.best) - degF)).toBeLessThanOrEqual(0.6)
})

test('a small custard tart of half an hour becomes a pie of about 55 minutes, 51 to 72 (Carslaw & Jaeger 1959, product solution)', () => {
  const { minutes } = bakePlan({
    food: 'custard',
    from: { shape: 'tart', size: { depth: 25, diameter: 70 }, minutes: 30, celsius: celsius(350) },
    to: { shape: 'pie', size: { depth: 35, diameter: 220 } },
  })
  expect(minutes.nominal).toBeCloseTo(55, 0)
  expect(minutes.early).toBeCloseTo(51, 0)
  expect(minutes.late).toBeCloseTo(72, 0)
})

afterAll(() => {
  console.log(`acceptance: ${[...wanted].map(([what, all]) => `${counts.get(what) ?? 0} of ${all} ${what}`).join(', ')} hold`)
  expect([...wanted].map(([what]) => [what, counts.get(what)])).toEqual([...wanted])
})
