import type { Distribution, Moments } from './distribution.js'
import { clamp } from './distribution.js'
import { countBelow, tabulated } from './table.js'

/** How many slices the distribution function of a smoothed sample is first tabulated in. */
const SLICES = 48
/** A slice is halved again while straight lines through its middle would be off by more than this probability. */
const TOLERANCE = 1e-4
/** How often a slice may be halved. */
const HALVINGS = 10
/** How many slices the distribution function of the pivot is tabulated in, to be looked up half a million times ... */
const QUICK_SLICES = 4096
/** ... if at least so many of them lie outside of the band on either side. */
const QUICK_ENOUGH = 16

/** The distribution of a sample, each of the values as likely as the others (JCGM 101:2008, 7.5 and 7.7). */
export function sampled(values: Float64Array): Distribution {
  const sorted = values.slice().sort()
  const count = sorted.length
  return {
    low: sorted[0]!,
    high: sorted[count - 1]!,
    cdf: (x) => countBelow(sorted, x) / count,
    quantile: (p) => {
      const at = clamp(p * count - 0.5, 0, count - 1)
      const k = Math.min(Math.floor(at), count - 2)
      return sorted[k]! + (at - k) * (sorted[k + 1]! - sorted[k]!)
    },
    moments: () => momentsOf(sorted),
  }
}

/** Numbers of the form offset + slope · X: offset and slope were drawn together, and X is independent of them. */
export interface Conditional {
  readonly offsets: Float64Array
  readonly slopes: Float64Array
  readonly pivot: Distribution
  /** X drawn as well, to see roughly where the numbers lie. */
  readonly draws: Float64Array
}

/**
 * The distribution of offset + slope · X. Its distribution function is the mean of those of the draws, P(offset + slope · X <= z), each
 * of which is exact: that is smooth, and far nearer the truth than counting the draws of X.
 */
export function smoothed({ offsets, slopes, pivot, draws }: Conditional): Distribution {
  const rough = sampled(draws.map((x, i) => offsets[i]! + slopes[i]! * x))
  const [least, most] = reach(offsets, slopes, pivot)
  const meanCdf = meanOfCdfs(offsets, slopes, pivot)
  const inner = Array.from({ length: SLICES - 1 }, (_, k) => rough.quantile(Math.sin(((k + 1) * Math.PI) / (2 * SLICES)) ** 2))
  const edges = [...new Set([...inner, most])]
  const points = [{ z: least, reached: 0 }]
  for (const z of edges) {
    const end = { z, reached: z === most ? 1 : meanCdf(z) }
    points.push(...between(points.at(-1)!, end, meanCdf, HALVINGS), end)
  }
  return tabulated(
    Float64Array.from(points, ({ z }) => z),
    Float64Array.from(points, ({ reached }) => reached),
    momentsAround(offsets, slopes, pivot.moments()),
  )
}

interface Point {
  readonly z: number
  readonly reached: number
}

/** The points that a straight line from start to end would miss. */
function between(start: Point, end: Point, cdf: (z: number) => number, halvings: number): readonly Point[] {
  const z = start.z + (end.z - start.z) / 2
  if (halvings === 0 || end.reached - start.reached < TOLERANCE || z <= start.z || z >= end.z) return []
  const middle = { z, reached: cdf(z) }
  if (Math.abs(middle.reached - (start.reached + end.reached) / 2) < TOLERANCE) return [middle]
  return [...between(start, middle, cdf, halvings - 1), middle, ...between(middle, end, cdf, halvings - 1)]
}

/** The least and the most that any draw can come to. */
function reach(offsets: Float64Array, slopes: Float64Array, { low, high }: Distribution): [number, number] {
  let [least, most] = [Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY]
  for (let i = 0; i < offsets.length; i++) {
    const [one, other] = [offsets[i]! + slopes[i]! * low, offsets[i]! + slopes[i]! * high]
    least = Math.min(least, one, other)
    most = Math.max(most, one, other)
  }
  return [least, most]
}

/** The mean over all draws of the probability that offset + slope · X lies at or below z. */
function meanOfCdfs(offsets: Float64Array, slopes: Float64Array, pivot: Distribution): (z: number) => number {
  const cdf = quickCdf(pivot)
  return (z) => {
    let total = 0
    for (let i = 0; i < offsets.length; i++) {
      const room = z - offsets[i]!
      const slope = slopes[i]!
      if (slope > 0) total += cdf(room / slope)
      else if (slope < 0) total += 1 - cdf(room / slope)
      else if (room >= 0) total += 1
    }
    return total / offsets.length
  }
}

/** The distribution function from a table, unless a long tail would take up nearly all of the table. */
function quickCdf({ low, high, cdf, quantile }: Distribution): (x: number) => number {
  const step = (high - low) / QUICK_SLICES
  const shortest = Math.min(quantile(0.05) - low, high - quantile(0.95))
  if (shortest < QUICK_ENOUGH * step) return cdf
  const table = Float64Array.from({ length: QUICK_SLICES + 1 }, (_, k) => cdf(low + k * step))
  return (x) => {
    const at = (x - low) / step
    if (at <= 0) return 0
    if (at >= QUICK_SLICES) return 1
    const k = Math.floor(at)
    return table[k]! + (at - k) * (table[k + 1]! - table[k]!)
  }
}

/** E[(offset + slope · X)²] = E[(offset + slope · mean)² + slope² · variance]. */
function momentsAround(offsets: Float64Array, slopes: Float64Array, { mean, variance }: Moments): Moments {
  const centres = momentsOf(offsets.map((offset, i) => offset + slopes[i]! * mean))
  const widths = slopes.reduce((total, slope) => total + slope * slope * variance, 0) / slopes.length
  return { mean: centres.mean, variance: centres.variance + widths }
}

function momentsOf(values: Float64Array): Moments {
  const mean = values.reduce((total, x) => total + x, 0) / values.length
  const variance = values.reduce((total, x) => total + (x - mean) * (x - mean), 0) / values.length
  return { mean, variance }
}
