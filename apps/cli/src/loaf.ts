import {
  type AnswerStep,
  citeShort,
  dataset,
  drawLoafSeries,
  inModernUnits,
  type LoafQuestion,
  type LoafYearWeight,
  loafSeries,
  loavesOver,
  type ModernValue,
  mixtureBand,
  settingOf,
  type Value,
} from '@pottle/core'
import { UsageError } from './fault.js'
import { labelOfPlace } from './views/place.js'

/** What a command line may say of a loaf. */
export interface LoafAsked {
  readonly year: string
  readonly place: string | undefined
  readonly coin: string | undefined
  readonly kind: string | undefined
  readonly wheat: number | undefined
  readonly allowance: number | undefined
  readonly market: LoafQuestion['market'] | undefined
  readonly crumb: boolean
  readonly coverage: number | undefined
}

/** The weight of a loaf, in the form of the HTTP API's answer. */
export interface Weighed {
  readonly setting: { readonly year: string | number | null; readonly place: string }
  readonly loaf: { readonly coin: string; readonly kind: string; readonly label: string }
  readonly value: Value
  readonly modern: readonly ModernValue[]
  readonly exact: string | null
  /** Year by year, where a span was asked for. */
  readonly series?: readonly LoafYearWeight[]
  readonly steps: readonly AnswerStep[]
  readonly dataset: string
}

/** Leaves out what was not said, so that the library's own defaults hold. */
function question({ coin, kind, wheat, allowance, market, crumb }: LoafAsked, place: readonly string[]): Omit<LoafQuestion, 'year'> {
  return {
    place,
    crumb,
    ...(coin === undefined ? {} : { coin }),
    ...(kind === undefined ? {} : { kind }),
    ...(wheat === undefined ? {} : { wheat }),
    ...(allowance === undefined ? {} : { allowance }),
    ...(market === undefined ? {} : { market }),
  }
}

function checkCoverage(coverage = 0.9): number {
  if (coverage >= 0.5 && coverage <= 0.999) return coverage
  throw new UsageError('--coverage', 'give a number from 0.5 to 0.999, such as 0.9')
}

/**
 * Weighs a loaf: of one year, or of a span of years taken together and year by year.
 *
 * @throws PottleError as `loafWeight` does; UsageError for a coverage that is out of range
 */
export function weigh(asked: LoafAsked): Weighed {
  const setting = settingOf(asked.year, asked.place)
  const coverage = checkCoverage(asked.coverage)
  const asks = question(asked, setting.places)
  const loaves = loavesOver(asks, setting.moments, setting.year!)
    .map(({ loaf, years }) => ({ loaf, weight: years.reduce((sum, { weight }) => sum + weight, 0) }))
    .sort((a, b) => b.weight - a.weight)
  const { loaf } = loaves[0]!
  const value: Value = {
    quantity: 'mass',
    unit: 'g',
    ...mixtureBand(
      loaves.map(({ weight, loaf: { value } }) => ({ weight, value })),
      coverage,
    ),
  }
  const { from, to, year, places } = setting
  return {
    setting: { year: from === to ? from : year, place: places[0]! },
    loaf: { coin: loaf.coin, kind: loaf.kind, label: loaf.label },
    value,
    modern: inModernUnits('mass', value),
    exact: loaves.length === 1 ? (loaf.exact ?? null) : null,
    ...(from === to ? {} : { series: loafSeries({ ...asks, from, to, coverage }) }),
    steps: loaf.steps.map((step) => ({ ...step, sources: step.sources.map(citeShort) })),
    dataset,
  }
}

/** The weight against the year as a standalone SVG. */
export function pictureOf({ setting: { year, place }, loaf, value, series }: Weighed): string {
  const { low, best, high, coverage } = value
  return drawLoafSeries(series ?? [{ year: Number(year), low, best, high }], { ...loaf, place: labelOfPlace(place), coverage })
}
