import { sure } from './choice.js'
import type { Distribution, Moments } from './distribution.js'
import { clamp, isPoint, normal, point } from './distribution.js'
import { overLattice } from './linked.js'
import { tabulated } from './table.js'
import { affine } from './transform.js'

/** Cells to a standard deviation of the sum. */
const FINENESS = 24
/** The most cells that a grid may have. */
const CELLS = 1024
/** A range of more standard deviations than this is spent on a long tail: no cells would be left for the body. */
const LONGEST = 64
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
  const moments = addMoments(parts)
  const deviation = Math.sqrt(moments.variance)
  if (width > LONGEST * deviation) return addOverLattice(parts)
  const step = Math.max(deviation / FINENESS, width / CELLS)
  const masses = parts.map((part) => cut(part, Math.max(1, Math.round((part.high - part.low) / step))))
  const low = parts.reduce((total, part) => total + part.low, 0)
  return place(masses.reduce(convolveMasses), moments, low, low + width)
}

function addOverLattice(parts: readonly Distribution[]): Distribution {
  const variables = parts.map((distribution, rank) => ({ name: '', rank, distribution }))
  return overLattice(sure(variables.map((variable) => ({ coefficient: 1, powers: [{ variable, power: 1 }] }))))
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

/**
 * Cell i of the one with cell j of the other, as if each lay in the middle of its cell. Four rows go at a time, so that a cell of the result
 * is fetched and stored once for four products: this loop is most of what a band costs.
 */
function convolveMasses(one: Float64Array, other: Float64Array): Float64Array {
  const masses = new Float64Array(one.length + other.length + 3)
  for (let i = 0; i < one.length; i += 4) {
    const [a, b, c, d] = [one[i]!, one[i + 1] ?? 0, one[i + 2] ?? 0, one[i + 3] ?? 0]
    let [carryB, carryC, carryD] = [0, 0, 0]
    for (let j = 0; j < other.length; j++) {
      const mass = other[j]!
      masses[i + j]! += a * mass + carryB
      carryB = b * mass + carryC
      carryC = c * mass + carryD
      carryD = d * mass
    }
    masses[i + other.length]! += carryB
    masses[i + other.length + 1]! += carryC
    masses[i + other.length + 2]! += carryD
  }
  return masses.subarray(0, one.length + other.length - 1)
}

/** Equal cells, placed and stretched to the given mean and variance, within hard ends. */
function place(masses: Float64Array, { mean, variance }: Moments, low: number, high: number): Distribution {
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
  return tabulated(
    reached.map((_, k) => clamp(start + k * step, low, high)),
    reached,
    { mean, variance },
  )
}
