import { badOption } from '../error.js'

/**
 * The shapes an uncertain input may have.
 *
 * - `exact`: known without doubt, as a legal ratio is.
 * - `rectangle`: anywhere between two ends, none likelier than another.
 * - `triangle`: likeliest at `best`, falling in straight lines to nothing at both ends.
 * - `lognormal`: median `best`; nine times in ten between `best / factor` and `best * factor`.
 */
export type Shape =
  | { readonly shape: 'exact'; readonly value: number }
  | { readonly shape: 'rectangle'; readonly low: number; readonly high: number }
  | { readonly shape: 'triangle'; readonly low: number; readonly best: number; readonly high: number }
  | { readonly shape: 'lognormal'; readonly best: number; readonly factor: number }

/**
 * A number without doubt.
 *
 * @throws PottleError when the value is not finite
 * @example exact(231)   // { shape: 'exact', value: 231 }
 */
export function exact(value: number): Shape {
  requireFinite('value', value)
  return { shape: 'exact', value }
}

/**
 * Anywhere between two ends, as JCGM 101:2008, 6.4.2 assigns where nothing else is known. Equal ends are an exact number.
 *
 * @throws PottleError when an end is not finite or the ends are not in rising order
 * @example rectangle(45, 60)   // { shape: 'rectangle', low: 45, high: 60 }
 */
export function rectangle(low: number, high: number): Shape {
  requireRising({ low, high })
  return low === high ? exact(low) : { shape: 'rectangle', low, high }
}

/**
 * Likeliest at `best`, falling in straight lines to both ends; the symmetrical one is that of JCGM 101:2008, 6.4.5.
 *
 * @throws PottleError when a number is not finite or the three are not in rising order
 * @example triangle(0.4, 0.5, 0.6)   // { shape: 'triangle', low: 0.4, best: 0.5, high: 0.6 }
 */
export function triangle(low: number, best: number, high: number): Shape {
  requireRising({ low, best, high })
  return low === high ? exact(best) : { shape: 'triangle', low, best, high }
}

/**
 * Median `best`; nine times in ten between `best / factor` and `best * factor`. A factor of 1 is an exact number.
 *
 * @throws PottleError when `best` is not above 0 or `factor` is below 1
 * @example lognormal(30, 2)   // { shape: 'lognormal', best: 30, factor: 2 }
 */
export function lognormal(best: number, factor: number): Shape {
  requireFinite('best', best)
  requireFinite('factor', factor)
  if (best <= 0) throw badOption('best', `${best} is not above 0, as the median of a log-normal must be`)
  if (factor < 1) throw badOption('factor', `${factor} is below 1; the band runs from best / factor to best * factor`)
  return factor === 1 ? exact(best) : { shape: 'lognormal', best, factor }
}

/**
 * The shape of a table row that states low, best and high: a triangle, or an exact number where all three are equal.
 *
 * @throws PottleError as `triangle` does
 * @example spread({ low: 45, best: 45, high: 45 })   // exact(45)
 */
export function spread(row: { readonly low: number; readonly best: number; readonly high: number }): Shape {
  return triangle(row.low, row.best, row.high)
}

/** The shape as its constructor makes it: ends in order, and exact where it has no width. */
export function requireShape(shape: Shape): Shape {
  switch (shape.shape) {
    case 'exact':
      return exact(shape.value)
    case 'rectangle':
      return rectangle(shape.low, shape.high)
    case 'triangle':
      return triangle(shape.low, shape.best, shape.high)
    case 'lognormal':
      return lognormal(shape.best, shape.factor)
  }
}

/** The value that a shape stands for where one number must do: the middle of a rectangle, the median of a log-normal. */
export function bestOfShape(shape: Shape): number {
  switch (shape.shape) {
    case 'exact':
      return shape.value
    case 'rectangle':
      return shape.low + (shape.high - shape.low) / 2
    default:
      return shape.best
  }
}

/** Whether two shapes state the same, so that one name may carry both. */
export function sameShape(one: Shape, other: Shape): boolean {
  return one === other || (one.shape === other.shape && parametersOf(one).every((value, i) => value === parametersOf(other)[i]))
}

function parametersOf(shape: Shape): readonly number[] {
  switch (shape.shape) {
    case 'exact':
      return [shape.value]
    case 'rectangle':
      return [shape.low, shape.high]
    case 'triangle':
      return [shape.low, shape.best, shape.high]
    case 'lognormal':
      return [shape.best, shape.factor]
  }
}

/** Refuses what is not a number that can be reckoned with. */
export function requireFinite(parameter: string, value: number): void {
  if (!Number.isFinite(value)) throw badOption(parameter, `${value} is not a finite number`)
}

function requireRising(ends: Readonly<Record<string, number>>): void {
  const names = Object.keys(ends)
  for (const name of names) requireFinite(name, ends[name]!)
  const values = Object.values(ends)
  const fall = values.findIndex((value, i) => i > 0 && value < values[i - 1]!)
  if (fall > 0)
    throw badOption(
      names[fall]!,
      `${values[fall]} is below the ${names[fall - 1]} of ${values[fall - 1]}; the order is ${names.join(' <= ')}`,
    )
}
