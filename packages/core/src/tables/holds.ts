import type { Dated } from './schema/index.js'

/**
 * Whether a year lies in a span, both ends included. What has no span holds always.
 *
 * @example [1799, 1800, 1824].map((year) => inYears([1800, 1824], year))   // [false, true, true]
 */
export function inYears(years: Dated['years'], year: number): boolean {
  return !years || (years[0] <= year && year <= years[1])
}

/**
 * Whether a row holds in a year and a chain of places (the nearest first).
 *
 * @example holds({ years: [1266, 1824], place: 'england' }, 1690, settingOf(1690, 'london').places)   // true
 */
export function holds({ years, place }: Dated, year: number, places: readonly string[]): boolean {
  return inYears(years, year) && (!place || places.includes(place))
}
