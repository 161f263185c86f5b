import type { Band } from '../bands/index.js'
import { citeShort } from '../cite/index.js'
import type { ModernValue } from '../modern/index.js'
import { type Checked, type Citation, type Grade, sugarHeights as rows, type SugarHeightRow } from '../tables/index.js'
import { bandInCelsius } from './degrees.js'
import { periodIndex, unknownName } from './period.js'
import { liquidSettings } from './settings.js'
import { wordsOf } from './words.js'

/** A height to which sugar is boiled. */
export interface SugarHeight {
  readonly id: string
  readonly rank: number
  readonly label: string
  /** In degC, at sea level. */
  readonly value: Band
  readonly modern: readonly ModernValue[]
  /** The degree that a book prints; null where none does, and the value is then our placing. */
  readonly printed: { readonly degF: number; readonly year: number; readonly source: string; readonly sources: readonly Citation[] } | null
  readonly test: string
  readonly names: readonly { readonly words: string; readonly years: readonly [number, number] | null; readonly source: string | null }[]
  readonly sources: readonly Citation[]
  readonly grade: Grade
  readonly checked: Checked
  readonly note: string | null
}

function asHeight(row: SugarHeightRow): SugarHeight {
  const { id, rank, label, degF, printed, test, names, source, grade, checked, note = null } = row
  const value = bandInCelsius(degF)
  return {
    id,
    rank,
    label,
    value,
    modern: liquidSettings(value),
    printed: printed ? { degF: printed.degF, year: printed.year, source: citeShort(printed.source), sources: [printed.source] } : null,
    test,
    names: names.map((name) => ({
      words: name.words,
      years: name.years ?? null,
      source: name.source ? citeShort({ id: name.source }) : null,
    })),
    sources: source,
    grade,
    checked,
    note,
  }
}

const all = [...rows].sort((a, b) => a.rank - b.rank).map(asHeight)
const find = periodIndex(rows)

/**
 * Every height of boiled sugar, from the small thread to caramel.
 *
 * @example sugarHeights()[0]?.id   // 'small-thread'
 */
export function sugarHeights(): readonly SugarHeight[] {
  return all
}

/**
 * A height of boiled sugar by any of its names. *Caramel* is the last clear degree in the books before 1896 and brown after.
 *
 * @param year when the words were written; null where that is not known
 * @returns its band in degC at sea level
 * @throws PottleError `unreadable` with the nearest names when none is named
 * @example sugarHeight('boil it to a feathered height', 1761).value.best   // 111.111
 */
export function sugarHeight(phrase: string, year: number | null = null): SugarHeight {
  const match = find(wordsOf(phrase), year)
  if (!match) throw unknownName(phrase, 'height of boiled sugar', rows)
  return all.find(({ id }) => id === match.row.id)!
}
