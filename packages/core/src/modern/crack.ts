/** Eggs that a person can crack: whole ones, yolks alone and whites alone of today's eggs that come nearest to what a receipt asks for. */
import { type EggClassRow, eggParts } from '../tables/index.js'

/** Whole eggs, yolks without their white and whites without their yolk. */
export interface EggCount {
  readonly whole: number
  readonly yolks: number
  readonly whites: number
}

/** The egg at hand. */
export interface OwnEgg {
  readonly unit: string
  readonly label: string
  readonly plural: string
  /** g of white and of yolk in one. */
  readonly white: number
  readonly yolk: number
}

/** Eggs to crack, and their grams. */
export interface Cracked extends EggCount {
  readonly grams: number
}

const [period] = eggParts
const modern = eggParts.find(({ id }) => id === 'modern')!

/** An egg is broken for its yolk alone where that brings the mixture this much nearer, in g: a tea-spoonful. Judgement. */
const worthBreaking = 4

/**
 * The egg of today that weighs so much.
 *
 * @param grams in the shell
 */
export function eggOf(grams: number, { id, label, plural }: Pick<EggClassRow, 'id' | 'label' | 'plural'>): OwnEgg {
  return { unit: id, label, plural, white: grams * modern.white.best, yolk: grams * modern.yolk.best }
}

const around = (x: number): readonly number[] => [Math.floor(x), Math.ceil(x)]

/**
 * The eggs nearest in white and in yolk to what the receipt's come to.
 *
 * @param grams without the shell
 * @param counted as the receipt counts them, which says how much of it is white and how much yolk
 * @returns all noughts where the need is less than half an egg
 * @example crack(404, { whole: 10, yolks: 0, whites: 0 }, eggOf(50, { id: 'each', label: 'egg', plural: 'eggs' })).whole   // 9
 */
export function crack(grams: number, counted: EggCount, egg: OwnEgg): Cracked {
  const ofWhite = (counted.whole + counted.whites) * period!.white.best
  const ofYolk = (counted.whole + counted.yolks) * period!.yolk.best
  const wanted = { white: (grams * ofWhite) / (ofWhite + ofYolk), yolk: (grams * ofYolk) / (ofWhite + ofYolk) }
  let best: Cracked = { whole: 0, yolks: 0, whites: 0, grams: 0 }
  let least = Number.POSITIVE_INFINITY
  for (const whites of around(wanted.white / egg.white)) {
    for (const yolks of around(wanted.yolk / egg.yolk)) {
      const [white, yolk] = [whites * egg.white - wanted.white, yolks * egg.yolk - wanted.yolk]
      // White and yolk that stray the same way make the mixture heavier or lighter besides.
      const cost = Math.abs(white) + Math.abs(yolk) + Math.abs(white + yolk) / 2 + worthBreaking * Math.abs(whites - yolks)
      if (cost >= least) continue
      least = cost
      const whole = Math.min(whites, yolks)
      best = { whole, yolks: yolks - whole, whites: whites - whole, grams: whites * egg.white + yolks * egg.yolk }
    }
  }
  return best
}

const withArticle = (noun: string): string => (/^(?:[aeio]|EU)/.test(noun) ? `an ${noun}` : `a ${noun}`)

/** So many of a thing; nothing where there are none. */
export const some = (count: number, one: string, more: string): string => (count > 0 ? `${count} ${count === 1 ? one : more}` : '')

/** `1 yolk and 2 whites`. */
export const sayParts = (yolks: number, whites: number): string =>
  [some(yolks, 'yolk', 'yolks'), some(whites, 'white', 'whites')].filter(Boolean).join(' and ')

/** `2 UK medium eggs and 1 yolk`; `6 UK medium eggs, 7 yolks and 2 whites`. */
export function sayEggs({ whole, yolks, whites }: EggCount, { label, plural }: OwnEgg): string {
  const rest = sayParts(yolks, whites)
  if (whole + yolks + whites === 0) return `less than half ${withArticle(label)}`
  if (whole === 0) return `${rest} of ${yolks + whites === 1 ? withArticle(label) : plural}`
  return [some(whole, label, plural), rest].filter(Boolean).join(yolks > 0 && whites > 0 ? ', ' : ' and ')
}
