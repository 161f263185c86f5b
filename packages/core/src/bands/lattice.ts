import type { Distribution } from './distribution.js'
import { clamp } from './distribution.js'

/**
 * Evenly spread points for what no grid can hold: numbers that hang together, or have very long tails.
 *
 * A Korobov lattice (N. M. Korobov, 1959): coordinate j of point i is the fraction of i·aʲ / N, N prime, moved by half a step.
 * Each coordinate alone takes each of the N equal slices of [0, 1] once. The multipliers were chosen among all of their N as those whose
 * worst pair of coordinates (up to forty apart) is among the sixty best, and then whose first ten have the least P₂ (the mean of
 * ∏(1 + γⱼπ²B₂(xⱼ)) - 1, γⱼ = 1/j).
 */
const LATTICES = [
  { points: 8191, multiplier: 2383 },
  { points: 4093, multiplier: 1716 },
  { points: 2039, multiplier: 310 },
] as const

/** About the number of values that may be computed: ten milliseconds' worth. */
const BUDGET = 1_000_000

/** Draws one coordinate after another for the same points. */
export interface Lattice {
  readonly points: number
  /** The next coordinate, sent through `quantile`: one value for each point. */
  next(quantile: (p: number) => number): Float64Array
}

/** A lattice as fine as the number of columns allows. */
export function latticeFor(columns: number): Lattice {
  const { points, multiplier } = LATTICES.find((lattice) => lattice.points * columns <= BUDGET) ?? LATTICES[2]
  let generator = 1
  return {
    points,
    next: (quantile) => {
      const sorted = Float64Array.from({ length: points }, (_, k) => quantile((k + 0.5) / points))
      const column = new Float64Array(points)
      for (let i = 0, k = 0; i < points; i++, k = (k + generator) % points) column[i] = sorted[k]!
      generator = (generator * multiplier) % points
      return column
    },
  }
}

/** The sum of independent numbers over a lattice. */
export function sampleSum(parts: readonly Distribution[]): Distribution {
  const lattice = latticeFor(parts.length)
  const total = new Float64Array(lattice.points)
  for (const part of parts) {
    const column = lattice.next(part.quantile)
    for (let i = 0; i < total.length; i++) total[i]! += column[i]!
  }
  return sampled(total)
}

/** The distribution of a sample, each of the values as likely as the others (JCGM 101:2008, 7.5 and 7.7). */
export function sampled(values: Float64Array): Distribution {
  const sorted = values.sort()
  const count = sorted.length
  return {
    low: sorted[0]!,
    high: sorted[count - 1]!,
    cdf: (x) => countAtMost(sorted, x) / count,
    quantile: (p) => {
      const at = clamp(p * count - 0.5, 0, count - 1)
      const k = Math.min(Math.floor(at), count - 2)
      return sorted[k]! + (at - k) * (sorted[k + 1]! - sorted[k]!)
    },
    moments: () => {
      const mean = sorted.reduce((total, x) => total + x, 0) / count
      const variance = sorted.reduce((total, x) => total + (x - mean) * (x - mean), 0) / count
      return { mean, variance }
    },
  }
}

function countAtMost(sorted: Float64Array, x: number): number {
  let [low, high] = [0, sorted.length]
  while (low < high) {
    const middle = (low + high) >> 1
    if (sorted[middle]! <= x) low = middle + 1
    else high = middle
  }
  return low
}
