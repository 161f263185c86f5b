import type { Quantity, Value } from '@pottle/core'

/** A unit that figures are told in: how many of the base unit it is, and its name behind a number. */
export interface Scale {
  readonly size: number
  readonly name: string
  /** Its name behind a one, where that is another. */
  readonly one?: string
  /** Figures are told to the nearest of these. */
  readonly step?: number
  /** Counts are told to the last unit: a great gross is 1,728. */
  readonly whole?: boolean
}

const scales: Readonly<Record<Quantity, readonly (readonly [from: number, scale: Scale])[]>> = {
  mass: [
    [1000, { size: 1000, name: 'kg' }],
    [0, { size: 1, name: 'g' }],
  ],
  volume: [
    [1000, { size: 1000, name: 'litres', one: 'litre' }],
    [0, { size: 1, name: 'ml' }],
  ],
  count: [[0, { size: 1, name: '', whole: true }]],
  length: [
    [10, { size: 10, name: 'cm' }],
    [0, { size: 1, name: 'mm' }],
  ],
  time: [
    [3600, { size: 3600, name: 'hours', one: 'hour' }],
    [60, { size: 60, name: 'minutes', one: 'minute' }],
    [0, { size: 1, name: 'seconds', one: 'second' }],
  ],
  temperature: [[0, { size: 1, name: '°C', step: 5 }]],
  ratio: [[0, { size: 1, name: '' }]],
}

/** The unit that suits a value: litres from a litre on, grams below a kilogram. */
export function scaleFor(quantity: Quantity, best: number): Scale {
  return (scales[quantity].find(([from]) => best >= from) ?? scales[quantity].at(-1)!)[1]
}

/** Three digits and no more: what a band can support and a reader compare. */
export function figure(value: number): string {
  const short = Number(value.toPrecision(3))
  return Math.abs(short) >= 10_000 ? short.toLocaleString('en-GB') : String(short)
}

/** A value in a scale, without its unit. */
export function bare(value: number, { size, step, whole }: Scale): string {
  const own = value / size
  if (whole) return own.toLocaleString('en-GB', { maximumFractionDigits: 1 })
  return figure(step ? Math.round(own / step) * step : own)
}

/** A figure with its unit, kept on one line: `1.89 litres`. */
export function inScale(value: number, scale: Scale): string {
  const text = bare(value, scale)
  const name = text === '1' ? (scale.one ?? scale.name) : scale.name
  return name === '' ? text : `${text}\u00a0${name}`
}

/** A text of the library whose figures keep their per cents and degrees on one line. */
export const unbroken = (text: string): string => text.replace(/(\d) (?=[%°])/g, '$1\u00a0')

/** Both ends: `1.87 to 2.32 litres`; one figure where they are the same. */
export function between({ low, high }: { readonly low: number; readonly high: number }, scale: Scale): string {
  const [from, to] = [bare(low, scale), bare(high, scale)]
  return from === to ? inScale(low, scale) : `${from} to ${inScale(high, scale)}`
}

/** How much of the doubt a band holds, in words. */
export function sayCoverage(coverage: number): string {
  return coverage === 0.9 ? 'nine times in ten' : `${Number((coverage * 100).toFixed(1))} times in 100`
}

/** A likelihood as a person weighs it: `78 in 100`. */
export function sayShare(likelihood: number): string {
  const parts = Math.round(likelihood * 100)
  return parts === 0 ? 'less than 1 in 100' : `${parts} in 100`
}

/** A value's ends in words: `nine times in ten between 1.87 and 2.32 litres`. */
export function sayEnds(value: Value): string {
  const { low, high, coverage } = value
  const scale = scaleFor(value.quantity, value.best)
  if (low === high) return 'exactly so'
  if (bare(low, scale) === bare(high, scale)) return `sure to three figures, ${inScale(value.best, scale)}`
  return `${sayCoverage(coverage)} between ${bare(low, scale)} and ${inScale(high, scale)}`
}

/** The same as a sentence of its own. */
export function sayBand(value: Value): string {
  const ends = sayEnds(value)
  return `${ends[0]!.toUpperCase()}${ends.slice(1)}.`
}
