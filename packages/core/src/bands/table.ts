import type { Distribution, Moments } from './distribution.js'
import { TAIL } from './distribution.js'

/**
 * A distribution known at some edges, and in straight lines between them.
 *
 * @param edges rising
 * @param reached the probability of lying below each edge, rising from 0 to 1
 */
export function tabulated(edges: Float64Array, reached: Float64Array, moments: Moments): Distribution {
  const quantile = (p: number) => interpolate(reached, edges, p)
  return {
    low: quantile(TAIL),
    high: quantile(1 - TAIL),
    cdf: (x) => interpolate(edges, reached, x),
    quantile,
    moments: () => moments,
  }
}

/** The value at `x` of the line through the points (from, to). */
function interpolate(from: Float64Array, to: Float64Array, x: number): number {
  const k = countBelow(from, x)
  if (k === 0) return to[0]!
  if (k === from.length) return to[k - 1]!
  const share = (x - from[k - 1]!) / (from[k]! - from[k - 1]!)
  return to[k - 1]! + share * (to[k]! - to[k - 1]!)
}

/** How many of the rising numbers lie below `x`. */
export function countBelow(rising: Float64Array, x: number): number {
  let [low, high] = [0, rising.length]
  while (low < high) {
    const middle = (low + high) >> 1
    if (rising[middle]! < x) low = middle + 1
    else high = middle
  }
  return low
}
