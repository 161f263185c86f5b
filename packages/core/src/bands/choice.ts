import type { Monomial, Power, Variable } from './terms.js'
import { addLike } from './terms.js'

/** One way in which a choice may fall out. */
export interface Outcome {
  readonly weight: number
  readonly value: readonly Monomial[]
}

/** Outcomes of which one is the case; their weights add up to 1. A choice of one outcome is sure. */
export type Choice = readonly Outcome[]

/** Terms that are added up, each as a sure choice of its own. */
export function sure(monomials: readonly Monomial[]): readonly Choice[] {
  return monomials.map((monomial) => [{ weight: 1, value: [monomial] }])
}

/** The same sum with every sure term a choice of its own, like terms added. */
export function separate(choices: readonly Choice[]): readonly Choice[] {
  const certain = choices.filter((choice) => choice.length === 1).flatMap(monomialsOf)
  return [...sure(addLike(certain)), ...choices.filter((choice) => choice.length > 1)]
}

/** The powers that every term of every outcome has. */
export function commonPowers(choices: readonly Choice[]): readonly Power[] {
  const monomials = choices.flatMap(monomialsOf)
  return monomials[0]!.powers.filter((power) => monomials.every(({ powers }) => powers.some((other) => isSame(power, other))))
}

/** The choices without a factor that they have in common. */
export function divide(choices: readonly Choice[], common: readonly Power[]): readonly Choice[] {
  const without = ({ coefficient, powers }: Monomial) => ({
    coefficient,
    powers: powers.filter((power) => !common.some((other) => isSame(power, other))),
  })
  return choices.map((choice) => choice.map(({ weight, value }) => ({ weight, value: addLike(value.map(without)) })))
}

export function monomialsOf(choice: Choice): readonly Monomial[] {
  return choice.flatMap(({ value }) => value)
}

export function variablesOf(choice: Choice): Set<Variable> {
  return new Set(monomialsOf(choice).flatMap(({ powers }) => powers.map(({ variable }) => variable)))
}

function isSame(one: Power, other: Power): boolean {
  return one.variable === other.variable && one.power === other.power
}
