import type { Choice } from './choice.js'
import { monomialsOf } from './choice.js'
import type { Distribution } from './distribution.js'
import type { Lattice } from './lattice.js'
import { latticeFor } from './lattice.js'
import { sampled, smoothed } from './sample.js'
import type { Monomial, Power, Variable } from './terms.js'
import { powerOf } from './transform.js'

/** How many points are wanted where one variable is integrated exactly, and where none can be. */
const SMOOTHED = 4093
const COUNTED = 8191

/**
 * The sum of choices whose outcomes share variables, over a lattice: at every point each variable is drawn once and each choice falls out
 * one way. One variable, the pivot, is not counted but integrated exactly, where there is one that is met in one power alone.
 */
export function overLattice(choices: readonly Choice[]): Distribution {
  const monomials = choices.flatMap(monomialsOf)
  const variables = new Set(monomials.flatMap(({ powers }) => powers.map(({ variable }) => variable)))
  const pivot = choosePivot(monomials)
  const lattice = latticeFor(variables.size + monomials.length + choices.length, pivot ? SMOOTHED : COUNTED)
  const reckon = reckoner(lattice)
  const offsets = new Float64Array(lattice.points)
  const slopes = new Float64Array(lattice.points)
  for (const choice of choices) {
    const shares = sharesOf(choice, lattice)
    choice.forEach(({ value }, k) => {
      for (const { coefficient, powers } of value) {
        const rest = powers.filter(({ variable }) => variable !== pivot?.variable)
        addWhere(shares, k, reckon({ coefficient, powers: rest }), rest.length < powers.length ? slopes : offsets)
      }
    })
  }
  if (!pivot) return sampled(offsets)
  const distribution = powerOf(pivot.variable.distribution, pivot.power)
  return smoothed({ offsets, slopes, pivot: distribution, draws: lattice.next(distribution.quantile) })
}

/** The number of the outcome that is the case at each point. */
function sharesOf(choice: Choice, lattice: Lattice): Float64Array {
  if (choice.length === 1) return new Float64Array(lattice.points)
  return lattice.next((p) => {
    let k = 0
    for (let below = choice[0]!.weight; below < p && k < choice.length - 1; below += choice[k]!.weight) k++
    return k
  })
}

function addWhere(shares: Float64Array, outcome: number, values: Float64Array, total: Float64Array): void {
  for (let i = 0; i < total.length; i++) if (shares[i] === outcome) total[i]! += values[i]!
}

/** Reckons monomials at every point of a lattice, drawing each variable once. */
function reckoner(lattice: Lattice): (monomial: Monomial) => Float64Array {
  const columns = new Map<Variable, Float64Array>()
  return ({ coefficient, powers }) => {
    const value = new Float64Array(lattice.points).fill(coefficient)
    for (const { variable, power } of powers) {
      const column = columns.get(variable) ?? lattice.next(variable.distribution.quantile)
      columns.set(variable, column)
      if (power === 1) for (let i = 0; i < value.length; i++) value[i]! *= column[i]!
      else for (let i = 0; i < value.length; i++) value[i]! *= column[i]! ** power
    }
    return value
  }
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
    const canServe = powers.size === 1 && (power === 1 || variable.distribution.low >= 0)
    if (!canServe || influence <= most) continue
    best = { variable, power: power! }
    most = influence
  }
  return best
}

/** How far a variable alone, going through its band, moves a monomial. */
function influenceOf(moved: Variable, { coefficient, powers }: Monomial): number {
  return powers.reduce((size, { variable, power }) => {
    const { quantile } = variable.distribution
    if (variable !== moved) return size * Math.abs(quantile(0.5) ** power)
    return size * Math.abs(quantile(0.95) ** power - quantile(0.05) ** power)
  }, Math.abs(coefficient))
}
