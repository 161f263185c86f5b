import { type Figures, figure } from './figures.js'

/** Where values stand on a ruled line, as parts of its length. */
export interface Scale {
  place(value: number): number
  readonly ticks: readonly { readonly value: number; readonly text: string }[]
}

/** Ends that differ by more than this are spaced by ratio, or the smaller meanings would crowd at the left. */
const widest = 6
const mostTicks = 5
/** The line runs on a little beyond what it shows. */
const margin = 0.06

/** Round values from 1, 2, 2.5 or 5 times a power of ten, as rulers are cut. */
function evenTicks(from: number, to: number): number[] {
  const rough = (to - from) / mostTicks
  const power = 10 ** Math.floor(Math.log10(rough))
  const step = [1, 2, 2.5, 5, 10].map((times) => times * power).find((size) => size >= rough)!
  const first = Math.ceil(from / step)
  const count = Math.floor(to / step) - first + 1
  return Array.from({ length: count }, (_, i) => Number(((first + i) * step).toPrecision(12)))
}

/** One, two and five of each power of ten, thinned until they fit. */
function ratioTicks(from: number, to: number): number[] {
  const powers = Array.from({ length: Math.ceil(Math.log10(to / from)) + 2 }, (_, i) => 10 ** (Math.floor(Math.log10(from)) + i))
  const within = (sizes: readonly number[]): number[] =>
    powers.flatMap((power) => sizes.map((size) => Number((size * power).toPrecision(12)))).filter((value) => value >= from && value <= to)
  return [[1, 2, 5], [1, 3], [1]].map(within).find((ticks) => ticks.length <= mostTicks) ?? within([1])
}

/**
 * A ruled line that holds a band and other values beside it.
 *
 * @example scaleFor({ low: 1.87, best: 1.89, high: 2.32 }, [2.31]).ticks.map(({ text }) => text)   // ['1.9', '2', '2.1', '2.2', '2.3']
 */
export function scaleFor({ low, best, high }: Figures, others: readonly number[]): Scale {
  const shown = [low, best, high, ...others]
  const [least, most] = [Math.min(...shown), Math.max(...shown)]
  const byRatio = least > 0 && most / least > widest
  const along = byRatio ? Math.log : (value: number): number => value
  const length = along(most) - along(least)
  const ticks = byRatio ? ratioTicks(least, most) : evenTicks(least, most)
  return {
    place: (value) => margin + ((1 - 2 * margin) * (along(value) - along(least))) / length,
    ticks: ticks.map((value) => ({ value, text: figure(value, 4) })),
  }
}
