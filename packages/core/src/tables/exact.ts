import { Decimal } from 'decimal.js'
import type { Quantity } from './schema/index.js'

const Exact = Decimal.clone({ precision: 40 })

/** The units that tables may state exact values in, each in the base unit of its quantity. */
const units: Readonly<Record<string, { readonly quantity: Quantity; readonly base: Decimal }>> = {
  in3: { quantity: 'volume', base: new Exact('16.387064') }, // 25.4 mm cubed: International Yard and Pound Agreement 1959
  ml: { quantity: 'volume', base: new Exact(1) },
  gr: { quantity: 'mass', base: new Exact('0.06479891') }, // the same Agreement: 7000 grains are 0.45359237 kg
  g: { quantity: 'mass', base: new Exact(1) },
  lb: { quantity: 'mass', base: new Exact('453.59237') }, // the same Agreement
  mm: { quantity: 'length', base: new Exact(1) },
  in: { quantity: 'length', base: new Exact('25.4') }, // the same Agreement
  s: { quantity: 'time', base: new Exact(1) },
  ratio: { quantity: 'ratio', base: new Exact(1) },
  each: { quantity: 'count', base: new Exact(1) },
}

/** An exact value in the base unit of its quantity: ml, g, mm, s, each. */
export interface ExactValue {
  readonly quantity: Quantity
  readonly value: Decimal
}

/**
 * Reads a ratio as the tables write it: an integer, a decimal, or a fraction of two of them. The quotient is taken once, to forty digits.
 *
 * @throws RangeError where the text is none of these
 * @example exactRatio('1/8').toString()   // '0.125'
 */
export function exactRatio(text: string): Decimal {
  const parts = text.split('/')
  if (parts.length > 2 || parts.some((part) => !/^\d{1,30}(\.\d{1,30})?$/.test(part))) throw new RangeError(`not a ratio: ${text}`)
  const [over, under = '1'] = parts
  return new Exact(over!).div(under)
}

/**
 * Reads an exact value as the tables write it.
 *
 * @throws RangeError for an unknown unit or a malformed number
 * @example exactValue('231 in3').value.toString()   // '3785.411784'
 */
export function exactValue(text: string): ExactValue {
  const [ratio, name] = text.split(' ')
  const unit = units[name ?? '']
  if (!ratio || !unit) throw new RangeError(`not a value with a unit: ${text}`)
  return { quantity: unit.quantity, value: exactRatio(ratio).times(unit.base) }
}

/**
 * An exact number, made ready to be multiplied by many.
 *
 * Two integers whose product has no more than fifteen digits multiply exactly as doubles, and a double over a power of ten prints those digits: so
 * most products need no decimals of arbitrary length.
 *
 * @example new ExactNumber('1892.705892').times(1.5)   // '2839.058838'
 */
export class ExactNumber {
  readonly #text: string
  readonly #digits: number
  #ratio: Decimal | undefined
  /** How many of the last digit make one; an exact double. */
  readonly #parts: number

  /** @param text a ratio as `exactRatio` reads it */
  constructor(text: string) {
    const point = text.indexOf('.')
    const places = point < 0 ? 0 : text.length - point - 1
    this.#text = text
    this.#digits = places <= 15 ? Number(text.replace('.', '')) : Number.NaN
    this.#parts = Number(`1e${places}`)
  }

  /** The product as text, to fifteen digits. */
  times(by: number): string {
    const parts = Number.isInteger(by) ? 1 : 1000
    const count = Math.round(by * parts)
    const product = this.#digits * count
    const isExact = Number.isInteger(product) && product < 1e15 && count / parts === by
    if (isExact) return String(product / (this.#parts * parts))
    this.#ratio ??= exactRatio(this.#text)
    return this.#ratio.times(by).toSignificantDigits(15).toString()
  }
}
