import type { Choice } from './choice.js'
import { commonPowers, divide, separate, sure, variablesOf } from './choice.js'
import { cluster } from './cluster.js'
import type { Distribution } from './distribution.js'
import { gatherPrivate } from './gather.js'
import { addUp } from './grid.js'
import { overLattice } from './linked.js'
import { mix } from './mixture.js'
import type { Monomial, Power, Variables } from './terms.js'
import { affine, expOf, hasLogarithm, logOf } from './transform.js'

/**
 * The distribution of a sum of choices, which fall out independently of each other, though their outcomes may share variables.
 *
 * Parts that share no variable are independent and are added up on a grid. A part that hangs together is taken apart further: a common
 * factor goes before the bracket, and what is met in one place alone is gathered into a variable of its own. What then still hangs together
 * is reckoned over a lattice.
 */
export function resolve(choices: readonly Choice[], known: Variables): Distribution {
  const parts = separate(choices)
  if (parts.length === 1) return resolveChoice(parts[0]!, known)
  return addUp(cluster(parts, variablesOf).map((part) => resolveLinked(part, known)))
}

function resolveLinked(choices: readonly Choice[], known: Variables): Distribution {
  if (choices.length === 1) return resolveChoice(choices[0]!, known)
  const common = commonPowers(choices)
  if (common.length > 0) {
    const bracket = known.add(resolve(divide(choices, common), known))
    return multiply({ coefficient: 1, powers: [...common, { variable: bracket, power: 1 }] }, known)
  }
  const gathered = gatherPrivate(choices, (sum) => known.add(resolve(sum, known)))
  return gathered ? resolve(gathered, known) : overLattice(choices)
}

function resolveChoice(choice: Choice, known: Variables): Distribution {
  const [first, ...others] = choice
  if (others.length === 0) return multiply(first!.value[0]!, known)
  return mix(choice.map(({ weight, value }) => ({ weight, distribution: resolve(sure(value), known) })))
}

/** A coefficient times a product of independent variables. */
function multiply({ coefficient, powers }: Monomial, known: Variables): Distribution {
  return affine(
    known.productOf(powers, () => productOf(powers)),
    coefficient,
    0,
  )
}

/** The logarithms of independent factors add up. Where a factor may have either sign, or be 0, the product is reckoned over a lattice. */
function productOf(powers: readonly Power[]): Distribution {
  const [first, ...others] = powers
  if (first && first.power === 1 && others.length === 0) return first.variable.distribution
  let sign = 1
  const logarithms: Distribution[] = []
  for (const { variable, power } of powers) {
    const isNegative = variable.distribution.high <= 0
    const size = isNegative ? affine(variable.distribution, -1, 0) : variable.distribution
    if (!hasLogarithm(size)) return overLattice(sure([{ coefficient: 1, powers }]))
    if (isNegative) sign *= (-1) ** power
    logarithms.push(affine(logOf(size), power, 0))
  }
  return affine(expOf(addUp(logarithms, 1)), sign, 0)
}
