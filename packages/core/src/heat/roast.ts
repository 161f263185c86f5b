import type { Band } from '../bands/index.js'
import { badOption } from '../error.js'
import { type RoastRuleRow, roastingRules as rows } from '../tables/index.js'
import { type Cited, cited } from './cited.js'
import { requirePositive, tidy } from './degrees.js'

/** A rule of so many minutes a pound. */
export interface RoastRule extends Cited {
  readonly id: string
  readonly way: RoastRuleRow['way']
  readonly goods: string
  readonly minutes: readonly [number, number]
  readonly over: number
  readonly year: number
}

/** One avoirdupois pound in grams (International Yard and Pound Agreement 1959). */
const pound = 453.59237
/** P in hours = lb^(2/3) / P, for turkeys: 1.5, and from 1.1 to 1.9 with oven, start and target (Panofsky; Jin, Wang & Wang, AIP Advances 11, 2021). */
const panofsky = { low: 1.1, best: 1.5, high: 1.9 }

function asRule(row: RoastRuleRow): RoastRule {
  const { id, way, goods, minutes, over, year } = row
  return { id, way, goods, minutes, over, year, ...cited(row) }
}

/**
 * Every rule of so many minutes to the avoirdupois pound, and so many over, that dated books print.
 *
 * @example roastingRules().find(({ way }) => way === 'roast')?.year   // 1796
 */
export function roastingRules(): readonly RoastRule[] {
  return rows.map(asRule)
}

/**
 * Minutes by a rule of so many minutes a pound.
 *
 * @param id one of `roastingRules()`
 * @param grams of the joint
 * @throws PottleError `bad-option` for an unknown rule or a weight that is not above zero
 * @example minutesByRule('harrison-1884.roast.veal-pork-and-solid-joints', 5 * 453.59237)   // { low: 120, high: 120 }
 */
export function minutesByRule(id: string, grams: number): { readonly low: number; readonly high: number } {
  const rule = rows.find((row) => row.id === id)
  if (!rule) throw badOption('rule', `"${id.slice(0, 60)}" is not a rule of minutes a pound`)
  const pounds = requirePositive('mass', grams, 'g') / pound
  const [low, high] = rule.minutes
  return { low: low * pounds + rule.over, high: high * pounds + rule.over }
}

/**
 * Minutes to roast a bird or a solid joint, by its weight to the power two thirds: heat goes in through the surface, and time as the square of
 * the thickness (Panofsky; Jin, Wang & Wang, AIP Advances 11, 2021).
 *
 * @param grams of the joint
 * @returns minutes; the ends are those that the paper finds between ovens, starts and targets
 * @throws PottleError `bad-option` for a weight that is not above zero
 * @example roastingMinutes(10 * 453.59237).best   // 185.664
 */
export function roastingMinutes(grams: number): Band {
  const pounds = requirePositive('mass', grams, 'g') / pound
  const minutes = (p: number): number => tidy((60 * pounds ** (2 / 3)) / p)
  return { low: minutes(panofsky.high), best: minutes(panofsky.best), high: minutes(panofsky.low), coverage: 0.9 }
}
