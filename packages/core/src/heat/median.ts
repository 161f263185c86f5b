/** The middle of a list, or half-way between its two middles. The list must not be empty. */
export function median(values: readonly number[]): number {
  const sorted = [...values].sort((a, b) => a - b)
  const half = sorted.length / 2
  return (sorted[Math.ceil(half) - 1]! + sorted[Math.floor(half)]!) / 2
}
