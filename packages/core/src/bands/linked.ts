import type { Choice } from './choice.js'
import { monomialsOf } from './choice.js'
import type { Distribution } from './distribution.js'
import type { Lattice } from './lattice.js'
import { latticeFor } from './lattice.js'
import { sampled, smoothed } from './sample.js'
import type { Monomial, Power, Variable } from './terms.js'
import { hasLogarithm, powerOf } from './transform.js'

/** How many points are wanted where all is smooth, and where choices or variables are counted. */
const SMOOTH = 4093
const COUNTED = 8191
/** For how many cases of choices one coordinate of the lattice serves. */
const CASES_A_COORDINATE = 64

/** What each variable is at every point. */
type Columns = ReadonlyMap<Variable, Float64Array>

/**
 * The sum of choices whose outcomes share variables, over a lattice: at every point each variable is drawn once and each choice falls out
 * one way. One variable, the pivot, is not counted but integrated exactly, where there is one that is met in one power alone.
 */
export function overLattice(choices: readonly Choice[]): Distribution {
  const monomials = choices.flatMap(monomialsOf)
  const variables = [...new Set(monomials.flatMap(({ powers }) => powers.map(({ variable }) => variable)))].sort(byName)
  const pivot = choosePivot(monomials)
  const isSmooth = pivot !== null && choices.every((choice) => choice.length === 1)
  const lattice = latticeFor(variables.length + choices.length + monomials.length, isSmooth ? SMOOTH : COUNTED)
  const columns = new Map(variables.map((variable) => [variable, lattice.next(variable.distribution.quantile)]))
  const fallOut = chooser(lattice)
  const offsets = new Float64Array(lattice.points)
  const slopes = new Float64Array(lattice.points)
  for (const choice of choices) {
    const outcomes = fallOut(choice)
    choice.forEach(({ value }, k) => {
      for (const { coefficient, powers } of value) {
        const rest = powers.filter(({ variable }) => variable !== pivot?.variable)
        const total = rest.length < powers.length ? slopes : offsets
        addWhere(outcomes, k, reckon(coefficient, rest, columns, lattice), total)
      }
    })
  }
  if (!pivot) return sampled(offsets)
  const draws = reckon(1, [pivot], columns, lattice)
  return smoothed({ offsets, slopes, pivot: powerOf(pivot.variable.distribution, pivot.power), draws })
}

/** The order of the names, so that the order in which a sum is written does not matter. */
function byName(one: Variable, other: Variable): number {
  if (one.name !== other.name) return one.name < other.name ? -1 : 1
  return one.rank - other.rank
}

/**
 * Says for each choice in turn the number of the outcome that is the case at each point. Choices share a coordinate, each dividing the slices
 * that the ones before it left, so that every case gets its due number of points; a coordinate serves for as many cases as it can tell apart.
 */
function chooser(lattice: Lattice): (choice: Choice) => Uint16Array {
  let column: Float64Array = new Float64Array(0)
  let cases = Number.POSITIVE_INFINITY
  return (choice) => {
    const outcomes = new Uint16Array(lattice.points)
    if (choice.length === 1) return outcomes
    cases *= choice.length
    if (cases > CASES_A_COORDINATE) {
      column = lattice.nextPlain()
      cases = choice.length
    }
    for (let i = 0; i < column.length; i++) {
      let [k, from] = [0, 0]
      while (k < choice.length - 1 && column[i]! >= from + choice[k]!.weight) from += choice[k++]!.weight
      outcomes[i] = k
      column[i] = (column[i]! - from) / choice[k]!.weight
    }
    return outcomes
  }
}

function addWhere(outcomes: Uint16Array, outcome: number, values: Float64Array, total: Float64Array): void {
  for (let i = 0; i < total.length; i++) if (outcomes[i] === outcome) total[i]! += values[i]!
}

/** A coefficient times powers of variables at every point. */
function reckon(coefficient: number, powers: readonly Power[], columns: Columns, lattice: Lattice): Float64Array {
  const value = new Float64Array(lattice.points).fill(coefficient)
  for (const { variable, power } of powers) {
    const column = columns.get(variable)!
    if (power === 1) for (let i = 0; i < value.length; i++) value[i]! *= column[i]!
    else for (let i = 0; i < value.length; i++) value[i]! *= column[i]! ** power
  }
  return value
}

/** Of the variables that are met in one power alone, the one on which the sum hangs most. */
function choosePivot(monomials: readonly Monomial[]): Power | null {
  const candidates = new Map<Variable, { powers: Set<number>; influence: number }>()
  for (const monomial of monomials) {
    for (const { variable, power } of monomial.powers) {
      const { powers, influence } = candidates.get(variable) ?? { powers: new Set(), influence: 0 }
      candidates.set(variable, { powers: powers.add(power), influence: influence + influenceOf(variable, monomial) })
    }
  }
  let best: Power | null = null
  let most = 0
  for (const [variable, { powers, influence }] of candidates) {
    const [power] = powers
    const canServe = powers.size === 1 && (power === 1 || hasLogarithm(variable.distribution))
    if (!canServe || Math.abs(influence) <= most) continue
    best = { variable, power: power! }
    most = Math.abs(influence)
  }
  return best
}

/** How far one variable, going through its band, moves a monomial while the others stand at their medians. */
function influenceOf(moved: Variable, { coefficient, powers }: Monomial): number {
  return powers.reduce((size, { variable, power }) => {
    const { quantile } = variable.distribution
    return size * (variable === moved ? quantile(0.95) ** power - quantile(0.05) ** power : quantile(0.5) ** power)
  }, coefficient)
}
