const values: Readonly<Record<string, number>> = { i: 1, j: 1, v: 5, x: 10, l: 50, c: 100 }

/**
 * A Roman numeral as scribes and printers wrote it: `iiij` as well as `iv`, with a final j, up to 399. Larger ones count years, not eggs.
 *
 * @returns 0 when the letters are no numeral
 * @example romanNumber('xviij')   // 18
 */
export function romanNumber(folded: string): number {
  if (folded.length > 15) return 0
  // Physicians wrote the half (semis) behind the numeral: "iss".
  const whole = folded.length > 2 && folded.endsWith('ss') ? romanNumber(folded.slice(0, -2)) : 0
  if (whole > 0) return whole + 0.5
  let total = 0
  let run = 0
  for (let i = 0; i < folded.length; i++) {
    const value = values[folded[i]!]
    if (value === undefined) return 0
    const next = values[folded[i + 1] ?? ''] ?? 0
    run = value === values[folded[i - 1] ?? ''] ? run + 1 : 1
    if (run > 4 || (run > 1 && value % 2 === 1 && value !== 1)) return 0
    const previous = values[folded[i - 1] ?? ''] ?? 1000
    if (previous < value && (run > 1 || previous * 10 < value || values[folded[i - 2] ?? ''] === previous)) return 0
    total += value < next ? -value : value
  }
  return total
}
