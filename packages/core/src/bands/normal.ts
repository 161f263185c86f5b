/**
 * The normal distribution by rational functions that are good to about fifteen digits, and need nothing but exp, log and sqrt.
 *
 * The distribution function: J. F. Hart and others, *Computer Approximations* (1968), formula 5666, in the form of G. West,
 * "Better approximations to cumulative normal functions", *Wilmott* (2005). The quantile: M. J. Wichura, "Algorithm AS 241",
 * *Applied Statistics* 37 (1988), 477-484, routine PPND16. Coefficients run from the constant upwards.
 */

/** The 95 % point: a log-normal's factor reaches this many standard deviations to either side (NIST/SEMATECH e-Handbook 1.3.6.7.1). */
export const NINE_IN_TEN = 1.6448536269514722

/**
 * The factor of a log-normal from the standard deviation of its logarithm.
 *
 * @example factorOf(0.1)   // 1.178…
 */
export function factorOf(deviation: number): number {
  return Math.exp(NINE_IN_TEN * deviation)
}

const HART_ABOVE = [
  220.206867912376, 221.213596169931, 112.079291497871, 33.912866078383, 6.37396220353165, 0.700383064443688, 0.0352624965998911,
]
const HART_BELOW = [
  440.413735824752, 793.826512519948, 637.333633378831, 296.564248779674, 86.7807322029461, 16.064177579207, 1.75566716318264,
  0.0883883476483184,
]

const MIDDLE_ABOVE = [
  3.3871328727963665, 133.14166789178438, 1971.5909503065513, 13731.69376550946, 45921.95393154987, 67265.7709270087, 33430.57558358813,
  2509.0809287301227,
]
const MIDDLE_BELOW = [
  1, 42.31333070160091, 687.1870074920579, 5394.196021424751, 21213.794301586597, 39307.89580009271, 28729.085735721943, 5226.495278852854,
]
const FLANK_ABOVE = [
  1.4234371107496835, 4.630337846156546, 5.769497221460691, 3.6478483247632045, 1.2704582524523684, 0.2417807251774506,
  0.022723844989269184, 0.0007745450142783414,
]
const FLANK_BELOW = [
  1, 2.053191626637759, 1.6763848301838038, 0.6897673349851, 0.14810397642748008, 0.015198666563616457, 0.0005475938084995345,
  1.0507500716444169e-9,
]
const FAR_ABOVE = [
  6.657904643501103, 5.463784911164114, 1.7848265399172913, 0.2965605718285049, 0.026532189526576124, 0.0012426609473880784,
  2.7115555687434876e-5, 2.0103343992922881e-7,
]
const FAR_BELOW = [
  1, 0.599832206555888, 0.1369298809227358, 0.014875361290850615, 0.0007868691311456133, 1.8463183175100548e-5, 1.421511758316446e-7,
  2.0442631033899397e-15,
]

/** The probability that a standard normal number lies below `z`. */
export function normalCdf(z: number): number {
  const far = Math.abs(z)
  if (far > 7) return z > 0 ? 1 : 0
  const beyond = (Math.exp((-far * far) / 2) * polynomial(HART_ABOVE, far)) / polynomial(HART_BELOW, far)
  return z > 0 ? 1 - beyond : beyond
}

/** The number that a standard normal one lies below with probability `p`, for 0 < p < 1. */
export function normalQuantile(p: number): number {
  const fromMiddle = p - 0.5
  if (Math.abs(fromMiddle) <= 0.425) {
    const r = 0.180625 - fromMiddle * fromMiddle
    return (fromMiddle * polynomial(MIDDLE_ABOVE, r)) / polynomial(MIDDLE_BELOW, r)
  }
  const r = Math.sqrt(-Math.log(Math.min(p, 1 - p)))
  const far = r <= 5 ? ratio(FLANK_ABOVE, FLANK_BELOW, r - 1.6) : ratio(FAR_ABOVE, FAR_BELOW, r - 5)
  return fromMiddle < 0 ? -far : far
}

function ratio(above: readonly number[], below: readonly number[], x: number): number {
  return polynomial(above, x) / polynomial(below, x)
}

/** Horner's rule. */
function polynomial(coefficients: readonly number[], x: number): number {
  let value = 0
  for (let i = coefficients.length - 1; i >= 0; i--) value = value * x + coefficients[i]!
  return value
}
