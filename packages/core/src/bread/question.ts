import { badOption, noAnswer, requireFields, requireWord, show } from '../error.js'
import type { Market } from './bench.js'
import { firstLoafYear, lastLoafYear } from './wheat.js'

/** Which loaf, when and where. */
export interface LoafQuestion {
  /** The price that names it, `farthing` to `eighteenpenny`, or a loaf of fixed weight: `quartern`, `half-peck`. `penny` where nothing is said. */
  readonly coin?: string
  /** `white`, `wheaten`, `household`, `manchet`, `roll` and others; the common loaf of the year where nothing is said. */
  readonly kind?: string
  readonly year: number
  /** A place and those that it lies in, the nearest first; England where nothing is said. */
  readonly place?: readonly string[]
  /** Town or country, where the place alone does not tell it. */
  readonly market?: Market
  /** The caller's own price of middle wheat, in shillings for a Winchester quarter. */
  readonly wheat?: number
  /** The caller's own allowance, in shillings a quarter; 0 where the price given has it in it. */
  readonly allowance?: number
  /** The crumb alone. */
  readonly crumb?: boolean
}

/** The dearest quarter on record is of 126 s (1812); ten times as much is a slip of the pen. */
const dearest = 1000

function requireShillings(parameter: string, value: number | undefined, least: string, holds: (shillings: number) => boolean): void {
  if (value === undefined) return
  if (!Number.isFinite(value) || !holds(value) || value > dearest) {
    throw badOption(
      parameter,
      `${show(value)} is not a sum that can be reckoned with; give shillings a quarter, ${least} and at most ${dearest}`,
    )
  }
}

/**
 * Refuses a year without an assize, or after what these tables know of it.
 *
 * @throws PottleError `bad-option` for what is no year, `no-answer` for one before 1266 or after 1900
 */
export function requireLoafYear(year: number): void {
  const span = `${firstLoafYear} to ${lastLoafYear}`
  if (!Number.isInteger(year)) throw badOption('year', `${show(year)} is not a year; give a whole number from ${span}`)
  if (year < firstLoafYear) {
    throw noAnswer(
      'year',
      `the Assize of Bread begins with the statute of ${firstLoafYear}, so no rule gives a loaf of ${year}; ask for ${span}`,
    )
  }
  if (year > lastLoafYear) {
    throw noAnswer('year', `these tables of bread end with ${lastLoafYear}, so they give no loaf of ${year}; ask for ${span}`)
  }
}

/**
 * Refuses a question that has no sense, before anything is reckoned.
 *
 * @throws PottleError `bad-option` for a year, price or allowance that is no such thing; `no-answer` for a year without an assize
 */
export function requireQuestion(question: LoafQuestion): void {
  const { year, wheat, allowance, coin, kind, place, market } = requireFields('question', question)
  if (coin !== undefined) requireWord('coin', coin)
  if (kind !== undefined) requireWord('kind', kind)
  if (market !== undefined) requireWord('market', market)
  if (place !== undefined && !Array.isArray(place))
    throw badOption('place', "give a place and those that it lies in, as a list: ['london', 'england']")
  for (const one of place ?? []) requireWord('place', one)
  requireLoafYear(year)
  requireShillings('wheat', wheat, 'above 0', (shillings) => shillings > 0)
  requireShillings('allowance', allowance, '0 or more', (shillings) => shillings >= 0)
}

/** Where a loaf was baked if nobody says. */
export const anywhere: readonly string[] = ['england', 'britain']
