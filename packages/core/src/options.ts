import { badOption, requireFields } from './error.js'
import { gatherFaults } from './faults.js'
import { findUnit, unitIds } from './modern/index.js'
import { sayNearest } from './nearest.js'
import { placesFrom, type Setting, settingOf } from './setting.js'
import type { Quantity } from './tables/index.js'

/** What a caller may say beside the phrase. */
export interface ConvertOptions {
  /** A year, or a date in EDTF level 1: `1690`, `1690~`, `169X`, `1650/1700`. */
  readonly year?: number | string | null | undefined
  /** A place's id; `england` where none is given. */
  readonly place?: string | undefined
  /** The thing measured, where the phrase does not name it. */
  readonly thing?: string | undefined
  /** A modern unit, or `mass` or `volume`. */
  readonly to?: string | undefined
  /** How much of the probability the band holds; 0.9 where none is given. */
  readonly coverage?: number | undefined
  /** A standard or sense to insist on: `gallon.ale`, `pint.wine`, `ale`. */
  readonly standard?: string | undefined
}

/** Options that have been checked. */
export interface CheckedOptions {
  readonly setting: Setting
  readonly coverage: number
  readonly thing?: string
  readonly unit?: string
  readonly quantity?: Quantity
  readonly standard?: string
}

export const mostPhrase = 1000
const quantities: readonly string[] = ['mass', 'volume'] satisfies Quantity[]

function checkTo(to: unknown): { unit?: string; quantity?: Quantity } {
  if (to === undefined) return {}
  if (typeof to !== 'string') throw badOption('to', 'name a modern unit, such as g, ml or cup-us')
  if (quantities.includes(to)) return { quantity: to as Quantity }
  const unit = findUnit(to)
  if (!unit) throw badOption('to', `"${to.slice(0, 40)}" is not a unit of these tables${sayNearest(to, unitIds())}`)
  return { unit: to, quantity: unit.quantity }
}

/** @throws PottleError `bad-option` for what is no share of a probability */
export function checkCoverage(coverage: unknown): number {
  if (coverage === undefined) return 0.9
  if (typeof coverage === 'number' && coverage >= 0.5 && coverage <= 0.999) return coverage
  throw badOption('coverage', 'give a number from 0.5 to 0.999, such as 0.9')
}

function checkWord(parameter: string, word: unknown): string | undefined {
  if (word === undefined) return undefined
  if (typeof word === 'string' && word.trim() !== '' && word.length <= 100) return word.trim().toLowerCase()
  throw badOption(parameter, 'give a word or two, at most 100 characters')
}

function checkYear(year: unknown): string | number | null {
  if (year === undefined || year === null) return null
  if (typeof year !== 'number' && typeof year !== 'string') throw badOption('year', 'give a number or a date in EDTF')
  settingOf(year)
  return year
}

function checkPlace(place: unknown): string | undefined {
  if (place === undefined) return undefined
  if (typeof place !== 'string') throw badOption('place', 'give the id of a place, such as england or london')
  placesFrom(place)
  return place
}

/** @throws PottleError `bad-option` that names every option that is wrong and what would be right */
export function checkOptions(options: ConvertOptions): CheckedOptions {
  requireFields('options', options)
  const faults = gatherFaults()
  const year = faults.check(() => checkYear(options.year))
  const place = faults.check(() => checkPlace(options.place))
  const coverage = faults.check(() => checkCoverage(options.coverage))
  const to = faults.check(() => checkTo(options.to))
  const thing = faults.check(() => checkWord('thing', options.thing))
  const standard = faults.check(() => checkWord('standard', options.standard))
  faults.settle()
  return { setting: settingOf(year, place), coverage: coverage!, ...to, ...(thing ? { thing } : {}), ...(standard ? { standard } : {}) }
}
