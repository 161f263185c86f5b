import type { Distribution, Moments } from './distribution.js'
import { clamp } from './distribution.js'
import { countBelow, tabulated } from './table.js'

/** How many slices the distribution function of a smoothed sample is tabulated in. */
const SLICES = 128
/** How many slices that of the pivot is tabulated in, to be looked up half a million times. */
const PIVOT_SLICES = 4096

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
  const inner = Array.from({ length: SLICES - 1 }, (_, k) => rough.quantile(Math.sin(((k + 1) * Math.PI) / (2 * SLICES)) ** 2))
  const edges = Float64Array.from(new Set([least, ...inner, most]))
  const meanCdf = meanOfCdfs(offsets, slopes, pivot)
  const reached = edges.map(meanCdf)
  reached[0] = 0
  reached[reached.length - 1] = 1
  return tabulated(edges, reached, momentsAround(offsets, slopes, pivot.moments()))
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
  const width = pivot.high - pivot.low
  const table = new Float64Array(PIVOT_SLICES + 1).fill(1)
  for (let k = 0; k < PIVOT_SLICES; k++) table[k] = pivot.cdf(pivot.low + (k * width) / PIVOT_SLICES)
  const cdf = (x: number) => {
    const at = ((x - pivot.low) / width) * PIVOT_SLICES
    if (at <= 0) return 0
    if (at >= PIVOT_SLICES) return 1
    const k = Math.floor(at)
    return table[k]! + (at - k) * (table[k + 1]! - table[k]!)
  }
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
