import { badOption } from '../error.js'
import type { Distribution } from './distribution.js'
import { isPoint } from './distribution.js'
import type { Expression, Term, Unknown } from './expression.js'
import type { Shape } from './shapes.js'
import { bestOfShape, sameShape } from './shapes.js'
import { distributionOf } from './transform.js'

/** An uncertain number inside the engine: the same object is the same number. */
export interface Variable {
  readonly name: string
  /** Its place in the order in which the variables were met. */
  readonly rank: number
  readonly distribution: Distribution
}

export interface Power {
  readonly variable: Variable
  readonly power: number
}

/** A coefficient times powers of variables, each variable once, in order of rank. */
export interface Monomial {
  readonly coefficient: number
  readonly powers: readonly Power[]
}

/** The variables of one question, one for each id. */
export interface Variables {
  /**
   * The variable of an unknown.
   *
   * @throws PottleError when its id was met before with another shape
   */
  of(unknown: Unknown): Variable
  /** The best of the unknown that a variable stands for. */
  best(variable: Variable): number
  /** A new variable that no one else knows. */
  add(distribution: Distribution): Variable
  /** The distribution of a product of powers, made once. */
  productOf(powers: readonly Power[], make: () => Distribution): Distribution
}

export function variables(): Variables {
  const met = new Map<string, { readonly shape: Shape; readonly variable: Variable }>()
  const bests = new Map<Variable, number>()
  const products = new Map<string, Distribution>()
  let rank = 0
  return {
    of: ({ id, shape }) => {
      const known = met.get(id)
      if (known === undefined) {
        const variable = { name: id, rank: rank++, distribution: distributionOf(shape) }
        met.set(id, { shape, variable })
        bests.set(variable, bestOfShape(shape))
        return variable
      }
      if (sameShape(known.shape, shape)) return known.variable
      throw badOption(id, 'this unknown has two different shapes in one question; give it one shape, or the two of them two ids')
    },
    best: (variable) => bests.get(variable)!,
    add: (distribution) => ({ name: '', rank: rank++, distribution }),
    productOf: (powers, make) => {
      const key = keyOf(powers)
      const product = products.get(key) ?? make()
      products.set(key, product)
      return product
    },
  }
}

/** Multiplies out what is exact, gathers the powers of one variable in a product, and adds terms that differ in their coefficient alone. */
export function simplify(e: Expression, known: Variables): readonly Monomial[] {
  return addLike(e.map((term) => gatherPowers(term, known)))
}

function gatherPowers(term: Term, known: Variables): Monomial {
  const gathered = new Map<Variable, number>()
  for (const { unknown, power } of term.factors) {
    const variable = known.of(unknown)
    gathered.set(variable, (gathered.get(variable) ?? 0) + power)
  }
  let coefficient = term.coefficient
  const powers: Power[] = []
  for (const [variable, power] of gathered) {
    requirePower(variable, power)
    if (isPoint(variable.distribution)) coefficient *= variable.distribution.low ** power
    else if (power !== 0) powers.push({ variable, power })
  }
  return { coefficient, powers: powers.sort((one, other) => one.variable.rank - other.variable.rank) }
}

/** Refuses to divide by what may be 0 and to take roots of what may be below 0. */
function requirePower({ name, distribution }: Variable, power: number): void {
  const mayBeZero = distribution.low <= 0 && distribution.high >= 0
  if (power < 0 && mayBeZero) throw badOption(name, `cannot be raised to ${power}, as it may be 0; give it a range on one side of 0`)
  if (!Number.isInteger(power) && distribution.low < 0) {
    throw badOption(name, `cannot be raised to ${power}, as it may be below 0; give it a range above 0 or a whole power`)
  }
}

/** 2xy + 3xy = 5xy; terms that cancel go. */
export function addLike(monomials: readonly Monomial[]): readonly Monomial[] {
  if (monomials.length < 2) return monomials.filter((m) => m.coefficient !== 0)
  const like = new Map<string, Monomial>()
  for (const monomial of monomials) {
    const key = keyOf(monomial.powers)
    const met = like.get(key)
    like.set(key, met ? { coefficient: met.coefficient + monomial.coefficient, powers: met.powers } : monomial)
  }
  return [...like.values()].filter((m) => m.coefficient !== 0)
}

/** The value with every unknown at its best. */
export function bestOfSum(monomials: readonly Monomial[], known: Variables): number {
  return monomials.reduce((sum, { coefficient, powers }) => {
    return sum + powers.reduce((product, { variable, power }) => product * known.best(variable) ** power, coefficient)
  }, 0)
}

/** The same text for the same product of powers. */
export function keyOf(powers: readonly Power[]): string {
  return powers.map(({ variable, power }) => `${variable.rank}^${power}`).join(' ')
}
