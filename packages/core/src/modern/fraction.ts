import { toDigits } from '../digits.js'

const signs: readonly (readonly [number, string])[] = [
  [1 / 8, '⅛'],
  [1 / 4, '¼'],
  [1 / 3, '⅓'],
  [3 / 8, '⅜'],
  [1 / 2, '½'],
  [5 / 8, '⅝'],
  [2 / 3, '⅔'],
  [3 / 4, '¾'],
  [7 / 8, '⅞'],
]

/**
 * A number as a kitchen writes it, in halves, quarters, eighths and thirds where it comes out even.
 *
 * @example [2.25, 1 / 3, 1.8].map(inFractions)   // ['2¼', '⅓', '1.8']
 */
export function inFractions(value: number): string {
  const whole = Math.floor(value + 1e-9)
  const rest = value - whole
  if (rest < 1e-6) return String(whole)
  const sign = signs.find(([part]) => Math.abs(rest - part) < 1e-6)?.[1]
  return sign ? `${whole === 0 ? '' : whole}${sign}` : String(toDigits(value, 12))
}
