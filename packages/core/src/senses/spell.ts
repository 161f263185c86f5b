/**
 * Rows that hold for a span of years, in one place, for some things: which of them speak in a setting, and how loudly.
 *
 * For each moment of the setting the narrowest rows speak: those for the thing that was named before those for things in general, those of
 * the nearest place before those of a wider one. Their likelihoods are shared out within the moment; over the moments they add up.
 */
import type { Step } from '../cite/index.js'
import { toDigits } from '../digits.js'
import { noAnswer, type PottleError } from '../error.js'
import type { Setting } from '../setting.js'
import { type Attested, type Dated, findGood, holds, type Quantity, type Spread } from '../tables/index.js'
import { isCalled } from './id.js'
import type { Question, Sense } from './sense.js'
import { namesOf } from './usage.js'

/** What all such rows have. */
export interface Spell extends Attested, Dated {
  readonly id: string
  readonly label: string
  readonly things?: readonly string[]
  readonly likelihood?: number
}

/** A row and its share of the likelihood; the shares add up to 1. */
export interface Weighed<Row> {
  readonly row: Row
  readonly weight: number
}

/** How wide a row is, the narrowest lowest; undefined where it does not fit at all. */
function widthOf(row: Spell, thing: readonly string[], year: number, places: readonly string[]): number | undefined {
  if (!holds(row, year, places)) return undefined
  const byThing = row.things ? thing.findIndex((name) => row.things!.includes(name)) : thing.length
  const byPlace = row.place ? places.indexOf(row.place) : places.length
  return byThing < 0 ? undefined : byThing * 100 + byPlace
}

function narrowest<Row extends Spell>(
  rows: readonly Row[],
  thing: readonly string[],
  year: number,
  places: readonly string[],
): readonly Row[] {
  const widths = rows.map((row) => widthOf(row, thing, year, places) ?? Number.POSITIVE_INFINITY)
  const least = Math.min(...widths)
  return least === Number.POSITIVE_INFINITY ? [] : rows.filter((_, i) => widths[i] === least)
}

/**
 * The rows that speak in a setting, the likeliest first. Empty where none holds in any of its years.
 *
 * @param thing names and classes of the thing, the narrowest first, as `namesOf` gives them
 */
export function weighSpells<Row extends Spell>(
  rows: readonly Row[],
  setting: Setting,
  thing: readonly string[] = [],
): readonly Weighed<Row>[] {
  const weights = new Map<Row, number>()
  for (const { year, weight } of setting.moments) {
    const speak = narrowest(rows, thing, year, setting.places)
    const loudness = speak.reduce((sum, row) => sum + (row.likelihood ?? 1), 0)
    for (const row of speak) weights.set(row, (weights.get(row) ?? 0) + (weight * (row.likelihood ?? 1)) / loudness)
  }
  const total = [...weights.values()].reduce((sum, weight) => sum + weight, 0)
  return [...weights].map(([row, weight]) => ({ row, weight: weight / total })).sort((a, b) => b.weight - a.weight)
}

/** Names and classes of the thing that a question is about, the narrowest first. */
export function thingOf({ reading }: Question): readonly string[] {
  return namesOf(reading.thing, reading.thing ? findGood(reading.thing, reading.describing) : undefined)
}

/** No row holds in the setting: the error says in which years and places, or of which things, some do. */
export function notThen(what: string, rows: readonly Spell[], { places }: Setting): PottleError {
  const here = rows.filter((row) => !row.place || places.includes(row.place))
  if (here.length === 0)
    return noAnswer('place', `the tables know ${what} only in ${[...new Set(rows.map((row) => row.place))].join(', ')}`)
  if (here.some(({ years }) => !years)) {
    const things = [...new Set(here.flatMap((row) => row.things ?? []))].slice(0, 12)
    return noAnswer('thing', `the tables know ${what} only of ${things.join(', ')}`)
  }
  return noAnswer('year', `the tables know ${what} from ${yearsSaid(here)}`)
}

/**
 * The years that rows speak of, adjoining spans as one.
 *
 * @example yearsSaid([{ years: [1500, 1549] }, { years: [1550, 1599] }, { years: [1700, 1710] }])   // '1500 to 1599 and 1700 to 1710'
 */
export function yearsSaid(rows: readonly Dated[]): string {
  const spans: [number, number][] = []
  for (const [from, to] of rows.flatMap(({ years }) => (years ? [years] : [])).sort((a, b) => a[0] - b[0])) {
    const last = spans.at(-1)
    if (last && from <= last[1] + 1) last[1] = Math.max(last[1], to)
    else spans.push([from, to])
  }
  return spans.map(([from, to]) => `${from} to ${to}`).join(' and ')
}

/**
 * The sense that a caller insists on, by its id or the last part of it; all of them where nothing is insisted on.
 *
 * @throws PottleError `no-answer` where no sense has that name
 */
export function insisted(senses: readonly Sense[], { standard }: Question): readonly Sense[] {
  if (!standard) return senses
  const meant = senses.find(({ id }) => isCalled(id, standard))
  if (!meant) {
    throw noAnswer('standard', `no sense goes by "${standard.slice(0, 40)}" here; there are ${senses.map(({ id }) => id).join(', ')}`)
  }
  return [{ ...meant, likelihood: 1 }]
}

const units: Readonly<Record<Quantity, string>> = {
  mass: ' g',
  volume: ' ml',
  count: '',
  length: ' mm',
  time: ' s',
  temperature: ' degC',
  ratio: '',
}

/** Three digits of what was reckoned, as a step shows it. */
export function tidy({ low, best, high }: Spread): Spread {
  return { low: toDigits(low, 3), best: toDigits(best, 3), high: toDigits(high, 3) }
}

/** `14.8 ml (12 to 20)`, or one number where there is no doubt. */
export function sayFactor({ low, best, high }: Spread, unit: string): string {
  return low === high ? `${best}${unit}` : `${best}${unit} (${low} to ${high})`
}

/** The step that a row contributes. */
export function stepFor(row: Spell, factor: Spread, quantity: Quantity | 'factor'): Step {
  return {
    text: row.note ? `${row.label}. ${row.note}` : row.label,
    factor: sayFactor(factor, quantity === 'factor' ? '' : units[quantity]),
    grade: row.grade,
    checked: row.checked,
    sources: row.source,
  }
}
