/**
 * Rounding that keeps ratios: the coarsest step of the kitchen's tools that moves a line by no more than a little, so that no two lines
 * part by more than twice that little.
 */
import type { Band } from '../bands/index.js'
import { toDigits } from '../digits.js'

/** How far a line may be moved. Judgement: a fortieth is less than a careful hand strays over a level spoon. */
const usualReach = 1 / 40
/** A line whose own band is wide may be moved further, but by no more than this. Judgement. */
const widestReach = 1 / 20

/** No more digits than the band supports (JCGM 100:2008, 7.2.6): a tenth of its half-width, within the two ends above. */
export function reachOf({ low, best, high }: Band): number {
  const half = best > 0 ? (high - low) / 2 / best : 0
  return Math.min(widestReach, Math.max(usualReach, half / 10))
}

/** Takes off the last-bit noise that multiplying by a decimal step leaves. */
const tidy = (x: number): number => toDigits(x, 12)

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
