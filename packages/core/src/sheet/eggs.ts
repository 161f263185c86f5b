/** Eggs that a person can crack: whole ones, yolks alone, whites alone, and what is left over. */
import type { EggParts } from '../reading/index.js'
import { type EggClassRow, eggParts } from '../tables/index.js'
import type { CheckedPlan } from './plan.js'
import type { SheetEggs } from './sheet.js'

/** The cook's own egg. */
export interface OwnEgg {
  readonly unit: string
  readonly label: string
  readonly plural: string
  /** g of white and of yolk in one. */
  readonly white: number
  readonly yolk: number
}

const [period] = eggParts
const modern = eggParts.find(({ id }) => id === 'modern')!
/** An egg is broken for its yolk alone where that brings the mixture this much nearer, in g: a tea-spoonful. Judgement. */
const worthBreaking = 4

/** The egg of the plan: of its class, or of the weight that the cook fixed. */
export function ownEgg({ eggClass, fixed }: CheckedPlan): OwnEgg {
  const weight = fixed.egg ?? eggClass.best
  const named: Pick<EggClassRow, 'id' | 'label' | 'plural'> =
    fixed.egg === null ? eggClass : { id: 'each', label: `egg of ${fixed.egg} g`, plural: `eggs of ${fixed.egg} g` }
  return { unit: named.id, label: named.label, plural: named.plural, white: weight * modern.white.best, yolk: weight * modern.yolk.best }
}

/** Parts to crack, and their grams. */
export interface Cracked extends EggParts {
  readonly grams: number
}

const around = (x: number): readonly number[] => [Math.floor(x), Math.ceil(x)]

/**
 * The eggs nearest in white and in yolk to what the receipt's come to.
 *
 * @param grams without the shell, for this plan
 * @param parts as the receipt counts them, which says how much of it is white and how much yolk
 * @returns all noughts where the need is less than half an egg
 */
export function crack(grams: number, parts: EggParts, egg: OwnEgg): Cracked {
  const ofWhite = (parts.whole + parts.whites) * period!.white.best
  const ofYolk = (parts.whole + parts.yolks) * period!.yolk.best
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

const some = (count: number, one: string, more: string): string => (count > 0 ? `${count} ${count === 1 ? one : more}` : '')

const withArticle = (noun: string): string => (/^(?:[aeio]|EU)/.test(noun) ? `an ${noun}` : `a ${noun}`)

/** `2 UK medium eggs and 1 yolk`. */
export function sayEggs({ whole, yolks, whites }: EggParts, { label, plural }: OwnEgg): string {
  const rest = [some(yolks, 'yolk', 'yolks'), some(whites, 'white', 'whites')].filter(Boolean).join(' and ')
  if (whole === 0) return `${rest} of ${yolks + whites === 1 ? withArticle(label) : plural}`
  return [some(whole, label, plural), rest].filter(Boolean).join(' and ')
}

/** What all lines of eggs come to at the bowl; null where there are none. */
export function sumEggs(lines: readonly EggParts[], egg: OwnEgg): SheetEggs | null {
  if (lines.length === 0) return null
  const add = (part: keyof EggParts): number => lines.reduce((sum, line) => sum + line[part], 0)
  const [whole, yolks, whites] = [add('whole'), add('yolks'), add('whites')]
  const cracked = whole + Math.max(yolks, whites)
  const left = { yolks: Math.max(0, whites - yolks), whites: Math.max(0, yolks - whites) }
  const over = [some(left.yolks, 'yolk', 'yolks'), some(left.whites, 'white', 'whites')].filter(Boolean).join(' and ')
  const tail = over ? `; ${over} left over` : ''
  const text = `crack ${some(cracked, egg.label, egg.plural) || 'none'}: ${sayEggs({ whole, yolks, whites }, egg)}${tail}`
  return {
    unit: egg.unit,
    label: egg.label,
    whole,
    yolks,
    whites,
    cracked,
    left,
    text: cracked > 0 ? text : 'less than half an egg: beat one and weigh it',
  }
}
