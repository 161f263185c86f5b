import type { Lattice } from './lattice.js'
import type { Monomial, Variable } from './terms.js'

/** Reckons sums of monomials at every point of a lattice, drawing each variable once. */
export function sampler(lattice: Lattice): (monomials: readonly Monomial[]) => Float64Array {
  const columns = new Map<Variable, Float64Array>()
  const columnOf = (variable: Variable): Float64Array => {
    const drawn = columns.get(variable) ?? lattice.next(variable.distribution.quantile)
    columns.set(variable, drawn)
    return drawn
  }
  return (monomials) => {
    const total = new Float64Array(lattice.points)
    for (const { coefficient, powers } of monomials) {
      const value = new Float64Array(lattice.points).fill(coefficient)
      for (const { variable, power } of powers) multiplyBy(value, columnOf(variable), power)
      addTo(total, value)
    }
    return total
  }
}

function multiplyBy(value: Float64Array, column: Float64Array, power: number): void {
  if (power === 1) for (let i = 0; i < value.length; i++) value[i]! *= column[i]!
  else for (let i = 0; i < value.length; i++) value[i]! *= column[i]! ** power
}

function addTo(total: Float64Array, value: Float64Array): void {
  for (let i = 0; i < total.length; i++) total[i]! += value[i]!
}
