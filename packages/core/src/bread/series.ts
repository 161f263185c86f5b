import { bandOf } from '../bands/index.js'
import { badOption, requireFields, show } from '../error.js'
import { loafWeight } from './loaf.js'
import type { LoafQuestion } from './question.js'

/** Which loaf, over which years; both ends included. */
export interface SeriesQuestion extends Omit<LoafQuestion, 'year'> {
  readonly from: number
  readonly to: number
  /** The share of the doubt inside the band; 0.9 where nothing is said. */
  readonly coverage?: number
}

/** The weight of a loaf in one year, in grams. */
export interface LoafYearWeight {
  readonly year: number
  readonly low: number
  readonly best: number
  readonly high: number
}

/**
 * The weight of a loaf year by year, in grams, with the ends of its band.
 *
 * @throws PottleError as `loafWeight` does, and `bad-option` for years that run backwards
 * @example loafSeries({ coin: 'penny', kind: 'white', from: 1660, to: 1710, place: ['london', 'england', 'britain'] }).length   // 51
 */
export function loafSeries(asked: SeriesQuestion): readonly LoafYearWeight[] {
  const { from, to, coverage = 0.9, ...question } = requireFields('question', asked)
  for (const [parameter, year] of Object.entries({ from, to }))
    loafWeight({ ...question, year: Number.isInteger(year) ? year : refuse(parameter, year) })
  if (from > to) throw badOption('to', `${to} is before ${from}; the first year comes first`)
  return Array.from({ length: to - from + 1 }, (_, i) => {
    const year = from + i
    const { low, best, high } = bandOf(loafWeight({ ...question, year }).value, coverage)
    return { year, low, best, high }
  })
}

function refuse(parameter: string, year: number): never {
  throw badOption(parameter, `${show(year)} is not a year; give a whole number`)
}
