/** The senses of a line as the tables have them, or as the user fixed them. */
import { assess, goodNamed } from '../assess.js'
import { constant, type Expression, exact, type Unknown, unknown } from '../bands/index.js'
import { badOption, PottleError } from '../error.js'
import type { Reading } from '../reading/index.js'
import { goodIn, lastPart, type Sense } from '../senses/index.js'
import type { Setting } from '../setting.js'
import { findMeasure, type GoodRow } from '../tables/index.js'
import type { CheckedFixed, CheckedSize } from './fixed.js'

/** What all lines of a sheet share. */
export interface Workshop {
  readonly setting: Setting
  readonly fixed: CheckedFixed
}

/** Something that was found out, and the names of the fixes that ruled over it. */
export interface Ruled<Value> {
  readonly value: Value
  readonly fixes: readonly string[]
}

const unruled = <Value>(value: Value): Ruled<Value> => ({ value, fixes: [] })

/** A loaf that was bought by its price or by its flour is bread, whatever word the receipt has for it. */
const isLoaf = ({ kind, thing }: Reading): boolean => kind === 'priced' && (thing === 'loaf' || thing === 'roll' || thing === 'manchet')

/** The thing, with the density that the user fixed for it. */
export function goodFor(reading: Reading, { fixed, setting }: Workshop): Ruled<GoodRow | undefined> {
  const thing = isLoaf(reading) ? 'bread' : (reading.thing ?? (reading.eggs ? 'egg' : null))
  const named = goodNamed({ ...reading, thing })
  const good = named && goodIn(named, setting)
  const name = [good?.id, thing].find((one) => one && fixed.densities.has(one))
  if (!name) return unruled(good)
  const value = fixed.densities.get(name)!
  const density = { low: value, best: value, high: value }
  const row: GoodRow = good ?? { id: name, label: name, names: [], classes: [], source: [], grade: 'practice', checked: 'none' }
  return { value: { ...row, density }, fixes: [`densities.${name}`] }
}

/** A sense that the user gave as a figure. */
function sizedSense({ quantity, value }: CheckedSize, whole: boolean): Sense {
  const label = `fixed at ${value} ${quantity === 'mass' ? 'g' : 'ml'}`
  return { id: 'fixed', label, likelihood: 1, quantity, value: constant(value), exact: String(value), steps: [], whole }
}

/** A thing that is counted, and whose piece the tables can't weigh: its number alone. */
const byNumber: Sense = { id: 'count', label: 'so many of it', likelihood: 1, quantity: 'count', value: constant(1), exact: '1', steps: [] }

function unfixed(reading: Reading, { setting }: Workshop): readonly Sense[] {
  try {
    return assess(reading, setting).senses
  } catch (error) {
    if (error instanceof PottleError && reading.kind === 'counted' && reading.measure === 'none' && reading.amount) return [byNumber]
    throw error
  }
}

function insistOn(reading: Reading, { setting }: Workshop, at: string, wish: string): Ruled<readonly Sense[]> {
  try {
    return { value: assess(reading, setting, { standard: wish }).senses, fixes: [at] }
  } catch (error) {
    const wrong = error instanceof PottleError ? error.faults.find(({ parameter }) => parameter === 'standard') : undefined
    throw wrong ? badOption(`plan.fixed.${at}`, wrong.detail) : error
  }
}

const contradiction = (one: string, other: string, over: string): PottleError =>
  badOption(`plan.fixed.${one}`, `plan.fixed.${one} and plan.fixed.${other} contradict each other over a ${over}; give one of them`)

/** The one standard that the user fixed for a line: by the name of its measure, or by the family of its standards. */
function standardFixed({ measure }: Reading, senses: readonly Sense[], { fixed }: Workshop): string | undefined {
  const names = [...new Set([measure, senses[0]?.choice])].filter((name): name is string => !!name && fixed.standards.has(name))
  const [first, second] = names
  if (first !== undefined && second !== undefined && lastPart(fixed.standards.get(first)!) !== lastPart(fixed.standards.get(second)!))
    throw contradiction(`standards.${first}`, `standards.${second}`, measure!)
  return first
}

const isPeriodEgg = ({ id }: Unknown): boolean => id.startsWith('egg:hen:')

/** The egg of the receipt, fixed by the user, wherever a sense rests on its weight. */
function pinEggs(senses: readonly Sense[], { fixed }: Workshop): Ruled<readonly Sense[]> {
  const size = fixed.sizes.get('egg')
  const rests = senses.some(({ value }) => value.some(({ factors }) => factors.some((factor) => isPeriodEgg(factor.unknown))))
  if (!size || !rests) return unruled(senses)
  if (size.quantity !== 'mass') throw badOption('plan.fixed.sizes.egg', 'an egg is fixed by its weight in the shell; give g')
  const pinned = unknown('egg:fixed', exact(size.value))
  const pin = (value: Expression): Expression =>
    value.map((term) => ({ ...term, factors: term.factors.map((one) => (isPeriodEgg(one.unknown) ? { ...one, unknown: pinned } : one)) }))
  const label = `an egg of ${size.value} g in the shell, as fixed`
  const [likeliest] = senses
  return { value: [{ ...likeliest!, id: 'fixed', label, likelihood: 1, value: pin(likeliest!.value) }], fixes: ['sizes.egg'] }
}

function sizeFixed(reading: Reading, shop: Workshop): Ruled<readonly Sense[]> | undefined {
  const { measure } = reading
  const size = measure && measure !== 'egg' ? shop.fixed.sizes.get(measure) : undefined
  if (!measure || !size) return undefined
  const family = findMeasure(measure) ? unfixed(reading, shop)[0]?.choice : undefined
  if (family && shop.fixed.standards.has(family)) throw contradiction(`sizes.${measure}`, `standards.${family}`, measure)
  return { value: [sizedSense(size, false)], fixes: [`sizes.${measure}`] }
}

/** Whether the user fixed this very line. */
export const isFixed = (number: number, { fixed }: Workshop): boolean => fixed.lines.has(number)

/**
 * The senses of one reading, the likeliest first: what is said of its line rules over what is said of its measure.
 *
 * @throws PottleError `bad-option` for a fix that can't be had or contradicts another; else as `assess`
 */
export function sensesFor(reading: Reading, number: number, shop: Workshop): Ruled<readonly Sense[]> {
  const line = shop.fixed.lines.get(number)
  if (line?.size) return { value: [sizedSense(line.size, true)], fixes: [`lines.${number}`] }
  if (line?.standard) return insistOn(reading, shop, `lines.${number}`, line.standard)
  const sized = sizeFixed(reading, shop)
  if (sized) return sized
  const senses = unfixed(reading, shop)
  const standard = standardFixed(reading, senses, shop)
  if (standard !== undefined) return insistOn(reading, shop, `standards.${standard}`, shop.fixed.standards.get(standard)!)
  return pinEggs(senses, shop)
}
