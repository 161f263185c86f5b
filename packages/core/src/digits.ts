/** Powers of ten that a double holds exactly, by their exponent. */
const powers = Array.from({ length: 23 }, (_, exponent) => Number(`1e${exponent}`))

/** The power of ten of the first digit: 2 for 473. Corrected, since a logarithm may fall on the wrong side of a power by its last bit. */
function magnitude(size: number): number {
  const guess = Math.floor(Math.log10(size))
  if (10 ** guess > size) return guess - 1
  return 10 ** (guess + 1) <= size ? guess + 1 : guess
}

/**
 * A number to so many significant digits. By arithmetic, which is exact here: an integer over a power of ten is the nearest double to that
 * decimal, and ten times as fast as by way of text.
 *
 * @param digits 1 to 12
 * @example toDigits(1892.705892, 6)   // 1892.71
 */
export function toDigits(x: number, digits: number): number {
  const size = Math.abs(x)
  // Outside of these, the powers of ten below are no longer exact.
  if (!(size >= 1e-9 && size < 1e20)) return Number(x.toPrecision(digits))
  const places = digits - 1 - magnitude(size)
  const power = powers[Math.abs(places)]!
  return places >= 0 ? Math.round(x * power) / power : Math.round(x / power) * power
}
