import { badOption } from '../error.js'
import type { Shape } from './shapes.js'
import { requireFinite } from './shapes.js'

/** An uncertain input with a name. Two unknowns of the same id are the same unknown: they rise and fall together. */
export interface Unknown {
  readonly id: string
  readonly shape: Shape
}

/** One unknown raised to a power: 1 multiplies, -1 divides, 2 squares. */
export interface Factor {
  readonly unknown: Unknown
  readonly power: number
}

/** A coefficient times a product of factors. */
export interface Term {
  readonly coefficient: number
  readonly factors: readonly Factor[]
}

/** A sum of terms. `[{coefficient: 3, factors: []}]` is the number three. */
export type Expression = readonly Term[]

/**
 * Gives a name to an uncertain input. The name is its identity: use one name for one thing (*the density of this flour*), wherever it is met.
 *
 * @throws PottleError when the name is empty
 * @example const density = unknown('density.cream', triangle(0.97, 1, 1.01))
 */
export function unknown(id: string, shape: Shape): Unknown {
  if (id === '') throw badOption('id', 'an unknown needs a name, for two of the same name are the same unknown')
  return { id, shape }
}

/**
 * A number without doubt, as an expression.
 *
 * @example constant(473.176473)
 */
export function constant(value: number): Expression {
  requireFinite('value', value)
  return [{ coefficient: value, factors: [] }]
}

/**
 * A coefficient times any number of unknowns or their powers.
 *
 * @example product(2, pint, power(density, -1))
 */
export function product(coefficient: number, ...factors: (Unknown | Factor)[]): Expression {
  requireFinite('coefficient', coefficient)
  return [{ coefficient, factors: factors.map(asFactor) }]
}

/**
 * An unknown raised to a power: `power(density, -1)` divides by the density.
 *
 * @throws PottleError when the power is not finite
 * @example product(100, power(density, -1))   // 100 g of it, in ml
 */
export function power(u: Unknown, n: number): Factor {
  requireFinite('power', n)
  return { unknown: u, power: n }
}

/**
 * Adds expressions up. The same unknown met in several of them stays one unknown.
 *
 * @example sum(product(3, pound), product(2, ounce))   // 3 lb 2 oz
 */
export function sum(...expressions: Expression[]): Expression {
  return expressions.flat()
}

/**
 * An expression times a number, an unknown, a power of one, or another expression (multiplied out term by term).
 *
 * @example times(sum(product(3, pound), product(2, ounce)), 0.5)
 */
export function times(e: Expression, by: number | Unknown | Factor | Expression): Expression {
  const other = isExpression(by) ? by : typeof by === 'number' ? constant(by) : product(1, by)
  return e.flatMap((one) =>
    other.map((two) => ({ coefficient: one.coefficient * two.coefficient, factors: [...one.factors, ...two.factors] })),
  )
}

function isExpression(by: number | Unknown | Factor | Expression): by is Expression {
  return Array.isArray(by)
}

function asFactor(item: Unknown | Factor): Factor {
  return 'unknown' in item ? item : { unknown: item, power: 1 }
}
