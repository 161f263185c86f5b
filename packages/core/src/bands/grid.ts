import type { Distribution, Moments } from './distribution.js'
import { clamp, isPoint, normal, point, TAIL } from './distribution.js'
import { sampleSum } from './lattice.js'
import { affine } from './transform.js'

/** Cells to the half band of the sum (its 5 % to 50 % points): sixteen to a standard deviation. */
const FINENESS = 27
/** Below this many cells to the half band a grid is too coarse: the range is spent on a long tail. */
const COARSEST = 8
/** The most cells that a grid may have. */
const CELLS = 1024
/** How many parts one grid adds up; more are added in groups, so that the range never outgrows the body. */
const GROUP = 4

/**
 * The sum of independent numbers, by convolution (JCGM 101:2008, 5.4.1 and 5.5 leave the numerical method open).
 *
 * Each part's probability is cut into cells of nearly one width by exact differences of its distribution function, the cells are
 * convolved, and the result is moved and stretched by the last fraction of a cell that gives it the mean and the variance that
 * sums of independent numbers must have: the sums of those of the parts.
 */
export function addUp(parts: readonly Distribution[]): Distribution {
  const sure = parts.filter(isPoint).reduce((total, part) => total + part.low, 0)
  const loose = addNormals(parts.filter((part) => !isPoint(part)))
  if (loose.length === 0) return point(sure)
  return affine(loose.length === 1 ? loose[0]! : addInGroups(loose), 1, sure)
}

/** Normals add up to a normal. */
function addNormals(parts: readonly Distribution[]): readonly Distribution[] {
  const normals = parts.filter((part) => part.normal)
  if (normals.length < 2) return parts
  const { mean, variance } = addMoments(normals)
  return [...parts.filter((part) => !part.normal), normal(mean, variance)]
}

function addMoments(parts: readonly Distribution[]): Moments {
  let [mean, variance] = [0, 0]
  for (const part of parts) {
    const moments = part.moments()
    mean += moments.mean
    variance += moments.variance
  }
  return { mean, variance }
}

function addInGroups(parts: readonly Distribution[]): Distribution {
  if (parts.length <= GROUP) return convolve(parts)
  const sums: Distribution[] = []
  for (let i = 0; i < parts.length; i += GROUP) sums.push(addInGroups(parts.slice(i, i + GROUP)))
  return addInGroups(sums)
}

function convolve(parts: readonly Distribution[]): Distribution {
  if (parts.length === 1) return parts[0]!
  const width = parts.reduce((total, part) => total + part.high - part.low, 0)
  const body = Math.hypot(...parts.map(halfBand))
  const step = Math.max(body / FINENESS, width / CELLS)
  if (step > body / COARSEST) return sampleSum(parts)
  const masses = parts.map((part) => cut(part, Math.max(1, Math.round((part.high - part.low) / step))))
  const low = parts.reduce((total, part) => total + part.low, 0)
  return tabulate(masses.reduce(convolveMasses), addMoments(parts), low, low + width)
}

/** The shorter side of the 90 % band. */
function halfBand(d: Distribution): number {
  const middle = d.quantile(0.5)
  return Math.min(middle - d.quantile(0.05), d.quantile(0.95) - middle)
}

/** The probabilities of `cells` equal slices of the range. What lies beyond the ends is counted into the last slices. */
function cut(d: Distribution, cells: number): Float64Array {
  const masses = new Float64Array(cells)
  const step = (d.high - d.low) / cells
  let below = 0
  for (let k = 1; k < cells; k++) {
    const reached = d.cdf(d.low + k * step)
    masses[k - 1] = reached - below
    below = reached
  }
  masses[cells - 1] = 1 - below
  return masses
}

function convolveMasses(one: Float64Array, other: Float64Array): Float64Array {
  const masses = new Float64Array(one.length + other.length - 1)
  for (let i = 0; i < one.length; i++) {
    const mass = one[i]!
    for (let j = 0; j < other.length; j++) masses[i + j]! += mass * other[j]!
  }
  return masses
}

/** A distribution made of equal cells, placed and stretched to the given mean and variance, within hard ends. */
function tabulate(masses: Float64Array, { mean, variance }: Moments, hardLow: number, hardHigh: number): Distribution {
  const reached = new Float64Array(masses.length + 1)
  let [centre, square] = [0, 0]
  for (let k = 0; k < masses.length; k++) {
    reached[k + 1] = reached[k]! + masses[k]!
    centre += masses[k]! * (k + 0.5)
    square += masses[k]! * (k + 0.5) * (k + 0.5)
  }
  // A cell's own width adds 1/12 to the variance (Sheppard).
  const step = Math.sqrt(variance / (square - centre * centre + 1 / 12))
  const start = mean - centre * step
  const quantile = (p: number) => clamp(start + step * find(reached, p), hardLow, hardHigh)
  return {
    low: quantile(TAIL),
    high: quantile(1 - TAIL),
    cdf: (x) => {
      const at = (x - start) / step
      if (at <= 0) return 0
      if (at >= masses.length) return 1
      const k = Math.floor(at)
      return reached[k]! + (at - k) * masses[k]!
    },
    quantile,
    moments: () => ({ mean, variance }),
  }
}

/** Where a rising table reaches `p`, in steps from its start. */
function find(reached: Float64Array, p: number): number {
  let [low, high] = [0, reached.length - 1]
  while (high - low > 1) {
    const middle = (low + high) >> 1
    if (reached[middle]! < p) low = middle
    else high = middle
  }
  const mass = reached[high]! - reached[low]!
  return mass > 0 ? low + clamp((p - reached[low]!) / mass, 0, 1) : high
}
