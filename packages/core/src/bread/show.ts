/** A number as a step shows it: four significant digits are more than any of these figures supports. */
export function show(value: number): string {
  return String(Number(value.toPrecision(4)))
}
