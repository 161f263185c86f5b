import { sure } from './choice.js'
import type { Distribution, Moments } from './distribution.js'
import { clamp, isPoint, normal, point } from './distribution.js'
import { overLattice } from './linked.js'
import { mix } from './mixture.js'
import { tabulated } from './table.js'
import { affine } from './transform.js'

/** Cells to a standard deviation of the sum: fine enough if a cell is also less than a hundredth of the sum. */
const FINENESS = 24
const FINE = 0.01
/** Else cells to a probability of 0.02 at the 5 % and 95 % points: nearly the same for a normal number, more where an edge is steep. */
const EDGE_FINENESS = 4
/** The most cells that a grid may have, and the most probability, in steps of 0.02, that a cell may then hold there. */
const CELLS = 1024
const CROWD = 4
/** Up to so many cases of a sum of mixtures are added up one by one; beyond, each mixture goes on the grid as a whole. */
const CASES = 64
/** How many parts one grid adds up; more are added in groups, so that the range never outgrows the body. */
const GROUP = 4

/**
 * The sum of independent numbers, by convolution (JCGM 101:2008, 5.4.1 and 5.5 leave the numerical method open).
 *
 * Each part's probability is cut into cells of nearly one width by exact differences of its distribution function, the cells are
 * convolved, and the result is moved and stretched by the last fraction of a cell that gives it the mean and the variance that
 * sums of independent numbers must have: the sums of those of the parts.
 *
 * @param size what errors are measured by: 1 for logarithms, whose errors are relative, and else the least that the sum may be
 */
export function addUp(parts: readonly Distribution[], size: number = leastSize(parts)): Distribution {
  const cases = parts.reduce((count, part) => count * (part.parts?.length ?? 1), 1)
  if (cases > 1 && cases <= CASES) return addCaseByCase(parts, size)
  const sure = parts.filter(isPoint).reduce((total, part) => total + part.low, 0)
  const loose = addNormals(parts.filter((part) => !isPoint(part)))
  return affine(addInGroups(loose, size), 1, sure)
}

function leastSize(parts: readonly Distribution[]): number {
  const low = parts.reduce((total, part) => total + part.low, 0)
  const high = parts.reduce((total, part) => total + part.high, 0)
  return Math.max(0, low, -high)
}

/** A sum of mixtures is the mixture of the sums of their parts: so sums of exact meanings come out exactly. */
function addCaseByCase(parts: readonly Distribution[], size: number): Distribution {
  let cases: { weight: number; terms: readonly Distribution[] }[] = [{ weight: 1, terms: [] }]
  for (const part of parts) {
    const outcomes = part.parts ?? [{ weight: 1, distribution: part }]
    cases = cases.flatMap((met) =>
      outcomes.map(({ weight, distribution }) => ({ weight: met.weight * weight, terms: [...met.terms, distribution] })),
    )
  }
  return mix(cases.map(({ weight, terms }) => ({ weight, distribution: addUp(terms, size) })))
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

function addInGroups(parts: readonly Distribution[], size: number): Distribution {
  if (parts.length <= GROUP) return convolve(parts, size)
  const sums: Distribution[] = []
  for (let i = 0; i < parts.length; i += GROUP) sums.push(addInGroups(parts.slice(i, i + GROUP), (size * GROUP) / parts.length))
  return addInGroups(sums, size)
}

function convolve(parts: readonly Distribution[], size: number): Distribution {
  if (parts.length === 0) return point(0)
  if (parts.length === 1) return parts[0]!
  const moments = addMoments(parts)
  const low = parts.reduce((total, part) => total + part.low, 0)
  const width = parts.reduce((total, part) => total + part.high - part.low, 0)
  let step = Math.sqrt(moments.variance) / FINENESS
  if (step > FINE * size) {
    const space = spaceAtEnds(parts)
    step = Math.max(Math.min(step, space / EDGE_FINENESS), width / CELLS)
    if (step > CROWD * space) return addOverLattice(parts)
  }
  const masses = parts.map((part) => cut(part, Math.max(1, Math.round((part.high - part.low) / step))))
  return place(masses.reduce(convolveMasses), moments, low, low + width)
}

/** Roughly how far apart lie the points of probability 0.04 and 0.06 of the sum, or 0.94 and 0.96 where these are nearer. */
function spaceAtEnds(parts: readonly Distribution[]): number {
  const spaceAt = (p: number) => Math.hypot(...parts.map(({ quantile }) => quantile(p + 0.01) - quantile(p - 0.01)))
  return Math.min(spaceAt(0.05), spaceAt(0.95))
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
  let [sum, centre, square] = [0, 0, 0]
  for (let k = 0; k < masses.length; k++) {
    const mass = masses[k]!
    sum += mass
    reached[k + 1] = sum
    centre += mass * (k + 0.5)
    square += mass * (k + 0.5) * (k + 0.5)
  }
  // A cell's own width adds 1/12 to the variance (Sheppard).
  const step = Math.sqrt(variance / (square - centre * centre + 1 / 12))
  const start = mean - centre * step
  const edges = new Float64Array(reached.length)
  for (let k = 0; k < edges.length; k++) edges[k] = clamp(start + k * step, low, high)
  return tabulated(edges, reached, { mean, variance })
}
