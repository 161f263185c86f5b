import { badOption, show } from '../error.js'
import type { Faults } from '../faults.js'
import { sayNearest } from '../nearest.js'
import { findGood, findMeasure, measures, standards, words } from '../tables/index.js'
import { numberIn, refuseUnknown, requireObject } from './number.js'

/** What something comes to: grams or millilitres, one of the two. */
export interface Size {
  readonly g?: number | undefined
  readonly ml?: number | undefined
}

/** One line by its number: the standard its measure goes by, or what the whole of it comes to. */
export interface LineFix extends Size {
  readonly standard?: string | undefined
}

/** Choices that the user takes out of the tables' hands. */
export interface Fixed {
  /** The standard or sense that a measure, or a whole family of them, goes by: `{ pint: 'wine' }`, `{ gallon: 'gallon.ale' }`. */
  readonly standards?: Readonly<Record<string, string>> | undefined
  /** What one of a measure comes to: `{ 'penny loaf': { g: 300 }, spoonful: { ml: 15 } }`; of `egg`, an egg of the receipt in its shell. */
  readonly sizes?: Readonly<Record<string, Size>> | undefined
  /** Lines by their numbers from 1; they rule over what is said of measures in general. */
  readonly lines?: Readonly<Record<string, LineFix>> | undefined
  /** What one of the cook's own eggs weighs in its shell, in g. */
  readonly egg?: number | undefined
  /** g/ml by the name of the thing. */
  readonly densities?: Readonly<Record<string, number>> | undefined
  /** What the oven is set to, in degC, without a fan. */
  readonly oven?: number | undefined
}

/** A size that was checked. */
export interface CheckedSize {
  readonly quantity: 'mass' | 'volume'
  readonly value: number
}

/** Fixes that were checked; `at` names each for errors and for the sheet. */
export interface CheckedFixed {
  readonly standards: ReadonlyMap<string, string>
  readonly sizes: ReadonlyMap<string, CheckedSize>
  readonly lines: ReadonlyMap<number, { readonly standard?: string; readonly size?: CheckedSize }>
  readonly densities: ReadonlyMap<string, number>
  readonly egg: number | null
  readonly oven: number | null
}

const fields = ['standards', 'sizes', 'lines', 'egg', 'densities', 'oven']
const families = new Set(standards.map(({ family }) => family))
const measureWords = new Set(words.map(({ label }) => label))
const mostLines = 1_000_000

function checkSize(at: string, given: Readonly<Record<string, unknown>>): CheckedSize {
  if (given.g !== undefined && given.ml !== undefined) throw badOption(at, `${at}.g and ${at}.ml contradict each other; give one of them`)
  if (given.ml !== undefined) return { quantity: 'volume', value: numberIn(`${at}.ml`, given.ml, 0.001, 1e7, 'ml') }
  if (given.g === undefined) throw badOption(at, 'give g or ml')
  return { quantity: 'mass', value: numberIn(`${at}.g`, given.g, 0.001, 1e7, 'g') }
}

/** Measures of law and custom, and names that only the room of words knows: `spoonful`, `penny loaf`. */
function requireMeasure(at: string, name: string): void {
  if (families.has(name) || measureWords.has(name) || findMeasure(name) || name === 'egg' || / loaf$| roll$|^manchet$/.test(name)) return
  const ids = measures.map(({ id }) => id)
  throw badOption(at, `${show(name)} is not a measure of these tables${sayNearest(name, ids)}`)
}

function checkStandard(at: string, value: unknown): string {
  if (typeof value === 'string' && value.trim() !== '' && value.length <= 100) return value.trim().toLowerCase()
  throw badOption(at, `${show(value)} won't do; name a standard or sense, such as wine or gallon.ale`)
}

function checkLine(at: string, given: unknown): { standard?: string; size?: CheckedSize } {
  requireObject(at, given)
  refuseUnknown(at, given, ['standard', 'g', 'ml'])
  const sized = given.g !== undefined || given.ml !== undefined
  if (given.standard === undefined && !sized) throw badOption(at, 'give g, ml or a standard')
  if (given.standard !== undefined && sized)
    throw badOption(at, `${at}.standard and ${at}.${given.g !== undefined ? 'g' : 'ml'} contradict each other; give one of them`)
  return given.standard === undefined ? { size: checkSize(at, given) } : { standard: checkStandard(`${at}.standard`, given.standard) }
}

function checkDensity(at: string, name: string, value: unknown): readonly [string, number] {
  return [findGood(name)?.id ?? name, numberIn(at, value, 0.02, 20, 'g/ml')]
}

/** Runs one check for each entry of a record and keeps what passes. */
function entriesOf<Key, Value>(
  faults: Faults,
  at: string,
  given: unknown,
  check: (at: string, name: string, value: unknown) => readonly [Key, Value],
): Map<Key, Value> {
  if (given === undefined) return new Map()
  requireObject(at, given)
  const checked = Object.entries(given).map(([name, value]) => faults.check(() => check(`${at}.${name}`, name.toLowerCase(), value)))
  return new Map(checked.filter((entry) => entry !== undefined))
}

function refuseBoth(at: string, standardsFixed: ReadonlyMap<string, string>, sizes: ReadonlyMap<string, CheckedSize>): void {
  const both = [...sizes.keys()].find((name) => standardsFixed.has(name))
  if (both !== undefined)
    throw badOption(`${at}.sizes.${both}`, `${at}.standards.${both} and ${at}.sizes.${both} contradict each other; give one of them`)
}

/** @throws PottleError `bad-option` that names the fix, or both of two that contradict each other */
export function checkFixed(faults: Faults, given: unknown, at: string): CheckedFixed {
  requireObject(at, given)
  refuseUnknown(at, given, fields)
  const standardsFixed = entriesOf(faults, `${at}.standards`, given.standards, (where, name, value) => {
    requireMeasure(where, name)
    return [name, checkStandard(where, value)]
  })
  const sizes = entriesOf(faults, `${at}.sizes`, given.sizes, (where, name, value) => {
    requireMeasure(where, name)
    requireObject(where, value)
    refuseUnknown(where, value, ['g', 'ml'])
    return [name, checkSize(where, value)]
  })
  refuseBoth(at, standardsFixed, sizes)
  return {
    standards: standardsFixed,
    sizes,
    lines: entriesOf(faults, `${at}.lines`, given.lines, (where, name, value) => [
      numberIn(where, name, 1, mostLines, 'that a line has'),
      checkLine(where, value),
    ]),
    densities: entriesOf(faults, `${at}.densities`, given.densities, checkDensity),
    egg: given.egg === undefined ? null : numberIn(`${at}.egg`, given.egg, 5, 250, 'g'),
    oven: given.oven === undefined ? null : numberIn(`${at}.oven`, given.oven, 40, 350, 'degC'),
  }
}
