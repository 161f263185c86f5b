import { allHeats } from '@pottle/core'
import { sourceOf } from '../parts/sources.js'
import { measureShelves, shelves } from './shelves/index.js'

/** Something of the tables that leans on a source, by the page that it has. */
export interface Leaning {
  readonly address: string
  readonly label: string
}

/** What leans on a source, by the list that it stands in. */
export type Resting = ReadonlyMap<string, readonly Leaning[]>

const nameOfList = new Map(shelves.map((shelf) => [shelf, measureShelves.includes(shelf) ? 'Measures' : shelf.title]))

/** Every leaning of the tables, with the list that it stands in and the footnote forms that it cites. */
function* leanings(): Generator<{ list: string; leaning: Leaning; sources: readonly (string | undefined)[] }> {
  for (const shelf of shelves)
    for (const { address, label, findings } of shelf.articles)
      yield { list: nameOfList.get(shelf)!, leaning: { address, label }, sources: findings.flatMap((one) => one.sources).map(sourceOf) }
  for (const { id, label, claims, goods, tests } of allHeats()) {
    const sources = [...claims, ...goods, ...tests].flatMap((one) => one.sources).map((cited) => cited.id)
    yield { list: 'Oven heats', leaning: { address: `/heats/${id}`, label }, sources }
  }
}

/** Made once, when a source is first looked at. */
function makeIndex(): Map<string, Map<string, Leaning[]>> {
  const index = new Map<string, Map<string, Leaning[]>>()
  for (const { list, leaning, sources } of leanings()) {
    for (const id of new Set(sources)) {
      if (id === undefined) continue
      const lists = index.get(id) ?? new Map<string, Leaning[]>()
      lists.set(list, [...(lists.get(list) ?? []), leaning])
      index.set(id, lists)
    }
  }
  return index
}

let index: ReturnType<typeof makeIndex> | undefined

/** What leans on a source. */
export function restingOn(id: string): Resting {
  index ??= makeIndex()
  return index.get(id) ?? new Map()
}
