import { type Band, scaleBand } from '../bands/index.js'
import type { ModernUnitRow, Quantity } from '../tables/index.js'
import { kitchenNumber, type Rounded, roundForKitchen, stepOf } from './rounding.js'
import { type ModernUnit, unitsOf } from './units.js'

/** One value in one modern unit. `low`, `best` and `high` are unrounded; `text` is what a cook reads. */
export interface ModernValue {
  readonly unit: string
  /** The unit's code in UCUM, where it has one. */
  readonly ucum: string | null
  readonly low: number
  readonly best: number
  readonly high: number
  readonly text: string
  /** How much kitchen rounding moved the value, as a part of it: 0.02 is two per cent more. */
  readonly rounding: number
}

/** Kitchen words for a rounding that leaves the band: *a scant cup* when there is less than the number says. */
function beyond({ shift, outside }: Rounded): string {
  if (!outside) return ''
  return shift > 0 ? ', scant' : ', generous'
}

const nameFor = (unit: ModernUnitRow, value: number): string => (value > 1 ? unit.plural : unit.singular)

function kitchenText(unit: ModernUnitRow, band: Band): { text: string; rounding: number } {
  const rounded = roundForKitchen(unit, band)
  const { value, shift } = rounded
  if (value === 0 && band.best > 0) return { text: `less than ${kitchenNumber(unit, stepOf(unit))} ${unit.singular}`, rounding: shift }
  return { text: `${kitchenNumber(unit, value)} ${nameFor(unit, value)}${beyond(rounded)}`.trim(), rounding: shift }
}

function valueIn({ row, inBase }: ModernUnit, base: Band): ModernValue {
  const band = scaleBand(base, 1 / inBase)
  const { low, best, high } = band
  const { text, rounding } = kitchenText(row, band)
  return { unit: row.id, ucum: row.ucum ?? null, low, best, high, text, rounding }
}

/**
 * A band in every unit that a modern kitchen may want for its quantity.
 *
 * @param band in the base unit of the quantity: g, ml, each, mm, s or 1
 * @example inModernUnits('volume', { low: 1850, best: 1893, high: 1935, coverage: 0.9 }).find((v) => v.unit === 'cup-us')?.text   // '8 US cups'
 */
export function inModernUnits(quantity: Quantity, band: Band): readonly ModernValue[] {
  return unitsOf(quantity).map((unit) => valueIn(unit, band))
}

/** The same in one unit alone; undefined where the quantity is not measured in it. */
export function inModernUnit(id: string, quantity: Quantity, band: Band): ModernValue | undefined {
  const unit = unitsOf(quantity).find(({ row }) => row.id === id)
  return unit && valueIn(unit, band)
}
