import { readFileSync } from 'node:fs'
import { exactRatio, exactValue, findStandard, measures, places, sources, standards, standardsOf, tolerances, usage } from '@core/tables'
import { describe, expect, test } from 'vitest'
import { describeTables } from '../../data/tools/describe.mjs'
import { findFaults } from '../../data/tools/faults.mjs'
import { tables as everyTable } from '../../data/tools/tables.mjs'

const read = (name: string) => JSON.parse(readFileSync(new URL(`../../data/${name}.json`, import.meta.url), 'utf8'))
const tables = { places, standards, measures, usage, tolerances, sources, goods: read('goods') }

describe('the tables of weights, capacities and counts', () => {
  test('have no faults', () => expect(findFaults(tables)).toEqual([]))

  test('are described as their types are now', () => {
    expect(readFileSync(new URL('../../data/datapackage.json', import.meta.url), 'utf8') === describeTables()).toBe(true)
  })

  test('have a sense for every kitchen measure of the trade', () => {
    const kitchen =
      'grain scruple drachm pennyweight ounce pound stone quarter gill noggin pint quart pottle gallon peck bushel firkin kilderkin barrel'
    for (const name of kitchen.split(' ')) expect(measures.find((row) => row.id === name)?.senses.length, name).toBeGreaterThan(0)
  })

  test('give each measure at most one sense of a thing by the same family', () => {
    for (const row of measures) {
      const families = row.senses
        .filter(({ of }) => !findStandard(of))
        .map(({ of, years, place, things }) => `${of} ${years} ${place} ${things}`)
      expect(new Set(families).size, row.id).toBe(families.length)
    }
  })

  test('keep the exact chain: two gills and two gills are a pint, and so up to the gallon', () => {
    const ratio = (name: string) => exactRatio(measures.find((row) => row.id === name)!.senses[0]!.ratio)
    const chain = ['gill', 'pint', 'quart', 'pottle', 'gallon', 'peck', 'tuffet', 'bushel', 'strike', 'coomb', 'seam']
    const steps = [4, 2, 2, 2, 2, 2, 2, 2, 2, 2]
    steps.forEach((step, i) => {
      expect(
        ratio(chain[i + 1]!)
          .div(ratio(chain[i]!))
          .toNumber(),
        `${chain[i]} to ${chain[i + 1]}`,
      ).toBe(step)
    })
  })

  test('agree with sums that the old arithmetics set: 144 pounds avoirdupois are 175 pounds troy', () => {
    const grams = (id: string) => exactValue(findStandard(id)!.value).value
    expect(grams('pound.avoirdupois').times(144).toString()).toBe(grams('pound.troy').times(175).toString())
  })

  test('make the Winchester gallon of a bushel eighteen and a half inches wide and eight deep', () => {
    const winchester = exactValue(findStandard('gallon.corn')!.value).value.toNumber() * 8
    expect(winchester / (Math.PI * 9.25 ** 2 * 8 * 16.387064)).toBeCloseTo(1, 6)
  })

  test('make the firlots of the pints that Bryce counted: twenty-one and a quarter, and thirty-one', () => {
    const ml = (id: string) => exactValue(findStandard(id)!.value).value.toNumber()
    expect(ml('firlot.wheat') / ml('scots-pint.stirling')).toBeCloseTo(21.25, 4)
    expect(ml('firlot.barley') / ml('scots-pint.stirling')).toBeCloseTo(31, 4)
  })

  test('name every standard that some usage weighs, and weigh in every family of several', () => {
    const families = new Set(standards.map((row) => row.family))
    const weighed = new Set(usage.map((row) => row.family))
    const several = [...families].filter(
      (family) => standardsOf(family).length > 1 && measures.some((row) => row.senses.some(({ of }) => of === family)),
    )
    for (const family of several) expect(weighed.has(family), family).toBe(true)
  })

  test('cite every source that is listed', () => {
    const cited = new Set<string>()
    for (const name of Object.keys(everyTable).filter((table) => table !== 'sources'))
      JSON.stringify(read(name), (_, value) => {
        for (const one of value?.source ? [value.source].flat() : []) cited.add(typeof one === 'string' ? one : one.id)
        return value
      })
    expect(sources.map(({ id }) => id).filter((id) => !cited.has(id))).toEqual([])
  })
})
