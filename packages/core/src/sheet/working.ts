/** What a cook measures off for one line, in the plan's units. */

import type { Value } from '../answer.js'
import { scaleBand } from '../bands/index.js'
import { type Cracked, crack, inFractions, type OwnEgg, sayEggs } from '../modern/index.js'
import type { EggParts } from '../reading/index.js'
import type { Kernel } from './kernel.js'
import type { CheckedPlan } from './plan.js'
import { roundWithin } from './rounding.js'
import type { Working } from './sheet.js'
import { toValue } from './totals.js'
import { type Known, type Measured, onMetric, onScales, onUk, onUs } from './units.js'
import type { Worked } from './worked.js'

/** Things that a kitchen measures by the cup rather than on the scale, beside liquids. */
const byCup = ['dry', 'fat', 'dairy', 'sweet']

/** What is known of a line for this plan: `by` is how many of the kernel there are, scaled. */
export function knownOf(kernel: Kernel, by: number, coverage: number): Known {
  const { good, quantity } = kernel
  const { mass, volume } = kernel.bands(coverage)
  return {
    mass: mass && scaleBand(mass, by),
    volume: volume && scaleBand(volume, by),
    liquid: good?.classes.includes('liquid') ?? quantity === 'volume',
    cups: quantity === 'volume' || (good?.classes.some((name) => byCup.includes(name)) ?? false),
  }
}

const moved = (to: number, from: number): number => Number((to / from - 1).toFixed(4))

/** The kitchen's own tools first, metric beside them where they are not metric. */
export function measuredOut(known: Known, units: CheckedPlan['units']): Working | null {
  const own: Measured | undefined = units === 'us' ? onUs(known) : units === 'uk' ? onUk(known) : onMetric(known)
  const scales = onScales(known)
  if (!own || !scales) return null
  const { amount, unit, text, base } = own
  const value = toValue(scales.quantity, known[scales.quantity]!)
  return { amount, unit, text, metric: units === 'metric' ? null : scales.text, value, moved: moved(base, known[own.quantity]!.best) }
}

/** A piece told by how broad it is (*rennet the size of half-a-crown*), which no scaling of the receipt changes. */
export function spannedOut(value: Value): Working | null {
  if (value.quantity !== 'length') return null
  const amount = Math.round(value.best)
  return { amount, unit: 'mm', text: `${amount} mm across`, metric: null, value, moved: moved(amount, value.best) }
}

/** A cook halves and quarters a lemon, and takes a whole one for nearly one. Judgement. */
const pieceSteps = [1, 0.5, 0.25, 0.125]
const pieceReach = 1 / 20

/** Things that the receipt counts stay counted: a cook takes four lemons, not so many grams of lemon. */
export function countedOut({ reading, kernel }: Worked, known: Known, by: number, coverage: number): Working | null {
  const tale = kernel!.quantity === 'count' ? scaleBand(kernel!.bands(coverage).own, by) : undefined
  const { each = 1, weighed: byWeight } = kernel!.own[0]!.sense
  if (!tale && (reading.kind !== 'counted' || !reading.amount || byWeight)) return null
  const count = tale?.best ?? (by * each * (1 + reading.amount!.high / reading.amount!.low)) / 2
  const rounded = roundWithin(count, pieceSteps, pieceReach)
  const weighed = onScales({ ...known, liquid: false })
  const text = `${inFractions(rounded)}${weighed ? ` (${weighed.text})` : ''}`
  const value = known.mass ? toValue('mass', known.mass) : tale ? toValue('count', tale) : toValue('volume', known.volume!)
  return { amount: rounded, unit: 'each', text, metric: null, value, moved: moved(rounded, count) }
}

/** Eggs that are cracked, not things that are to weigh as much as eggs. */
export const isEggs = ({ kernel, reading }: Worked): boolean =>
  (kernel?.choice?.startsWith('egg:') ?? false) && reading.kind !== 'comparison'

/** How to say a share of an egg that is less than any to crack. */
function beaten({ whole, yolks, whites }: EggParts): string {
  if (whole > 0 || (yolks > 0 && whites > 0)) return 'beaten egg'
  return yolks > 0 ? 'yolk' : 'white'
}

/** Eggs to crack, with their weight; a weight alone where less than half an egg is wanted. */
export function eggsOut(worked: Worked, known: Known, egg: OwnEgg): { working: Working; cracked: Cracked } | null {
  if (!isEggs(worked) || !known.mass) return null
  const parts: EggParts = worked.reading.eggs ?? { whole: 1, yolks: 0, whites: 0 }
  const { best } = known.mass
  const cracked = crack(best, parts, egg)
  const { amount, unit, text, base } = onScales({ ...known, volume: undefined, liquid: false })!
  const count = cracked.whole + Math.max(cracked.yolks, cracked.whites)
  const value = toValue('mass', known.mass)
  const working =
    count === 0
      ? { amount, unit, text: `${text} of ${beaten(parts)}`, metric: null, value, moved: moved(base, best) }
      : { amount: count, unit: egg.unit, text: sayEggs(cracked, egg), metric: text, value, moved: moved(cracked.grams, best) }
  return { working, cracked }
}
