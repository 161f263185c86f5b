/**
 * Eggs of a receipt as eggs of a shop today: how many of each weight class, and the nearest that can be cracked.
 *
 * count = g / (m (w + y)): g the grams without the shell, m a modern egg's weight in the shell, w and y the parts of it that are white
 * and yolk. Classes by their regulations are in `egg-classes`.
 */
import { mixtureBand, power, rectangle, spread, times, type Unknown, unknown, type Weighted } from '../bands/index.js'
import { type EggClassRow, eggClasses, eggParts } from '../tables/index.js'
import { crack, type EggCount, eggOf, sayEggs } from './crack.js'
import type { ModernValue } from './modern.js'

const { white, yolk } = eggParts.find(({ id }) => id === 'modern')!
/** What of a modern egg is not shell. */
const edible = unknown(
  'egg-edible:modern',
  spread({ low: white.low + yolk.low, best: white.best + yolk.best, high: white.high + yolk.high }),
)

/** The mean of many eggs of a class: anywhere in its range where each egg lies in it; near the least average where the law sets one. */
function massOf(row: EggClassRow): Unknown {
  return unknown(`egg-class:${row.id}`, row.basis === 'each' ? rectangle(row.low, row.high) : spread(row))
}

function inClass(row: EggClassRow, grams: readonly Weighted[], counted: EggCount, coverage: number): ModernValue {
  const perGram = [power(massOf(row), -1), power(edible, -1)] as const
  const counts = grams.map(({ weight, value }) => ({ weight, value: times(times(value, perGram[0]), perGram[1]) }))
  const { low, best, high } = mixtureBand(counts, coverage)
  const wanted = mixtureBand(grams, coverage).best
  const egg = eggOf(row.best, row)
  const cracked = crack(wanted, counted, egg)
  return {
    unit: row.id,
    ucum: null,
    low,
    best,
    high,
    text: sayEggs(cracked, egg),
    rounding: Number((cracked.grams / wanted - 1).toFixed(4)),
  }
}

/**
 * Eggs in the weight classes that are sold today, each with the nearest eggs that can be cracked.
 *
 * @param grams without the shell: what the eggs may come to, each with its weight
 * @param counted as the receipt counts them, which says how much of it is white and how much yolk
 * @returns counts of eggs of each class; `text` is what to crack, `rounding` how much heavier that is than what was asked for
 * @example modernEggs([{ weight: 1, value: [{ coefficient: 404, factors: [] }] }], { whole: 10, yolks: 0, whites: 0 })[0].text   // '9 US medium eggs and 1 yolk'
 */
export function modernEggs(grams: readonly Weighted[], counted: EggCount, coverage = 0.9): readonly ModernValue[] {
  return eggClasses.filter(({ until }) => until === undefined).map((row) => inClass(row, grams, counted, coverage))
}
