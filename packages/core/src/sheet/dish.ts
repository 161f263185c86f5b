import { badOption, show } from '../error.js'
import { sayNearest } from '../nearest.js'
import { type Citation, type DishRow, dishShapes } from '../tables/index.js'
import { contentOf, type Inside, lined } from './geometry.js'
import { countUpTo, nameIn, numberIn, refuseUnknown, requireObject } from './number.js'

/** A length: a number in the dish's `unit` (mm where none is said), or text with a unit of its own (`9 in`, `23 cm`). */
export type Length = number | string

/** A dish by its shape and its measures inside the rim, or by the name of a common one (`small-tart`). */
export interface Dish {
  readonly id?: string | undefined
  readonly shape?: 'round' | 'square' | 'rectangle' | 'oval' | 'loaf' | 'mould' | undefined
  readonly diameter?: Length | undefined
  readonly side?: Length | undefined
  readonly length?: Length | undefined
  readonly width?: Length | undefined
  readonly depth?: Length | undefined
  /** How much less across it is at the bottom than at the rim; 0 where nothing is said. */
  readonly taper?: Length | undefined
  /** How thick the paste is that lines it; 0 where nothing is said. */
  readonly lining?: Length | undefined
  /** Of a mould: ml to the brim. */
  readonly volume?: number | undefined
  /** The part of its depth that is filled; 0.9 where nothing is said. */
  readonly fill?: number | undefined
  /** How many there are; where none is said, as many as the batch fills, or one to scale by. */
  readonly count?: number | undefined
  readonly unit?: 'mm' | 'cm' | 'in' | undefined
}

/** A dish with everything worked out. */
export interface Vessel {
  readonly id: string | null
  readonly label: string
  readonly plural: string
  readonly count: number | null
  /** ml that go in. */
  readonly volume: number
  /** Who says that a dish of the tables is so large. */
  readonly source: readonly Citation[]
  /** The filling in mm, across at half its height and deep; null for a mould of known volume and unknown form. */
  readonly filling: { readonly base: Inside['base']; readonly length: number; readonly width: number; readonly deep: number } | null
}

/** Room left below the rim, so that a filling can be carried and can rise. Judgement. */
const usualFill = 0.9
/** Nothing smaller can be filled, nothing larger goes into an oven. Judgement. */
const smallest = 10
const largest = 2000
const mostDishes = 1000

