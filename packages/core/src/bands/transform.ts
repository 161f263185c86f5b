import type { Distribution, Moments } from './distribution.js'
import { isPoint, lazily, logOfLognormal, normal, point, TAIL, triangular, uniform } from './distribution.js'
import { mixEach } from './mixture.js'
import type { Shape } from './shapes.js'

/** The distribution of a shape. */
export function distributionOf(shape: Shape): Distribution {
  switch (shape.shape) {
    case 'exact':
      return point(shape.value)
    case 'rectangle':
      return uniform(shape.low, shape.high)
    case 'triangle':
      return triangular(shape.low, shape.best, shape.high)
    case 'lognormal':
      return expOf(logOfLognormal(shape.best, shape.factor))
  }
}

/** scale · X + shift. */
export function affine(d: Distribution, scale: number, shift: number): Distribution {
  if (scale === 1 && shift === 0) return d
  if (scale === 0 || isPoint(d)) return point(scale * d.low + shift)
  if (d.parts) return mixEach(d.parts, (part) => affine(part, scale, shift))
  const moments = () => {
    const { mean, variance } = d.moments()
    return { mean: scale * mean + shift, variance: scale * scale * variance }
  }
  if (d.normal) {
    const { mean, variance } = moments()
    return normal(mean, variance)
  }
  const [low, high] = scale > 0 ? [d.low, d.high] : [d.high, d.low]
  return {
    low: scale * low + shift,
    high: scale * high + shift,
    cdf: scale > 0 ? (x) => d.cdf((x - shift) / scale) : (x) => 1 - d.cdf((x - shift) / scale),
    quantile: scale > 0 ? (p) => scale * d.quantile(p) + shift : (p) => scale * d.quantile(1 - p) + shift,
    moments,
  }
}

/** e to the power of X. */
export function expOf(d: Distribution): Distribution {
  if (isPoint(d)) return point(Math.exp(d.low))
  if (d.parts) return mixEach(d.parts, expOf)
  return {
    low: Math.exp(d.low),
    high: Math.exp(d.high),
    cdf: (x) => (x > 0 ? d.cdf(Math.log(x)) : 0),
    quantile: (p) => Math.exp(d.quantile(p)),
    moments: lazily(() => momentsAlong(d.low, d.high, d.cdf, Math.exp, Math.exp)),
    logarithm: d,
  }
}

/** Whether X has a logarithm: it is never below 0, and 0 itself has no weight. */
export function hasLogarithm(d: Distribution): boolean {
  return d.parts ? d.parts.every((part) => hasLogarithm(part.distribution)) : d.low >= 0 && d.quantile(TAIL) > 0
}

/** The natural logarithm of X, where it has one. */
export function logOf(d: Distribution): Distribution {
  if (d.logarithm) return d.logarithm
  if (isPoint(d)) return point(Math.log(d.low))
  if (d.parts) return mixEach(d.parts, logOf)
  const low = Math.log(d.low > 0 ? d.low : d.quantile(TAIL))
  const high = Math.log(d.high)
  const cdf = (t: number) => d.cdf(Math.exp(t))
  return {
    low,
    high,
    cdf,
    quantile: (p) => Math.log(d.quantile(p)),
    moments: lazily(() => momentsAlong(low, high, cdf, (t) => t, one)),
  }
}

/** X to the power n: for an X that has a logarithm, or n = 1. */
export function powerOf(d: Distribution, n: number): Distribution {
  return n === 1 ? d : expOf(affine(logOf(d), n, 0))
}

const one = () => 1

const INTERVALS = 32

/**
 * The moments of g(T) from the distribution function F of T on [a, b]. With h(c) = 0 at the middle c, integration by parts gives
 * E[h(T)] = ∫ h'(t) (1 - F(t)) dt over [c, b] - ∫ h'(t) F(t) dt over [a, c], by Simpson's rule, for h = u and h = u² where u = g - g(c).
 */
function momentsAlong(a: number, b: number, cdf: (t: number) => number, g: (t: number) => number, slope: (t: number) => number): Moments {
  const step = (b - a) / INTERVALS
  const middle = INTERVALS / 2
  const origin = g(a + middle * step)
  let [first, second] = [0, 0]
  for (let k = 1; k < INTERVALS; k++) {
    const t = a + k * step
    const reached = cdf(t)
    const height = (k < middle ? 0 : k > middle ? 1 : 0.5) - reached
    const area = (k % 2 === 0 ? 2 : 4) * height * slope(t)
    first += area
    second += 2 * area * (g(t) - origin)
  }
  const mean = (first * step) / 3
  return { mean: origin + mean, variance: Math.max(0, (second * step) / 3 - mean * mean) }
}
