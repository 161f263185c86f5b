import { exactValue, type ModernUnitRow, modernUnits, type Quantity } from '../tables/index.js'

/** A unit of the modern kitchen and how many base units (g, ml, each, mm, s, 1) one of it is. */
export interface ModernUnit {
  readonly row: ModernUnitRow
  readonly inBase: number
}

const units: readonly ModernUnit[] = modernUnits
  .filter((row) => row.value !== undefined)
  .map((row) => ({ row, inBase: exactValue(row.value!).value.toNumber() }))

const byQuantity = new Map<Quantity, ModernUnit[]>()
for (const unit of units) byQuantity.set(unit.row.quantity, [...(byQuantity.get(unit.row.quantity) ?? []), unit])

/** The units that a kitchen measures a quantity in, in the order of the table. Temperatures are not multiples of a base and are not here. */
export function unitsOf(quantity: Quantity): readonly ModernUnit[] {
  return byQuantity.get(quantity) ?? []
}