const inMm: Readonly<Record<string, number>> = { mm: 1, cm: 10, in: 25.4 }
const lengthForm = /^(\d[\d./ ]{0,12}?) ?(mm|cm|in|inch|inches|")$/

function millimetres(parameter: string, value: unknown, unit: number, least: number): number {
  const [, digits, name] = typeof value === 'string' ? (lengthForm.exec(value.trim().toLowerCase()) ?? []) : []
  const own = name === undefined ? unit : (inMm[name] ?? 25.4)
  const given = numberIn(parameter, digits ?? value, 0, largest, 'or text such as "9 in"') * own
  if (given >= least && given <= largest) return given
  throw badOption(parameter, `${show(value)} is ${Number(given.toPrecision(4))} mm; a dish measures from ${least} to ${largest} mm`)
}

type Side = 'diameter' | 'side' | 'length' | 'width' | 'depth'

const shapes: Readonly<Record<string, { base: Inside['base']; sides: readonly Side[] }>> = {
  round: { base: 'ellipse', sides: ['diameter', 'depth'] },
  square: { base: 'rectangle', sides: ['side', 'depth'] },
  rectangle: { base: 'rectangle', sides: ['length', 'width', 'depth'] },
  oval: { base: 'ellipse', sides: ['length', 'width', 'depth'] },
  loaf: { base: 'rectangle', sides: ['length', 'width', 'depth'] },
  mould: { base: 'ellipse', sides: ['diameter', 'depth'] },
}

const fields = ['id', 'shape', 'diameter', 'side', 'length', 'width', 'depth', 'taper', 'lining', 'volume', 'fill', 'count', 'unit']

function insideOf(dish: Dish, at: string, unit: number): { inside: Inside; lining: number } {
  const { base, sides } = shapes[dish.shape!]!
  const measured = Object.fromEntries(
    sides.map((side) => {
      if (dish[side] === undefined) throw badOption(`${at}.${side}`, `a ${dish.shape} dish needs its ${sides.join(', ')} inside the rim`)
      return [side, millimetres(`${at}.${side}`, dish[side], unit, smallest)]
    }),
  )
  const length = (measured.diameter ?? measured.side ?? measured.length)!
  const width = measured.width ?? length
  const taper = dish.taper === undefined ? 0 : millimetres(`${at}.taper`, dish.taper, unit, 0)
  const lining = dish.lining === undefined ? 0 : millimetres(`${at}.lining`, dish.lining, unit, 0)
  return { inside: { base, length, width, taper, depth: measured.depth! }, lining }
}

function vesselFrom(inside: Inside, lining: number, fill: number, at: string, names: Omit<Vessel, 'volume' | 'filling'>): Vessel {
  const room = lined(inside, lining)
  const least = Math.min(room.length, room.width) - room.taper
  if (least < smallest / 2 || room.depth < smallest / 2)
    throw badOption(at, 'its taper and lining leave no room inside; give a larger dish or a thinner paste')
  const narrower = room.taper * (1 - fill / 2)
  const filling = { base: room.base, length: room.length - narrower, width: room.width - narrower, deep: room.depth * fill }
  return { ...names, volume: contentOf(room, fill), filling }
}

function fromRow(row: DishRow, fill: number, count: number | null, at: string): Vessel {
  const { id, label, plural, length, width = length, depth, taper = 0, lining = 0, source } = row
  const base = row.shape === 'round' || row.shape === 'oval' ? 'ellipse' : 'rectangle'
  return vesselFrom({ base, length, width, depth, taper }, lining, fill, at, { id, label, plural, count, source })
}

function findRow(name: unknown, at: string): DishRow {
  const row = dishShapes.find(({ id, label, names }) => id === name || label === name || names.some((one) => one === name))
  if (row) return row
  const ids = dishShapes.map(({ id }) => id)
  throw badOption(at, `${show(name)} is not a dish of these tables${sayNearest(nameIn(name), ids)}; or give its shape and measures`)
}

const inCm = (mm: number): string => `${Number((mm / 10).toFixed(1))}`

function labelOf(dish: Dish, { length, width, depth }: Inside): string {
  const across =
    dish.shape === 'round' || dish.shape === 'mould' || dish.shape === 'square' ? inCm(length) : `${inCm(length)} by ${inCm(width)}`
  const noun = dish.shape === 'mould' ? 'mould' : dish.shape === 'loaf' ? 'loaf tin' : `${dish.shape} dish`
  return `${noun} of ${across} cm, ${inCm(depth)} cm deep`
}

const pluralOf = (label: string): string =>
  label.replace(/^(mould|loaf tin|\w{1,12} dish)/, (noun) => (noun.endsWith('dish') ? `${noun}es` : `${noun}s`))

function mouldByVolume(dish: Dish, fill: number, count: number | null, at: string): Vessel {
  const volume = numberIn(`${at}.volume`, dish.volume, 1, 100_000, 'ml')
  const label = `mould of ${volume} ml`
  return { id: null, label, plural: pluralOf(label), count, volume: volume * fill, source: [], filling: null }
}

function checkDish(given: unknown, at: string): Vessel {
  if (typeof given === 'string') return fromRow(findRow(given, at), usualFill, null, at)
  requireObject(at, given)
  refuseUnknown(at, given, fields)
  const dish: Dish = given
  const count = dish.count === undefined ? null : countUpTo(`${at}.count`, dish.count, mostDishes)
  const fill = dish.fill === undefined ? usualFill : numberIn(`${at}.fill`, dish.fill, 0.1, 1)
  if (dish.id !== undefined) return fromRow(findRow(dish.id, `${at}.id`), fill, count, at)
  if (typeof dish.shape !== 'string' || !Object.hasOwn(shapes, dish.shape))
    throw badOption(`${at}.shape`, `${show(dish.shape)} is not a shape of dish; there are ${Object.keys(shapes).join(', ')}`)
  if (dish.shape === 'mould' && dish.volume !== undefined) return mouldByVolume(dish, fill, count, at)
  const unit = Object.entries(inMm).find(([name]) => name === (dish.unit ?? 'mm'))?.[1]
  if (unit === undefined) throw badOption(`${at}.unit`, `${show(dish.unit)} is not a unit of length here; there are mm, cm and in`)
  const { inside, lining } = insideOf(dish, at, unit)
  const label = labelOf(dish, inside)
  return vesselFrom(inside, lining, fill, at, { id: null, label, plural: pluralOf(label), count, source: [] })
}

/**
 * A dish, the name of one, or several of them, checked and measured.
 *
 * @throws PottleError `bad-option` that names the field: a shape without its measures, a dish too small to exist
 * @example checkDishes([{ shape: 'round', diameter: '4 in', depth: 25 }], 'plan.dish')[0].volume.toFixed(1)   // '182.4'
 */
export function checkDishes(given: unknown, at: string): readonly Vessel[] {
  if (!Array.isArray(given)) return [checkDish(given, at)]
  if (given.length === 0 || given.length > mostDishes) throw badOption(at, `give from 1 to ${mostDishes} dishes`)
  return given.map((dish, i) => checkDish(dish, `${at}.${i}`))
}

/** The pair of common dishes that a fit is told in where the plan names none: the small and the large. */
export function commonPair(): readonly [Vessel, Vessel] {
  const sized = (size: DishRow['size']): Vessel => fromRow(dishShapes.find((one) => one.size === size)!, usualFill, null, 'dish')
  return [sized('small'), sized('large')]
}
