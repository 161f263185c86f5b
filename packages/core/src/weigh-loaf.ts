import type { AnswerSource, Value } from './answer.js'
import { mixtureBand } from './bands/index.js'
import { type LoafQuestion, type LoafSpan, type LoafYearWeight, loafSeries, loavesOver } from './bread/index.js'
import { type AnswerStep, tellStep } from './cite/index.js'
import { badOption, requireFields } from './error.js'
import { inModernUnits, type ModernValue } from './modern/index.js'
import { checkCoverage } from './options.js'
import { settingOf } from './setting.js'
import { sourcesOf } from './sources-of.js'
import { baseUnits, dataset } from './tables/index.js'

/** Which loaf, by a date and a place as phrases have them; what is not said is left to the tables. */
export interface LoafAsked {
  /** A year from 1266 to 1900, or a date in EDTF level 1: `1690`, `169X`, `1660/1710`. */
  readonly year: number | string
  /** A place's id; `england` where none is given. */
  readonly place?: string | undefined
  readonly coin?: string | undefined
  readonly kind?: string | undefined
  readonly market?: LoafQuestion['market'] | undefined
  readonly wheat?: number | undefined
  readonly allowance?: number | undefined
  readonly crumb?: boolean | undefined
  /** How much of the probability the band holds; 0.9 where none is given. */
  readonly coverage?: number | undefined
}

/** The weight of a loaf as sold, as plain data. */
export interface LoafAnswer {
  readonly setting: { readonly year: number | string | null; readonly place: string }
  readonly loaf: { readonly coin: string; readonly kind: string; readonly label: string }
  readonly value: Value
  /** Grams in all their digits, for a loaf whose weight the law fixed; else null. */
  readonly exact: string | null
  readonly modern: readonly ModernValue[]
  /** Year by year, where the date leaves several open. */
  readonly series?: readonly LoafYearWeight[]
  readonly steps: readonly AnswerStep[]
  readonly sources: readonly AnswerSource[]
  readonly dataset: string
}

/** A question without what was not said, so that the tables' own defaults hold. */
function questionFrom({ coin, kind, market, wheat, allowance, crumb }: LoafAsked, place: readonly string[]): Omit<LoafQuestion, 'year'> {
  return {
    place,
    ...(coin === undefined ? {} : { coin }),
    ...(kind === undefined ? {} : { kind }),
    ...(market === undefined ? {} : { market }),
    ...(wheat === undefined ? {} : { wheat }),
    ...(allowance === undefined ? {} : { allowance }),
    ...(crumb === undefined ? {} : { crumb }),
  }
}

/** How much of the doubt about the date falls on the years of a rule. */
const weightOf = ({ years }: LoafSpan): number => years.reduce((sum, { weight }) => sum + weight, 0)

/**
 * Weighs a loaf of a date: of one year, or of a span of years taken together and year by year.
 *
 * @throws PottleError as `loafWeight` and `settingOf` do, and `bad-option` for a coverage that is out of range
 * @example weighLoaf({ coin: 'penny', kind: 'white', year: 1690, place: 'london' }).loaf.label   // 'penny white loaf'
 */
export function weighLoaf(asked: LoafAsked): LoafAnswer {
  const { year: date, place } = requireFields('question', asked)
  if (date === undefined || date === null) throw badOption('year', 'give the year of the loaf')
  const coverage = checkCoverage(asked.coverage)
  const { moments, places, year, from, to } = settingOf(date, place)
  const question = questionFrom(asked, places)
  const spans = [...loavesOver(question, moments, year!)].sort((a, b) => weightOf(b) - weightOf(a))
  const weighted = spans.map((span) => ({ weight: weightOf(span), value: span.loaf.value }))
  const { coin, kind, label, exact, steps } = spans[0]!.loaf
  const value: Value = { quantity: 'mass', unit: baseUnits.mass, ...mixtureBand(weighted, coverage) }
  return {
    setting: { year: from === to ? from : year, place: places[0]! },
    loaf: { coin, kind, label },
    value,
    exact: spans.length === 1 ? (exact ?? null) : null,
    modern: inModernUnits('mass', value),
    ...(from === to ? {} : { series: loafSeries({ ...question, from, to, coverage }) }),
    steps: steps.map(tellStep),
    sources: sourcesOf(spans.flatMap(({ loaf }) => loaf.steps)),
    dataset,
  }
}
