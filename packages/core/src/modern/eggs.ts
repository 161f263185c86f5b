/**
 * Eggs of a receipt as eggs of a shop today: how many of each weight class, and the nearest recipe that can be cracked.
 *
 * count = g / (m (w + y)): g the grams without the shell, m a modern egg's weight in the shell, w and y the parts of it that are white
 * and yolk. Classes by their regulations are in `egg-classes`.
 */
import { mixtureBand, power, rectangle, spread, times, unknown, type Weighted } from '../bands/index.js'
import { type EggClassRow, type EggPartsRow, eggClasses, eggParts } from '../tables/index.js'
import type { ModernValue } from './modern.js'

/** Whole eggs, yolks without their white and whites without their yolk. */
interface Parts {
  readonly whole: number
  readonly yolks: number
  readonly whites: number
}

/** Grams of white and of yolk. */
interface Contents {
  readonly white: number
  readonly yolk: number
}

const [period] = eggParts
const modern = eggParts.find(({ id }) => id === 'modern')!

/** A cook breaks an egg for its yolk alone where that brings the mixture this much nearer, in g: a tea-spoonful. Judgement. */
const worthBreaking = 4

/** White and yolk of eggs whose mass without the shell is known. */
function contentsOf(grams: number, { whole, yolks, whites }: Parts, shares: EggPartsRow): Contents {
  const white = (whole + whites) * shares.white.best
  const yolk = (whole + yolks) * shares.yolk.best
  return { white: (grams * white) / (white + yolk), yolk: (grams * yolk) / (white + yolk) }
}

interface Recipe extends Parts {
  readonly grams: number
  readonly cost: number
}

function recipeWith(whole: number, wanted: Contents, one: Contents): Recipe {
  const yolks = Math.max(0, Math.round((wanted.yolk - whole * one.yolk) / one.yolk))
  const whites = yolks > 0 ? 0 : Math.max(0, Math.round((wanted.white - whole * one.white) / one.white))
  const white = (whole + whites) * one.white
  const yolk = (whole + yolks) * one.yolk
  const cost = Math.abs(white - wanted.white) + Math.abs(yolk - wanted.yolk) + worthBreaking * (yolks + whites)
  return { whole, yolks, whites, grams: white + yolk, cost }
}

/** The recipe nearest in white and in yolk; the count of whole eggs lies near what one of the two, or both together, would ask for. */
function nearestRecipe(wanted: Contents, one: Contents): Recipe {
  const near = [wanted.white / one.white, wanted.yolk / one.yolk, (wanted.white + wanted.yolk) / (one.white + one.yolk)].map(Math.round)
  const counts = [...near.flatMap((count) => [count - 1, count, count + 1]), 0].filter((count) => count >= 0)
  const recipes = counts.map((count) => recipeWith(count, wanted, one)).filter(({ grams }) => grams > 0)
  return recipes.reduce((best, recipe) => (recipe.cost < best.cost ? recipe : best))
}

const some = (count: number, name: string): string => `${count} ${name}${count === 1 ? '' : 's'}`

function sayRecipe({ whole, yolks, whites }: Parts, { label, plural }: EggClassRow): string {
  const rest = [yolks > 0 ? some(yolks, 'yolk') : '', whites > 0 ? some(whites, 'white') : ''].filter(Boolean).join(' and ')
  if (whole === 0) return `${rest} of ${plural}`
  const eggs = `${whole} ${whole === 1 ? label : plural}`
  return rest ? `${eggs} and ${rest}` : eggs
}

/** The mean of many eggs of a class: anywhere in its range where each egg lies in it; near the least average where the law sets one. */
function massOf(row: EggClassRow) {
  return unknown(`egg-class:${row.id}`, row.basis === 'each' ? rectangle(row.low, row.high) : spread(row))
}

function inClass(row: EggClassRow, grams: readonly Weighted[], parts: Parts, coverage: number): ModernValue {
  const { white, yolk } = modern
  const edible = { low: white.low + yolk.low, best: white.best + yolk.best, high: white.high + yolk.high }
  const perEgg = [power(massOf(row), -1), power(unknown('egg-edible:modern', spread(edible)), -1)] as const
  const counts = grams.map(({ weight, value }) => ({ weight, value: times(times(value, perEgg[0]), perEgg[1]) }))
  const { low, best, high } = mixtureBand(counts, coverage)
  const wanted = mixtureBand(grams, coverage).best
  const recipe = nearestRecipe(contentsOf(wanted, parts, period!), { white: row.best * white.best, yolk: row.best * yolk.best })
  const rounding = Number((recipe.grams / wanted - 1).toFixed(4))
  return { unit: row.id, ucum: null, low, best, high, text: sayRecipe(recipe, row), rounding }
}

/**
 * Eggs in the weight classes that are sold today, each with the nearest recipe that can be cracked.
 *
 * @param grams without the shell: what the eggs may come to, each with its weight
 * @param parts how the receipt counts them, which says how much of it is white and how much yolk
 * @returns counts of eggs of each class; `text` is the recipe, `rounding` how much heavier it is than what was asked for
 * @example modernEggs([{ weight: 1, value: [{ coefficient: 404, factors: [] }] }], { whole: 10, yolks: 0, whites: 0 })[0].text   // '9 US medium eggs and 1 yolk'
 */
export function modernEggs(grams: readonly Weighted[], parts: Parts, coverage = 0.9): readonly ModernValue[] {
  return eggClasses.filter(({ until }) => until === undefined).map((row) => inClass(row, grams, parts, coverage))
}

/** A weight class by its id, those no longer sold by included: `egg-eu-m`, `egg-uk-size-3`. */
export function findEggClass(id: string): EggClassRow | undefined {
  return eggClasses.find((row) => row.id === id)
}
