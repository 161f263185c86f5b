import { cluster } from './cluster.js'
import type { Distribution } from './distribution.js'
import { addUp } from './grid.js'
import { latticeFor, sampled } from './lattice.js'
import { mix } from './mixture.js'
import { resolve } from './resolve.js'
import { sampler } from './sample.js'
import type { Monomial, Variables } from './terms.js'
import { addLike, variablesOf } from './terms.js'

/** One way in which a choice may fall out. */
export interface Outcome {
  readonly weight: number
  readonly value: readonly Monomial[]
}

/** Outcomes of which one is the case; their weights add up to 1. */
export type Choice = readonly Outcome[]

/** Up to so many terms are reckoned case by case even where parts are independent, as sums of exact senses then come out exactly. */
const FEW_TERMS = 48
/** Up to so many terms are reckoned case by case where choices share a variable; beyond, over a lattice. */
const MANY_TERMS = 1000

/** The sum of choices that fall out independently of each other, though their outcomes may share variables. */
export function total(choices: readonly Choice[], known: Variables): Distribution {
  if (countTerms(choices) <= FEW_TERMS) return enumerate(choices, known)
  const parts = cluster(choices, (choice) => variablesOf(choice.flatMap(({ value }) => value)))
  return addUp(parts.map((part) => (part.length === 1 || countTerms(part) <= MANY_TERMS ? enumerate(part, known) : sample(part))))
}

/** How many terms there are to reckon when every outcome of every choice meets every outcome of the others. */
function countTerms(choices: readonly Choice[]): number {
  const cases = choices.reduce((count, choice) => count * choice.length, 1)
  return cases * choices.reduce((count, choice) => count + Math.max(1, choice[0]!.value.length), 0)
}

function enumerate(choices: readonly Choice[], known: Variables): Distribution {
  const cases = choices.reduce<Choice>(
    (met, choice) =>
      met.flatMap((one) => choice.map((other) => ({ weight: one.weight * other.weight, value: [...one.value, ...other.value] }))),
    [{ weight: 1, value: [] }],
  )
  return mix(cases.map(({ weight, value }) => ({ weight, distribution: resolve(addLike(value), known) })))
}

/** Draws an outcome of every choice at every point of a lattice. */
function sample(choices: readonly Choice[]): Distribution {
  const monomials = choices.flatMap((choice) => choice.flatMap(({ value }) => value))
  const lattice = latticeFor(variablesOf(monomials).size + monomials.length + choices.length)
  const reckon = sampler(lattice)
  const sum = new Float64Array(lattice.points)
  for (const choice of choices) {
    const drawn = choice.length === 1 ? null : lattice.next((p) => p)
    let from = 0
    for (const { weight, value } of choice) {
      const values = reckon(value)
      for (let i = 0; i < sum.length; i++) if (!drawn || (drawn[i]! >= from && drawn[i]! < from + weight)) sum[i]! += values[i]!
      from += weight
    }
  }
  return sampled(sum)
}
