/** Rates: *to every gallon of water three pounds of honey*, where the receipt has said how many gallons there are. */
import { type Found, type Range, ratioOfMeasures } from '../reading/index.js'
import { findGood } from '../tables/index.js'

/** A statement of the receipt, and in what words it was told for each of something; null where it stands for itself. */
export interface Rated {
  readonly found: Found
  readonly per: string | null
  /** It is made of what went before, and how much of it there is the receipt does not say. */
  readonly made?: boolean
}

interface Rate {
  /** How often what is told goes in. */
  readonly by: Range
  readonly per: string
}

const leads = /\b(?:to|for|in|unto|upon)\s+(?:about\s+)?$/i
const beginsRate = /^(?:every|euery|each|eche?|ilk)\b/i
const joins = /^\s*,?\s*(?:to|for|in|unto|upon)\s+$/i

/** *to every gallon of water*; *of each a handful* is none. */
function isRate(text: string, { kind, each, things, amount, phrase, start }: Found): boolean {
  const alone = kind === 'measured' && each === true && things === undefined && amount !== null
  return alone && beginsRate.test(phrase) && leads.test(text.slice(Math.max(0, start - 16), start))
}

/** *every pound of fruit* speaks of the cherries. */
const isOf = (thing: string | null, other: string | null): boolean =>
  other !== null && thing !== null && (other === thing || (findGood(other)?.classes.includes(thing) ?? false))

/** What a statement measures: its own words, or as much as what it is likened to. */
function measuredAs({ kind, measure, amount, reference }: Found): { readonly measure: string; readonly amount: Range } | null {
  if (amount === null) return null
  if (kind === 'measured') return { measure: measure ?? '', amount }
  const liken = measure === 'equal-weight' || measure === 'as-much'
  if (!liken || reference?.kind !== 'measured' || !reference.amount) return null
  const { low, high } = reference.amount
  return { measure: reference.measure ?? '', amount: { low: low * amount.low, high: high * amount.high } }
}

/** How many times what the rate is told for was asked for before; null where no amount of it was. */
function timesOf(rate: Found, earlier: readonly Rated[]): Range | null {
  for (let i = earlier.length - 1; i >= 0; i--) {
    const known = isOf(rate.thing, earlier[i]!.found.thing) ? measuredAs(earlier[i]!.found) : null
    const ratio = known === null ? 0 : ratioOfMeasures(known.measure, rate.measure ?? '')
    if (known !== null && ratio > 0)
      return { low: (known.amount.low * ratio) / rate.amount!.high, high: (known.amount.high * ratio) / rate.amount!.low }
  }
  return null
}

/** Whether the words between two statements lead on from one to the other: a sentence ends a rate, and so does a new clause that does something. */
const goesOn = (between: string): boolean => !/[.!?](?:\s|$)/.test(between) && (!/[;:]/.test(between) || !/[a-z]{4}/i.test(between))

const digits = (times: number): string => String(Number(times.toPrecision(3)))

function saidOf(words: string, { low, high }: Range): string {
  const times = low === high ? digits(low) : `${digits(low)} to ${digits(high)}`
  return `Told for “${words}”, and so taken ${times} times.`
}

const unsaid = 'What goes with it is told for so much, and the receipt does not say how much there is.'

function multiplied(found: Found, { by, per }: Rate): Rated {
  const { amount, eggs, reference } = found
  // What is as much as another has been multiplied with it.
  if (amount === null || reference || (by.low === 1 && by.high === 1)) return { found, per: null }
  const parts = eggs && { whole: eggs.whole * by.low, yolks: eggs.yolks * by.low, whites: eggs.whites * by.low }
  return { found: { ...found, amount: { low: amount.low * by.low, high: amount.high * by.high }, eggs: parts }, per }
}

/**
 * The statements of a receipt as many times as they go in. A rate for something whose amount is known is no line of its own; where it is
 * not known, the receipt is told for one of it, and the rate stays.
 */
export function rated(text: string, measures: readonly Found[]): readonly Rated[] {
  const told: Rated[] = []
  let rate: Rate | null = null
  let end = 0
  for (const found of measures) {
    const between = text.slice(end, found.start)
    if (!goesOn(between)) rate = null
    const isOne = isRate(text, found)
    const by = isOne ? timesOf(found, told) : null
    if (by !== null) {
      const last = told.at(-1)
      const next: Rate = { by, per: saidOf(found.phrase, by) }
      const behind = joins.test(between) && last !== undefined
      if (behind) told[told.length - 1] = multiplied(last.found, next)
      rate = behind ? null : next
    } else if (isOne && told.length > 0) told.push({ found, per: unsaid, made: true })
    else told.push(rate === null ? { found, per: null } : multiplied(found, rate))
    end = found.end
  }
  return told
}
