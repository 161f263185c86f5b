import { readEdtf, type YearSpan } from './edtf.js'
import { badOption, requireWord } from './error.js'
import { Memory } from './memory.js'
import { sayNearest } from './nearest.js'
import { places } from './tables/index.js'

/** A year and how much of the doubt about the date falls on it. */
export interface Moment {
  readonly year: number
  readonly weight: number
}

/** When and where words were used. */
export interface Setting {
  /** The year as the caller wrote it, in EDTF level 1: `1690`, `1690~`, `169X`, `1650/1700`; null where no year was given. */
  readonly year: string | null
  /** First and last year that the words may belong to. */
  readonly from: number
  readonly to: number
  /** At most forty years that stand for the span; their weights add up to 1. One year gives one moment. */
  readonly moments: readonly Moment[]
  /** A place, and the wider places that it lies in, the nearest first: `['london', 'england', 'britain']`. */
  readonly places: readonly string[]
}

/** The tables begin with the Assize of Bread and Ale (51 Hen. III, 1266) and end with the last wheat price, of 1914. */
const firstYear = 1266
const lastYear = 1914

/** How far an *about* reaches to either side, in years: a printed book's usual distance from its author's practice. Judgement. */
const hedge = 10
const mostMoments = 40

/** Every year of a short span; forty evenly spaced years of a long one. */
function yearsIn(from: number, to: number): number[] {
  const length = to - from + 1
  if (length <= mostMoments) return Array.from({ length }, (_, i) => from + i)
  return Array.from({ length: mostMoments }, (_, i) => Math.floor(from + (length * (i + 0.5)) / mostMoments))
}

function momentsOf({ from, to, hedged }: YearSpan): Moment[] {
  const years = yearsIn(from, to)
  const middle = (from + to) / 2
  const reach = (to - from) / 2 + 1
  // A hedged date falls off to both sides of what was written; a plain interval does not.
  const weights = years.map((year) => (hedged ? reach - Math.abs(year - middle) : 1))
  const total = weights.reduce((sum, weight) => sum + weight, 0)
  return years.map((year, i) => ({ year, weight: weights[i]! / total }))
}

function spanOf(year: string | number | null): YearSpan {
  if (year === null) return { from: firstYear, to: 1900, hedged: false }
  const span = readEdtf(String(year))
  if (span.to < firstYear || span.from > lastYear) {
    throw badOption('year', `${String(year)} lies outside the tables, which cover ${firstYear} to ${lastYear}`)
  }
  const reach = span.hedged ? hedge : 0
  return { from: Math.max(firstYear, span.from - reach), to: Math.min(lastYear, span.to + reach), hedged: span.hedged }
}

const within = new Map(places.map((place) => [place.id, place.within]))

/**
 * A place and the wider places it lies in, the nearest first.
 *
 * @throws PottleError `bad-option` for an unknown place, with the nearest names
 * @example placesFrom('london')   // ['london', 'england', 'britain']
 */
export function placesFrom(place: string): readonly string[] {
  if (!within.has(requireWord('place', place))) {
    throw badOption('place', `"${place.slice(0, 40)}" is not a place of these tables${sayNearest(place, [...within.keys()])}`)
  }
  const chain: string[] = []
  for (let at: string | undefined = place; at; at = within.get(at)) chain.push(at)
  return chain
}

const remembered = new Memory<string, Setting>(2500)

/**
 * A setting out of what a caller gives: a year in EDTF level 1 or a number, and a place's id; England where no place is given.
 *
 * @throws PottleError `bad-option` for a year outside 1266 to 1914, a malformed year or an unknown place
 * @example settingOf('1690', 'london').places   // ['london', 'england', 'britain']
 */
export function settingOf(year: string | number | null = null, place = 'england'): Setting {
  if (year !== null && typeof year !== 'number') requireWord('year', year)
  const key = `${year}|${requireWord('place', place)}`
  const known = remembered.get(key)
  if (known) return known
  const span = spanOf(year)
  return remembered.set(key, {
    year: year === null ? null : String(year),
    from: span.from,
    to: span.to,
    moments: momentsOf(span),
    places: placesFrom(place),
  })
}

/** A date as one year, for questions that take one; and what to say where it left several open. */
export interface OneYear {
  readonly year: number | null
  readonly notes: readonly string[]
}

/**
 * The one year that stands for a date: the year itself, or the middle of what the date leaves open.
 *
 * @throws PottleError `bad-option` for what is no date
 * @example oneYear('1690/1700').year   // 1695
 */
export function oneYear(date: string | undefined): OneYear {
  if (date === undefined) return { year: null, notes: [] }
  // Of some questions the tables reach beyond those of measures: oven heats are read of any year.
  if (/^\d{4}$/.test(requireWord('year', date))) return { year: Number(date), notes: [] }
  const { from, to } = settingOf(date)
  const year = Math.floor((from + to) / 2)
  return { year, notes: from === to ? [] : [`The words are taken as those of ${year}, the middle of ${date}.`] }
}
