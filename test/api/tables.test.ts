/** The tables as pages: everything that `data/` holds can be read, at an address of its own, and says what the table says. */
import { listMeasures } from '@pottle/core'
import * as tables from '@pottle/core/tables'
import { describe, expect, it, test } from 'vitest'
import { proposed } from '../../apps/api/src/pages/tables/ArticlePage.js'
import { measureShelves, shelves } from '../../apps/api/src/pages/tables/shelves/index.js'
import { ask } from './ask.js'

const articles = shelves.flatMap((shelf) => shelf.articles.map((article) => ({ shelf, article })))

/** The text of a page, as one line. */
async function read(path: string): Promise<string> {
  const { status, body } = await ask(path)
  expect(status, path).toBe(200)
  return String(body)
    .replace(/<[^>]{1,2000}>/g, ' ')
    .replaceAll('&#39;', "'")
    .replace(/\s+/g, ' ')
}

const labelsOf = (rows: readonly { readonly label: string }[]): string[] => [...new Set(rows.map(({ label }) => label))].sort()
const shelved = (address: string): string[] => labelsOf(shelves.find((shelf) => shelf.address === address)!.articles)

describe('every table has its page', () => {
  it.each([
    ['/measures/vessels', tables.vessels],
    ['/measures/pieces', tables.pieces],
    ['/measures/eggs', tables.eggs],
    ['/measures/lengths', tables.lengths],
    ['/measures/times', tables.durations],
    ['/measures/thicknesses', tables.consistencies],
    ['/measures/sizes', tables.comparisons],
    ['/measures/coins', tables.coins],
    ['/heats/sugar', tables.sugarHeights],
    ['/heats/liquids', tables.liquidHeats],
    ['/goods', tables.goods],
  ])('%s has all that the table has', (address, rows) => {
    expect(shelved(address)).toEqual(labelsOf(rows))
  })

  it('measures, loaves, pennyworths and oven tests too', async () => {
    const measured = measureShelves.slice(0, 3).flatMap((shelf) => shelf.articles.map(({ id }) => id))
    expect(measured.sort()).toEqual(
      listMeasures()
        .map(({ id }) => id)
        .sort(),
    )
    const loaves = new Set(tables.fixedLoaves.map(({ loaf }) => loaf))
    expect(shelves.find(({ address }) => address === '/measures/loaves')!.articles).toHaveLength(
      tables.loafCoins.length + tables.loafKinds.length + loaves.size,
    )
    const pennyworths = shelves.find(({ address }) => address === '/measures/pennyworths')!.articles
    expect(pennyworths.flatMap(({ findings }) => findings)).toHaveLength(tables.pennyworths.length)
    const tests = await read('/heats/tests')
    expect(tables.ovenTests.filter(({ observation }) => !tests.includes(observation))).toEqual([])
  })

  it('no two things have one address', () => {
    const addresses = articles.map(({ article }) => article.address)
    expect(addresses.length).toBeGreaterThan(750)
    expect(addresses.filter((address, i) => addresses.indexOf(address) !== i)).toEqual([])
  })
})

test('every page of every shelf is whole, and every list leads to all of its own', { timeout: 120_000 }, async () => {
  for (const { address, articles: own } of shelves) {
    const { body } = await ask(address)
    expect(
      own.filter((article) => !String(body).includes(`"${article.address.replaceAll("'", '&#39;')}"`)).map(({ id }) => id),
      address,
    ).toEqual([])
  }
  for (const { article } of articles) {
    const text = await read(article.address)
    expect(text, article.address).not.toMatch(/undefined|NaN|\[object|Infinity/)
    for (const { best } of article.findings) expect(text).toContain(best.replace(/\s/g, ' '))
  }
})

test('a page says what the table says', async () => {
  const spoon = await read('/measures/vessels/teaspoonful')
  for (const { low, high, years } of tables.vessels.find(({ id }) => id === 'teaspoonful')!.spells) {
    expect(spoon).toContain(`${low} to ${high} ml`)
    expect(spoon).toContain(years!.join('–'))
  }
  const crown = await read('/measures/coins/crown')
  expect(crown).toContain('38.6 mm across')
  expect(await read('/measures/sizes/egg')).toContain("as a hen's egg")
  expect(await read('/goods/butter')).toContain('Not used: butter is twice as heavy')
  expect(await read('/measures/vessels/basket')).toContain('It came in every size')
  // 16 ounces of 28.349523125 g: the International Yard and Pound Agreement of 1959.
  expect(await read('/measures/loaves/pound')).toContain('454 g')
  // The Weights and Measures Act 1824 and the wine gallon of 231 cubic inches.
  expect(await read('/measures/pint')).toMatch(/568 ml.*473 ml|473 ml.*568 ml/)
})

test('a measure leads on to the phrase, and the phrase is answered', async () => {
  const asking = articles.filter(({ article: { asks } }) => asks)
  const silent = asking.filter(({ article }) => !proposed(article))
  // A page proposes nothing that has no answer; few things are left without a proposal.
  expect(silent.length).toBeLessThan(asking.length / 15)
  for (const { article } of silent) expect(await read(article.address)).not.toContain('Ask with it')
  for (const address of ['/measures/coins/sixpence', '/measures/coins/dime', '/measures/stone', '/measures/boll'])
    expect(await read(address)).toContain('Ask with it')
})

test('other letters and other names lead to the same page', async () => {
  for (const [from, to] of [
    ['/measures/PINT', '/measures/pint'],
    ['/measures/pynte', '/measures/pint'],
    ['/measures/coins/Sixpence', '/measures/coins/sixpence'],
    ['/goods/Butter', '/goods/butter'],
  ] as const) {
    const { status, headers } = await ask(from)
    expect([status, headers.get('location')]).toEqual([301, to])
  }
})

test('a source leads to all that rests on it', async () => {
  const digby = await read('/sources/digby-1669')
  for (const one of ['runlet', 'handful', 'brine']) expect(digby).toContain(one)
})

test.each([
  '/measures/nothing',
  '/measures/nothing/at-all',
  '/measures/vessels/nothing',
  '/heats/nothing',
  '/heats/nothing/at-all',
  '/goods/nothing',
])('%s is told to be nothing, with the list that has it all', async (path) => {
  const { status, body } = await ask(path)
  expect(status).toBe(404)
  expect(body).toContain(`href="/${path.split('/')[1]}"`)
})
