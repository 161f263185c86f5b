/**
 * Evenly spread points for what no grid can hold: numbers that hang together, or have very long tails.
 *
 * A Korobov lattice (N. M. Korobov, 1959): coordinate j of point i is the fraction of i·aʲ / N, N prime.
 * Each coordinate alone takes each of the N equal slices of [0, 1] once. The multipliers a were chosen from all below N / 2: those whose
 * worst pair of coordinates (up to forty apart) is among the sixty best, and of these one with nearly the least P₂ in ten dimensions
 * (the mean of ∏(1 + π²B₂(xⱼ)/j) - 1) whose powers come round last.
 */
const LATTICES = [
  { points: 8191, multiplier: 2383 },
  { points: 4093, multiplier: 1716 },
  { points: 2039, multiplier: 310 },
] as const

/** The most values that are drawn: about ten milliseconds' worth. */
const BUDGET = 1_000_000

/** Points in the unit cube, one coordinate after another. */
export interface Lattice {
  readonly points: number
  /** The next coordinate, folded and sent through a quantile function. */
  next(quantile: (p: number) => number): Float64Array
  /** The next coordinate as it is: neighbours along it are well spread over the others, so that it may be cut up among cases. */
  nextPlain(): Float64Array
}

/** The finest lattice of at most so many points that the number of columns allows. */
export function latticeFor(columns: number, most: number): Lattice {
  const fits = LATTICES.filter(({ points }) => points <= most)
  const { points, multiplier } = fits.find((lattice) => lattice.points * columns <= BUDGET) ?? fits.at(-1)!
  let generator = 1
  const nextOf = (inSlice: (k: number) => number): Float64Array => {
    const values = new Float64Array(points)
    for (let k = 0; k < points; k++) values[k] = inSlice(k)
    const column = new Float64Array(points)
    for (let i = 0, k = 0; i < points; i++, k = (k + generator) % points) column[i] = values[k]!
    generator = (generator * multiplier) % points
    return column
  }
  return {
    points,
    next: (quantile) => nextOf((k) => quantile((fold(k, points) + 0.5) / points)),
    nextPlain: () => nextOf((k) => (k + 0.5) / points),
  }
}

/**
 * The baker's fold x -> 1 - |1 - 2x|, which makes the two ends of a coordinate meet and so lets a lattice integrate what is smooth but not
 * periodic (F. J. Hickernell, 2002). The points are moved by a quarter of a step first: then the fold is one to one.
 */
function fold(slice: number, points: number): number {
  return 2 * slice < points ? 2 * slice : 2 * (points - slice) - 1
}
