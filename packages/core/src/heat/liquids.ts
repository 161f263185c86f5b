import type { Band } from '../bands/index.js'
import { citeShort } from '../cite/index.js'
import type { ModernValue } from '../modern/index.js'
import { type Checked, type Citation, type Grade, type LiquidHeatRow, liquidHeats as rows } from '../tables/index.js'
import { bandInCelsius, tidy } from './degrees.js'
import { periodIndex, unknownName } from './period.js'
import { liquidSettings } from './settings.js'
import { type Word, wordSet, wordsOf } from './words.js'

/** The warmth of a liquid by its kitchen name. */
export interface LiquidHeat {
  readonly id: string
  readonly rank: number
  readonly label: string
  /** In degC, at sea level. */
  readonly value: Band
  readonly modern: readonly ModernValue[]
  /** What dated books print, in degF. */
  readonly printed: readonly {
    readonly low: number
    readonly high: number
    readonly year: number
    readonly source: string
    readonly sources: readonly Citation[]
    readonly note: string | null
  }[]
  readonly sources: readonly Citation[]
  readonly grade: Grade
  readonly checked: Checked
  readonly notes: readonly string[]
}

const sorted = [...rows].sort((a, b) => a.rank - b.rank)
const find = periodIndex(rows)
const more = wordSet('more warmer hotter above over')
const less = wordSet('less cooler scarce scarcely barely under hardly')

function asHeat(row: LiquidHeatRow, value: Band, notes: readonly string[]): LiquidHeat {
  const { id, rank, label, printed, source, grade, checked, note } = row
  return {
    id,
    rank,
    label,
    value,
    modern: liquidSettings(value),
    printed: printed.map((one) => ({
      low: one.low,
      high: one.high,
      year: one.year,
      source: citeShort(one.source),
      sources: [one.source],
      note: one.note ?? null,
    })),
    sources: source,
    grade,
    checked,
    notes: note ? [note, ...notes] : notes,
  }
}

/** *A little more than milk-warm*: from the heat itself half a dozen degrees on. */
const beyond = 6

function bentBand(band: Band, words: readonly Word[]): { band: Band; notes: readonly string[] } {
  const says = (set: ReadonlySet<string>): boolean => words.some(({ key }) => set.has(key))
  if (says(more))
    return {
      band: { ...band, low: band.best, best: tidy(band.best + beyond / 2), high: tidy(band.high + beyond) },
      notes: ['Somewhat above what is named.'],
    }
  if (says(less))
    return {
      band: { ...band, low: tidy(band.low - beyond), best: tidy(band.best - beyond / 2), high: band.best },
      notes: ['Somewhat below what is named.'],
    }
  return { band, notes: [] }
}

/**
 * Every name for the warmth of a liquid, from cold to boiling, in degC at sea level.
 *
 * @example liquidHeats().at(-1)?.id   // 'boiling'
 */
export function liquidHeats(): readonly LiquidHeat[] {
  return sorted.map((row) => asHeat(row, bandInCelsius(row.degF), []))
}

/**
 * The warmth of a liquid by its kitchen name: *milk-warm*, *blood-warm*, *scalding*, *a walm or two*, *half boiling, half cold*.
 *
 * @param year when the words were written; null where that is not known
 * @returns its band in degC at sea level
 * @throws PottleError `unreadable` with the nearest names when none is named
 * @example liquidHeat('warm as new milk').value.best   // 35
 */
export function liquidHeat(phrase: string, year: number | null = null): LiquidHeat {
  const words = wordsOf(phrase)
  const match = find(words, year)
  if (!match) throw unknownName(phrase, 'warmth of a liquid', rows)
  const used = new Set(match.used)
  const { band, notes } = bentBand(
    bandInCelsius(match.row.degF),
    words.filter(({ at }) => !used.has(at)),
  )
  return asHeat(match.row, band, notes)
}
