import type { Band } from '../bands/index.js'
import { powerBelow, toDigits } from '../digits.js'
import { exactRatio, type ModernUnitRow, modernUnits } from '../tables/index.js'
import { inFractions } from './fraction.js'

/** A value as a kitchen can measure it off, and what the rounding cost. */
export interface Rounded {
  readonly value: number
  /** How much larger (or smaller, below zero) the rounded value is than the best one, as a part of it. */
  readonly shift: number
  /** Whether rounding took the value out of its own band. */
  readonly outside: boolean
}

/** The largest of 1, 2 or 5 times a power of ten that is no larger than `x`. */
function niceBelow(x: number): number {
  const power = powerBelow(x)
  const lead = x / power
  return (lead >= 5 ? 5 : lead >= 2 ? 2 : 1) * power
}

/** Units that are weighed or read off a scale can be divided further when little is asked for; spoons and cups cannot. */
const divisible = new Set(['g', 'ml', 'mm', 'cm', 'kg', 'l', 's', 'ratio'])
/** From here on a kitchen scale or jug is read to five. */
const manySteps = 100

const steps = new Map(modernUnits.map(({ id, step }) => [id, exactRatio(step).toNumber()]))

/** The smallest part of a unit that kitchens measure off. */
export const stepOf = ({ id, step }: ModernUnitRow): number => steps.get(id) ?? exactRatio(step).toNumber()

function ownStep(unit: ModernUnitRow, size: number): number {
  const smallest = stepOf(unit)
  if (!divisible.has(unit.id)) return smallest
  if (size < 10 * smallest) return niceBelow(size / 20)
  return smallest === 1 && size >= manySteps ? 5 : smallest
}

function stepFor(unit: ModernUnitRow, band: Band): number {
  const own = ownStep(unit, Math.abs(band.best))
  // No more digits than the band supports (JCGM 100:2008, 7.2.6): a step of about a tenth of the band's width.
  const halfWidth = (band.high - band.low) / 2
  return halfWidth > 0 ? Math.max(own, niceBelow(halfWidth / 5)) : own
}

/**
 * Rounds the best value of a band to what the unit's tools can measure.
 *
 * @param band in the unit itself
 * @example roundForKitchen({ id: 'cup-us', step: '1/4', … }, { low: 7.8, best: 8.03, high: 8.2, coverage: 0.9 }).value   // 8
 */
export function roundForKitchen(unit: ModernUnitRow, band: Band): Rounded {
  if (band.best === 0) return { value: 0, shift: 0, outside: false }
  const step = stepFor(unit, band)
  // Twelve digits, to take off the last-bit noise that multiplying by a decimal step leaves.
  const near = toDigits(Math.round(band.best / step) * step, 12)
  // A scale can be read closer than a kitchen would round, where rounding would leave the band.
  const value = divisible.has(unit.id) && (near < band.low || near > band.high) ? toDigits(band.best, 4) : near
  const shift = Math.round((value / band.best - 1) * 1e4) / 1e4 + 0
  return { value, shift, outside: value < band.low || value > band.high }
}

/** A number as British books print it, with commas between thousands from five figures on. */
function inFigures(value: number): string {
  if (value < 10_000) return String(value)
  // The locale's own way takes as long as all the rest of an answer, and most such numbers are whole.
  return Number.isSafeInteger(value) ? String(value).replace(/\B(?=(?:\d{3})+$)/g, ',') : value.toLocaleString('en-GB')
}

/** A number as a cook reads it: `8`, `2¼`, `1.95`; fractions where the unit is divided into them. */
export function kitchenNumber(unit: ModernUnitRow, value: number): string {
  return divisible.has(unit.id) || Number.isInteger(value) ? inFigures(value) : inFractions(value)
}
