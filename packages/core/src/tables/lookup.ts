import { goods } from './rows/goods.js'
import { measures } from './rows/measures.js'
import { sources } from './rows/sources.js'
import { standards } from './rows/standards.js'
import type { Dated, GoodRow, MeasureRow, SourceRow, StandardRow } from './schema/index.js'

/**
 * Rows by their id and by every other name; an id wins over another row's name, and the earlier of two rows has a name that both bear.
 *
 * @param keyOf what a name is compared by
 */
export function byName<Row extends { readonly id: string; readonly names: readonly string[] }>(
  rows: readonly Row[],
  keyOf: (name: string) => string = (name) => name,
): ReadonlyMap<string, Row> {
  const index = new Map<string, Row>()
  for (const row of rows) for (const name of row.names.map(keyOf)) if (!index.has(name)) index.set(name, row)
  for (const row of rows) index.set(keyOf(row.id), row)
  return index
}

function byId<Row extends { readonly id: string }>(rows: readonly Row[]): ReadonlyMap<string, Row> {
  return new Map(rows.map((row) => [row.id, row]))
}

const measureIndex = byName(measures)
const goodIndex = byName(goods)
const sourceIndex = byId(sources)
const standardIndex = byId(standards)
const families = new Map<string, StandardRow[]>()
for (const row of standards) families.set(row.family, [...(families.get(row.family) ?? []), row])

/** A weight, capacity or count by its modern name or a listed spelling; undefined where the tables have none. */
export function findMeasure(name: string): MeasureRow | undefined {
  return measureIndex.get(name)
}

function goodNamed(name: string): GoodRow | undefined {
  const id = name.replaceAll(' ', '-')
  return goodIndex.get(name) ?? goodIndex.get(id) ?? goodIndex.get(`${name}s`) ?? goodIndex.get(`${id}s`)
}

/**
 * A thing by its id, its modern name or a listed spelling, in the singular or the plural: first with a word that describes it (*brown sugar*),
 * the nearest to its name before the others (*white granulated sugar*), then as it stands, then by its last word (*sweet cream* is cream).
 */
export function findGood(name: string, describing: readonly string[] = []): GoodRow | undefined {
  const lower = name.toLowerCase()
  for (const word of [...describing].reverse()) {
    const described = goodNamed(`${word} ${lower}`)
    if (described) return described
  }
  return goodNamed(lower) ?? goodNamed(lower.slice(lower.lastIndexOf(' ') + 1))
}

export function findSource(id: string): SourceRow | undefined {
  return sourceIndex.get(id)
}

export function findStandard(id: string): StandardRow | undefined {
  return standardIndex.get(id)
}

/** Every standard of a family, in the order of the table. */
export function standardsOf(family: string): readonly StandardRow[] {
  return families.get(family) ?? []
}

/** Whether a year lies in a span, both ends included. What has no span holds always. */
export function inYears(years: Dated['years'], year: number): boolean {
  return !years || (years[0] <= year && year <= years[1])
}

/** Whether a row holds in a year and a chain of places (the nearest first). */
export function holds({ years, place }: Dated, year: number, places: readonly string[]): boolean {
  return inYears(years, year) && (!place || places.includes(place))
}
