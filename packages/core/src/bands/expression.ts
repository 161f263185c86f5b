import { badOption } from '../error.js'
import type { Shape } from './shapes.js'
import { requireFinite, requireShape } from './shapes.js'

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
 * @throws PottleError when the name is empty or the shape is not one that its constructor would make
 * @example unknown('density.cream', exact(1))   // { id: 'density.cream', shape: { shape: 'exact', value: 1 } }
 */
export function unknown(id: string, shape: Shape): Unknown {
  if (id === '') throw badOption('id', 'an unknown needs a name, for two of the same name are the same unknown')
  return { id, shape: requireShape(shape) }
}

/**
 * A number without doubt, as an expression.
 *
 * @example bandOf(constant(473.176473))   // { low: 473.176, best: 473.176, high: 473.176, coverage: 0.9 }
 */
export function constant(value: number): Expression {
  requireFinite('value', value)
  return [{ coefficient: value, factors: [] }]
}

/**
 * A coefficient times any number of unknowns or their powers.
 *
 * @example bestOf(product(3, unknown('pint', exact(473)), unknown('density', exact(2))))   // 2838
 */
export function product(coefficient: number, ...factors: (Unknown | Factor)[]): Expression {
  requireFinite('coefficient', coefficient)
  return [{ coefficient, factors: factors.map(asFactor) }]
}

/**
 * An unknown raised to a power: `power(density, -1)` divides by the density.
 *
 * @throws PottleError when the power is not finite
 * @example bestOf(product(100, power(unknown('density', rectangle(0.4, 0.6)), -1)))   // 200
 */
export function power(u: Unknown, n: number): Factor {
  requireFinite('power', n)
  return { unknown: u, power: n }
}

/**
 * Adds expressions up. The same unknown met in several of them stays one unknown.
 *
 * @example bestOf(sum(product(3, unknown('pound', exact(454))), product(2, unknown('ounce', exact(28)))))   // 1418
 */
export function sum(...expressions: Expression[]): Expression {
  return expressions.flat()
}

/**
 * An expression times a number, an unknown, a power of one, or another expression (multiplied out term by term).
 *
 * @example bestOf(times(sum(constant(3), product(2, unknown('glass', rectangle(45, 60)))), 0.5))   // 54
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
