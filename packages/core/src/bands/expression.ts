import type { Shape } from './shapes.js'

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
