import { PottleError } from '../error.js'
import { nearestTo, sayNearest } from '../nearest.js'
import { inYears, type PeriodName } from '../tables/index.js'
import { keysOf, standsAt, type Word, wordsOf } from './words.js'

/** A table row that old books call by several names, each in its years. */
interface NamedRow {
  readonly id: string
  readonly label: string
  readonly names: readonly PeriodName[]
}

export interface NamedMatch<Row> {
  readonly row: Row
  /** Places of its words. */
  readonly used: readonly number[]
}

type Entry<Row> = { readonly keys: readonly string[]; readonly row: Row; readonly years: readonly [number, number] | undefined }

/**
 * Finds rows by the names that dated books give them: the longest name in the words; among rows of the same name the one whose years hold, and
 * without a year the one whose name has none.
 */
export function periodIndex<Row extends NamedRow>(
  rows: readonly Row[],
): (words: readonly Word[], year: number | null) => NamedMatch<Row> | undefined {
  const entries: readonly Entry<Row>[] = rows
    .flatMap((row) =>
      [{ words: row.id }, { words: row.label }, ...row.names].map((name: PeriodName) => ({
        keys: keysOf(name.words),
        row,
        years: name.years,
      })),
    )
    .sort((a, b) => b.keys.length - a.keys.length)
  const fits = ({ years }: Entry<Row>, year: number | null): number => {
    if (!years) return 1
    return year !== null && inYears(years, year) ? 2 : 0
  }
  return (words, year) => {
    const runs = words.flatMap((_, at) => entries.filter(({ keys }) => standsAt(words, at, keys)).map((entry) => ({ entry, at })))
    const longest = Math.max(0, ...runs.map(({ entry }) => entry.keys.length))
    const [first] = runs.filter(({ entry }) => entry.keys.length === longest).sort((a, b) => fits(b.entry, year) - fits(a.entry, year))
    if (!first) return undefined
    const { entry, at } = first
    return { row: entry.row, used: words.slice(at, at + entry.keys.length).map((word) => word.at) }
  }
}

/** The error for words that name none of the rows. */
export function unknownName(phrase: string, what: string, rows: readonly NamedRow[]): PottleError {
  const names = rows.flatMap((row) => row.names.map(({ words }) => words))
  // The longest word is the likeliest to be a name misspelt.
  const longest = wordsOf(phrase).reduce((most, { text }) => (text.length > most.length ? text : most), '')
  const all = [...new Set(names)]
  const nearest = nearestTo(longest || phrase, all, 5)
  const detail = `"${phrase.slice(0, 60)}" names no ${what}${sayNearest(longest || phrase, all, 5)}`
  return new PottleError('unreadable', [{ parameter: 'phrase', detail }], { understood: [], unread: [phrase.slice(0, 60)], nearest })
}
