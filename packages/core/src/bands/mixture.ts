import type { Distribution, Part } from './distribution.js'

/**
 * How far a probability may be off by rounding alone. Where it falls on the flat stretch between two senses (weights 0.05 and 0.95, the 5 % end),
 * the wider band is taken on every machine.
 */
const SLACK = 1e-12

/** One of several distributions, with weights that add up to 1: F = Σ wᵢ Fᵢ. */
export function mix(mixed: readonly Part[]): Distribution {
  const parts = mixed.flatMap(flatten)
  if (parts.length === 1) return parts[0]!.distribution
  const low = Math.min(...parts.map((part) => part.distribution.low))
  const high = Math.max(...parts.map((part) => part.distribution.high))
  const cdf = (x: number) => parts.reduce((total, part) => total + part.weight * part.distribution.cdf(x), 0)
  return {
    low,
    high,
    cdf,
    parts,
    quantile: (p) => {
      const aim = p < 0.5 ? p - SLACK : p + SLACK
      const ends = parts.map((part) => part.distribution.quantile(p))
      return bisect(cdf, aim, Math.min(...ends), Math.max(...ends))
    },
    moments: () => {
      const moments = parts.map((part) => ({ weight: part.weight, ...part.distribution.moments() }))
      const mean = moments.reduce((total, part) => total + part.weight * part.mean, 0)
      const variance = moments.reduce((total, part) => total + part.weight * (part.variance + (part.mean - mean) ** 2), 0)
      return { mean, variance }
    },
  }
}

/** A function of a mixture is the mixture of that function of its parts. */
export function mixEach(parts: readonly Part[], change: (d: Distribution) => Distribution): Distribution {
  return mix(parts.map(({ weight, distribution }) => ({ weight, distribution: change(distribution) })))
}

function flatten({ weight, distribution }: Part): readonly Part[] {
  if (!distribution.parts) return [{ weight, distribution }]
  return distribution.parts.map((part) => ({ weight: weight * part.weight, distribution: part.distribution }))
}

/** The least number at which a rising function reaches `aim`, known to lie in [low, high], to the last bit of the larger. */
function bisect(rising: (x: number) => number, aim: number, low: number, high: number): number {
  if (rising(low) >= aim) return low
  let [below, reached] = [low, high]
  for (;;) {
    const middle = below + (reached - below) / 2
    if (!(middle > below && middle < reached)) return reached
    if (rising(middle) < aim) below = middle
    else reached = middle
  }
}
