/** The least and the greatest power of ten that a number may have here; those from 0 to 22 are exact as doubles. */
const [least, greatest] = [-9, 22]
const powers = Array.from({ length: greatest - least + 1 }, (_, i) => Number(`1e${i + least}`))
const power = (exponent: number): number => powers[exponent - least]!

/** The power of ten of the first digit: 2 for 473. Kitchen numbers are near 1, so that a few steps find it sooner than a logarithm would. */
function magnitude(size: number): number {
  let exponent = 0
  while (power(exponent + 1) <= size) exponent++
  while (power(exponent) > size) exponent--
  return exponent
}

/** Whether a size is well within the powers above. */
const isUsual = (size: number): boolean => size >= 1e-9 && size < 1e20

/** The largest power of ten that is no larger than a number above zero: 100 for 473. */
export function powerBelow(x: number): number {
  return isUsual(x) ? power(magnitude(x)) : 10 ** Math.floor(Math.log10(x))
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
  if (!isUsual(size)) return Number(x.toPrecision(digits))
  const places = digits - 1 - magnitude(size)
  const shift = power(Math.abs(places))
  return places >= 0 ? Math.round(x * shift) / shift : Math.round(x / shift) * shift
}
