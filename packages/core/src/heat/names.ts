import { type BakeGoodRow, bakeGoods, type HeatName, type HeatRelationRow, heatRelations, heats, inYears } from '../tables/index.js'
import { keysOf, standsAt, type Word } from './words.js'

/** One of the heats that words may mean. */
export interface Meaning {
  readonly heat: string
  readonly likelihood: number
  readonly note?: string
}

/** A run of words that the tables know. */
export interface Match<Known> {
  readonly from: number
  /** The place after its last word. */
  readonly to: number
  readonly known: Known
}

interface Entry<Known> {
  readonly keys: readonly string[]
  readonly known: Known
}

/** Entries by their first word, the longest first. */
type Index<Known> = ReadonlyMap<string, readonly Entry<Known>[]>

function indexOf<Known>(entries: readonly Entry<Known>[]): Index<Known> {
  const index = new Map<string, Entry<Known>[]>()
  for (const entry of entries) index.set(entry.keys[0]!, [...(index.get(entry.keys[0]!) ?? []), entry])
  for (const list of index.values()) list.sort((a, b) => b.keys.length - a.keys.length)
  return index
}

const index = <Known>(pairs: readonly (readonly [string, Known])[]): Index<Known> =>
  indexOf(pairs.map(([words, known]) => ({ keys: keysOf(words), known })))

function longestAt<Known>(entries: Index<Known>, words: readonly Word[], at: number): Match<Known> | undefined {
  const entry = entries.get(words[at]!.key)?.find(({ keys }) => standsAt(words, at, keys))
  return entry && { from: at, to: at + entry.keys.length, known: entry.known }
}

type Named = HeatName & { readonly heat: string }

const byWords = new Map<string, Named[]>()
for (const { id, names } of heats)
  for (const name of names) {
    const key = keysOf(name.words).join(' ')
    byWords.set(key, [...(byWords.get(key) ?? []), { ...name, heat: id }])
  }
const heatEntries = indexOf([...byWords].map(([key, known]) => ({ keys: key.split(' '), known })))

/** Dated meanings hold in their years; without a year the undated ones hold, and all of them where none is undated. */
function inYear(names: readonly Named[], year: number | null): readonly Named[] {
  const holding = names.filter(({ years }) => !years || (year !== null && inYears(years, year)))
  return holding.length > 0 ? holding : names
}

/** The likeliest first; the likelihoods of one phrase add up to 1. */
function weigh(names: readonly Named[]): readonly Meaning[] {
  const likelihoods = new Map<string, Meaning>()
  for (const { heat, likelihood = 1, note } of names) {
    const known = likelihoods.get(heat)
    const said = note ?? known?.note
    likelihoods.set(heat, { heat, likelihood: (known?.likelihood ?? 0) + likelihood, ...(said ? { note: said } : {}) })
  }
  const total = [...likelihoods.values()].reduce((sum, { likelihood }) => sum + likelihood, 0)
  return [...likelihoods.values()]
    .map((one) => ({ ...one, likelihood: one.likelihood / total }))
    .sort((a, b) => b.likelihood - a.likelihood)
}

/** The longest name of a heat that stands at a place, and what it meant in a year. */
export function heatAt(words: readonly Word[], at: number, year: number | null): Match<readonly Meaning[]> | undefined {
  const match = longestAt(heatEntries, words, at)
  return match && { ...match, known: weigh(inYear(match.known, year)) }
}

const goodsOf = (kind: HeatRelationRow['kind']): (readonly [string, HeatRelationRow])[] =>
  heatRelations.filter((row) => row.kind === kind).flatMap((row) => row.goods.map((goods) => [goods, row] as const))

const asFor = index(goodsOf('as-for'))
const afterGoods = index(goodsOf('after'))
const wordings = index(heatRelations.flatMap((row) => row.names.map((name) => [name, row] as const)))
const tabled = index(bakeGoods.flatMap((row) => [row.label, ...row.names].map((name) => [name, row] as const)))

function firstOf<Known>(entries: Index<Known>, words: readonly Word[]): Match<Known> | undefined {
  // The longest name anywhere, so that *white bread* is not read as *bread*.
  return words
    .map((_, at) => longestAt(entries, words, at))
    .filter((match) => match !== undefined)
    .sort((a, b) => b.to - b.from - (a.to - a.from))[0]
}

export const asForIn = (words: readonly Word[]): Match<HeatRelationRow> | undefined => firstOf(asFor, words)
export const afterIn = (words: readonly Word[]): Match<HeatRelationRow> | undefined => firstOf(afterGoods, words)
export const wordingIn = (words: readonly Word[]): Match<HeatRelationRow> | undefined => firstOf(wordings, words)
export const goodsIn = (words: readonly Word[]): Match<BakeGoodRow> | undefined => firstOf(tabled, words)
