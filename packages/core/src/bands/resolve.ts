import type { Choice } from './choice.js'
import { commonPowers, divide, separate, sure, variablesOf } from './choice.js'
import { cluster } from './cluster.js'
import type { Distribution } from './distribution.js'
import { gatherPrivate } from './gather.js'
import { addUp } from './grid.js'
import { overLattice } from './linked.js'
import { mix } from './mixture.js'
import type { Monomial, Power, Variables } from './terms.js'
import { affine, expOf, logOf } from './transform.js'

/**
 * The distribution of a sum of choices, which fall out independently of each other, though their outcomes may share variables.
 *
 * Parts that share no variable are independent and are added up on a grid. A part that hangs together is taken apart further: a common
 * factor goes before the bracket, and what is met in one place alone is gathered into a variable of its own. What then still hangs together
 * is reckoned over a lattice.
 */
export function resolve(choices: readonly Choice[], known: Variables): Distribution {
  return addUp(cluster(separate(choices), variablesOf).map((part) => resolveLinked(part, known)))
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

/** The logarithms of independent factors add up. Where a factor may have either sign the product is reckoned over a lattice. */
function productOf(powers: readonly Power[]): Distribution {
  const [first, ...others] = powers
  if (first && first.power === 1 && others.length === 0) return first.variable.distribution
  if (powers.some(({ variable: { distribution } }) => distribution.low < 0 && distribution.high > 0)) {
    return overLattice(sure([{ coefficient: 1, powers }]))
  }
  let sign = 1
  const logarithms = powers.map(({ variable: { distribution }, power }) => {
    if (distribution.low >= 0) return affine(logOf(distribution), power, 0)
    sign *= (-1) ** power
    return affine(logOf(affine(distribution, -1, 0)), power, 0)
  })
  return affine(expOf(addUp(logarithms, 1)), sign, 0)
}
