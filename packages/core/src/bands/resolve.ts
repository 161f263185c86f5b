import { cluster } from './cluster.js'
import type { Distribution } from './distribution.js'
import { addUp } from './grid.js'
import { latticeFor, sampled } from './lattice.js'
import { sampler } from './sample.js'
import type { Monomial, Power, Variables } from './terms.js'
import { addLike, keyOf, variablesOf } from './terms.js'
import { affine, expOf, logOf } from './transform.js'

/**
 * The distribution of a sum of products.
 *
 * Parts that share no variable are independent and are added up on a grid. A part whose terms share variables is taken apart further: a
 * common factor goes before the bracket, and what is met in one term alone is gathered into a variable of its own. What then still
 * hangs together is reckoned over a lattice.
 */
export function resolve(monomials: readonly Monomial[], known: Variables): Distribution {
  const constants = monomials.filter(({ powers }) => powers.length === 0)
  const uncertain = monomials.filter(({ powers }) => powers.length > 0)
  const parts = cluster(uncertain, ({ powers }) => powers.map(({ variable }) => variable)).map((part) => resolveLinked(part, known))
  return affine(
    addUp(parts),
    1,
    constants.reduce((total, { coefficient }) => total + coefficient, 0),
  )
}

function resolveLinked(monomials: readonly Monomial[], known: Variables): Distribution {
  if (monomials.length === 1) return multiply(monomials[0]!)
  const common = commonPowers(monomials)
  if (common.length > 0) {
    const bracket = known.add(resolve(divide(monomials, common), known))
    return multiply({ coefficient: 1, powers: [...common, { variable: bracket, power: 1 }] })
  }
  const gathered = gatherPrivate(monomials, known)
  return gathered ? resolve(gathered, known) : sample(monomials)
}

/** A product of independent variables: the logarithms add up. Over a lattice where a factor may have either sign. */
function multiply(monomial: Monomial): Distribution {
  const { coefficient, powers } = monomial
  const { variable, power } = powers[0]!
  if (powers.length === 1 && power === 1) return affine(variable.distribution, coefficient, 0)
  if (powers.some(({ variable: { distribution } }) => distribution.low < 0 && distribution.high > 0)) return sample([monomial])
  let signed = coefficient
  const logarithms = powers.map(({ variable: { distribution }, power }) => {
    if (distribution.low >= 0) return affine(logOf(distribution), power, 0)
    signed *= (-1) ** power
    return affine(logOf(affine(distribution, -1, 0)), power, 0)
  })
  return affine(expOf(addUp(logarithms)), signed, 0)
}

function sample(monomials: readonly Monomial[]): Distribution {
  const lattice = latticeFor(variablesOf(monomials).size + monomials.length)
  return sampled(sampler(lattice)(monomials))
}

/** The powers that every term has. */
function commonPowers(monomials: readonly Monomial[]): readonly Power[] {
  return monomials[0]!.powers.filter((power) => monomials.every(({ powers }) => powers.some((other) => isSame(power, other))))
}

function divide(monomials: readonly Monomial[], common: readonly Power[]): readonly Monomial[] {
  return monomials.map(({ coefficient, powers }) => ({
    coefficient,
    powers: powers.filter((power) => !common.some((other) => isSame(power, other))),
  }))
}

function isSame(one: Power, other: Power): boolean {
  return one.variable === other.variable && one.power === other.power
}

/**
 * Terms with the same shared powers, gathered round one new variable: 3px + 2py + qx = p(3x + 2y) + ..., where x and y are met nowhere else.
 *
 * @returns null where there is nothing to gather
 */
function gatherPrivate(monomials: readonly Monomial[], known: Variables): readonly Monomial[] | null {
  const met = new Map<unknown, number>()
  for (const { variable } of monomials.flatMap(({ powers }) => powers)) met.set(variable, (met.get(variable) ?? 0) + 1)
  const isShared = ({ variable }: Power) => met.get(variable)! > 1

  const groups = new Map<string, Monomial[]>()
  for (const monomial of monomials) {
    const key = keyOf(monomial.powers.filter(isShared))
    groups.set(key, [...(groups.get(key) ?? []), monomial])
  }
  const isSimple = (group: readonly Monomial[]) => {
    const own = group.flatMap(({ powers }) => powers.filter((power) => !isShared(power)))
    return group.length === 1 && (own.length === 0 || (own.length === 1 && own[0]!.power === 1))
  }
  if ([...groups.values()].every(isSimple)) return null

  return [...groups.values()].flatMap((group) => {
    if (isSimple(group)) return group
    const shared = group[0]!.powers.filter(isShared)
    const variable = known.add(resolve(addLike(divide(group, shared)), known))
    return { coefficient: 1, powers: [...shared, { variable, power: 1 }] }
  })
}
