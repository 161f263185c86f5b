import type { Choice } from './choice.js'
import { divide, monomialsOf, sure, variablesOf } from './choice.js'
import type { Monomial, Power, Variable } from './terms.js'
import { keyOf } from './terms.js'

/**
 * Gathers what is met in one place alone round new variables, so that fewer hang together: where x and y are met nowhere else,
 * px + 2py + q = p(x + 2y) + q becomes pv + q. The same for whole choices, and within the outcomes of a choice, as but one of them
 * is the case.
 *
 * @param asVariable makes one variable of a sum that shares nothing with the rest
 * @returns null where there is nothing left to gather
 */
export function gatherPrivate(choices: readonly Choice[], asVariable: (sum: readonly Choice[]) => Variable): readonly Choice[] | null {
  const shared = sharedVariables(choices)
  const isShared = ({ variable }: Power) => shared.has(variable)
  const sharedKey = ({ powers }: Monomial) => keyOf(powers.filter(isShared))
  let gathered = false

  const gather = (group: readonly Choice[]): Monomial => {
    const first = group.flatMap(monomialsOf)[0]!
    if (isPlain(group, isShared)) return first
    gathered = true
    const powers = first.powers.filter(isShared)
    return { coefficient: 1, powers: [...powers, { variable: asVariable(divide(group, powers)), power: 1 }] }
  }

  const alike = new Map<string, Choice[]>()
  const mixed: Choice[] = []
  for (const choice of choices) {
    const keys = new Set(monomialsOf(choice).map(sharedKey))
    if (keys.size === 1) put(alike, [...keys][0]!, choice)
    else mixed.push(choice)
  }
  const wholes = [...alike.values()].map(gather)
  const outcomes = mixed.map((choice) =>
    choice.map(({ weight, value }) => {
      const groups = new Map<string, Choice[]>()
      for (const choice of sure(value)) put(groups, sharedKey(choice[0]!.value[0]!), choice)
      return { weight, value: [...groups.values()].map(gather) }
    }),
  )
  return gathered ? [...sure(wholes), ...outcomes] : null
}

/** The variables that are met in two choices, or twice in one outcome. */
function sharedVariables(choices: readonly Choice[]): Set<Variable> {
  const met = new Set<Variable>()
  const shared = new Set<Variable>()
  for (const choice of choices) {
    for (const { value } of choice) {
      const here = new Set<Variable>()
      for (const { variable } of value.flatMap(({ powers }) => powers)) (here.has(variable) ? shared : here).add(variable)
    }
    const all = variablesOf(choice)
    for (const variable of all) (met.has(variable) ? shared : met).add(variable)
  }
  return shared
}

/** A sure term of shared powers and at most one variable of its own. */
function isPlain(group: readonly Choice[], isShared: (power: Power) => boolean): boolean {
  const [first, ...others] = group.flat()
  if (others.length > 0 || first!.value.length > 1) return false
  const own = first!.value[0]!.powers.filter((power) => !isShared(power))
  return own.length === 0 || (own.length === 1 && own[0]!.power === 1)
}

function put(groups: Map<string, Choice[]>, key: string, choice: Choice): void {
  const group = groups.get(key)
  if (group) group.push(choice)
  else groups.set(key, [choice])
}
