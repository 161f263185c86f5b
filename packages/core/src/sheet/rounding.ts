/**
 * Rounding that keeps ratios: the coarsest step of the kitchen's tools that moves a line by no more than a little, so that no two lines
 * part by more than twice that little.
 */
import type { Band } from '../bands/index.js'

/** How far a line may be moved. Judgement: a fortieth is less than a careful hand strays over a level spoon. */
const usualReach = 1 / 40
/** A line whose own band is wide may be moved further, but by no more than this. Judgement. */
const widestReach = 1 / 20

/** No more digits than the band supports (JCGM 100:2008, 7.2.6): a tenth of its half-width, within the two ends above. */
export function reachOf({ low, best, high }: Band): number {
  const half = best > 0 ? (high - low) / 2 / best : 0
  return Math.min(widestReach, Math.max(usualReach, half / 10))
}

const tidy = (x: number): number => Number(x.toPrecision(12))

/**
 * A value on the coarsest of the steps that moves it by no more than `reach` of itself; on the finest, and never to nothing, where none does.
 *
 * @param steps from coarse to fine
 * @example roundWithin(226.8, [100, 50, 25, 10, 5, 1], 0.025)   // 225
 */
export function roundWithin(value: number, steps: readonly number[], reach: number): number {
  for (const step of steps) {
    const rounded = tidy(Math.round(value / step) * step)
    if (rounded > 0 && Math.abs(rounded / value - 1) <= reach) return rounded
  }
  const finest = steps.at(-1)!
  return tidy(Math.max(1, Math.round(value / finest)) * finest)
}

const vulgar: readonly (readonly [number, string])[] = [
  [1 / 8, '⅛'],
  [1 / 4, '¼'],
  [1 / 3, '⅓'],
  [3 / 8, '⅜'],
  [1 / 2, '½'],
  [5 / 8, '⅝'],
  [2 / 3, '⅔'],
  [3 / 4, '¾'],
  [7 / 8, '⅞'],
]

/** A number as a kitchen writes it: `2¼`, `⅓`, `1.8`. */
export function inFractions(value: number): string {
  const whole = Math.floor(value + 1e-9)
  const rest = value - whole
  if (rest < 1e-6) return String(whole)
  const fraction = vulgar.find(([part]) => Math.abs(rest - part) < 1e-6)
  return fraction ? `${whole === 0 ? '' : whole}${fraction[1]}` : String(tidy(value))
}
