/**
 * Evenly spread points for what no grid can hold: numbers that hang together, or have very long tails.
 *
 * A Korobov lattice (N. M. Korobov, 1959): coordinate j of point i is the fraction of i·aʲ / N, N prime, moved by half a step.
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
  /** The next coordinate, sent through `quantile`: one value for each point. */
  next(quantile: (p: number) => number): Float64Array
}

/** The finest lattice of at most so many points that the number of columns allows. */
export function latticeFor(columns: number, most: number): Lattice {
  const fits = LATTICES.filter(({ points }) => points <= most)
  const { points, multiplier } = fits.find((lattice) => lattice.points * columns <= BUDGET) ?? fits.at(-1)!
  let generator = 1
  return {
    points,
    next: (quantile) => {
      const rising = new Float64Array(points)
      for (let k = 0; k < points; k++) rising[k] = quantile((k + 0.5) / points)
      const column = new Float64Array(points)
      for (let i = 0, k = 0; i < points; i++, k = (k + generator) % points) column[i] = rising[k]!
      generator = (generator * multiplier) % points
      return column
    },
  }
}
