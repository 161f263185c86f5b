import { toDigits } from '../digits.js'
import { type Attributes, drawLabel, drawLine } from '../drawing/index.js'
import { assizeRegimes } from '../tables/index.js'
import type { Scale, Tick, WeightScale } from './scale.js'
import type { LoafYearWeight } from './series.js'

/** The sheet and the ruled field in it, in the units of the drawing. */
export const plate = { width: 960, height: 572, left: 92, right: 876, head: 124, foot: 452 }
/** Every shade is dark or light enough to be told apart in grey. */
export const ink = { paper: '#fbf8f0', line: '#2b2a26', faint: '#d8d0bd', margin: '#9a4a3c', band: '#c9bd9b', quiet: '#5f5a4e' }
export const gramsPerOunce = 28.349523125 // 437.5 grains: International Yard and Pound Agreement 1959

export const grams = (value: number): string => `${toDigits(value, 3)} g`

export const line = (x1: number, y1: number, x2: number, y2: number, stroke: string, more: Attributes = {}): string =>
  drawLine(x1, y1, x2, y2, { stroke, ...more })

export const text = (x: number, y: number, words: string, anchor: 'start' | 'middle' | 'end', more: Attributes = {}): string =>
  drawLabel(x, y, words, { 'text-anchor': anchor, ...more })

/** A series with the scales that it is drawn on. */
export interface Paper {
  readonly series: readonly LoafYearWeight[]
  readonly years: Scale
  readonly weights: WeightScale
  readonly ounces: readonly Tick[]
}

/** The look of what is said aside. */
export const quiet: Attributes = { 'font-size': 14, fill: ink.quiet }

/** The lightest and the heaviest loaf of a series, by the best estimate. */
export function extremes(series: readonly LoafYearWeight[]): { light: LoafYearWeight; heavy: LoafYearWeight } {
  return {
    light: series.reduce((least, row) => (row.best < least.best ? row : least)),
    heavy: series.reduce((most, row) => (row.best > most.best ? row : most)),
  }
}

/** The years after the first in which the law of bread changed for the whole country. */
export function changesIn(series: readonly LoafYearWeight[]): number[] {
  const [first, last] = [series[0]!.year, series.at(-1)!.year]
  return assizeRegimes.flatMap(({ years, place }) => (years && !place && years[0] > first && years[0] <= last ? [years[0]] : []))
}
