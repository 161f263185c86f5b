import { NINE_IN_TEN, normalCdf, normalQuantile } from './normal.js'

/** The mean of a distribution and the square of its standard deviation. */
export interface Moments {
  readonly mean: number
  readonly variance: number
}

/** One distribution among several, and how likely it is to be the one. */
export interface Part {
  readonly weight: number
  readonly distribution: Distribution
}

/** Everything the engine asks of an uncertain number, however it came about: a shape, a sum, a product, a mixture, a sample. */
export interface Distribution {
  /** The ends of the range: hard where it has hard ends, else where a tail of `TAIL` begins. */
  readonly low: number
  readonly high: number
  /** The probability of lying at or below `x`. */
  cdf(x: number): number
  /** The value with probability `p` below it, for 0 < p < 1. */
  quantile(p: number): number
  moments(): Moments
  /** Set on normal distributions, which add up in closed form. */
  readonly normal?: true
  /** The distribution of the logarithm, where that is known in closed form. */
  readonly logarithm?: Distribution
  /** What a mixture is made of. */
  readonly parts?: readonly Part[]
}

/** The probability beyond each end of a range that has no end: 4.26 standard deviations of a normal. */
export const TAIL = 1e-5

/** A number without doubt. */
export function point(value: number): Distribution {
  return {
    low: value,
    high: value,
    cdf: (x) => (x < value ? 0 : 1),
    quantile: () => value,
    moments: () => ({ mean: value, variance: 0 }),
  }
}

export function isPoint(d: Distribution): boolean {
  return d.low === d.high
}

/** JCGM 101:2008, 6.4.2: mean (a + b)/2, variance (b - a)²/12. */
export function uniform(low: number, high: number): Distribution {
  const width = high - low
  return {
    low,
    high,
    cdf: (x) => clamp((x - low) / width, 0, 1),
    quantile: (p) => low + p * width,
    moments: () => ({ mean: low + width / 2, variance: (width * width) / 12 }),
  }
}

/** JCGM 101:2008, 6.4.5, with the peak at any place: the distribution function is a parabola on either side of it. */
export function triangular(low: number, best: number, high: number): Distribution {
  const [width, rise, fall] = [high - low, best - low, high - best]
  return {
    low,
    high,
    cdf: (x) => {
      if (x <= low) return 0
      if (x >= high) return 1
      return x < best ? ((x - low) * (x - low)) / (width * rise) : 1 - ((high - x) * (high - x)) / (width * fall)
    },
    quantile: (p) => (p * width < rise ? low + Math.sqrt(p * width * rise) : high - Math.sqrt((1 - p) * width * fall)),
    moments: () => ({ mean: low + (width + rise) / 3, variance: (width * width - rise * fall) / 18 }),
  }
}

/** JCGM 101:2008, 6.4.7. */
export function normal(mean: number, variance: number): Distribution {
  const deviation = Math.sqrt(variance)
  const reach = -normalQuantile(TAIL) * deviation
  return {
    low: mean - reach,
    high: mean + reach,
    cdf: (x) => normalCdf((x - mean) / deviation),
    quantile: (p) => mean + deviation * normalQuantile(p),
    moments: () => ({ mean, variance }),
    normal: true,
  }
}

/** The logarithm of a log-normal: normal, with the factor at the 95 % point. */
export function logOfLognormal(best: number, factor: number): Distribution {
  return normal(Math.log(best), (Math.log(factor) / NINE_IN_TEN) ** 2)
}

export function clamp(x: number, low: number, high: number): number {
  return Math.min(Math.max(x, low), high)
}

/** Makes a thing when it is first asked for, and once. */
export function lazily<Thing>(make: () => Thing): () => Thing {
  let made: Thing | undefined
  return () => {
    made ??= make()
    return made
  }
}
