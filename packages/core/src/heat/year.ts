import { badOption, show } from '../error.js'

/**
 * The year that words belong to; null where none is given.
 *
 * @throws PottleError `bad-option` unless it is a whole number from 1000 to 2100
 */
export function readYear(year: number | undefined): number | null {
  if (year === undefined) return null
  if (!Number.isInteger(year) || year < 1000 || year > 2100) throw badOption('year', `${show(year)} is not a year from 1000 to 2100`)
  return year
}
