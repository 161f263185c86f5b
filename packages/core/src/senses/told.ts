/** Number words that meant more than they say: a hundred of eggs was six score. */
import type { Step } from '../cite/index.js'
import type { Reading } from '../reading/index.js'
import { findMeasure, type MeasureRow, numbers } from '../tables/index.js'
import { count } from './count.js'
import type { Question } from './sense.js'

/** One meaning of a number word, as its trade counted. */
export interface Told {
  readonly id: string
  readonly label: string
  /** How many for each one that the amount counts: 1.2 of a hundred that is six score. */
  readonly each: number
  readonly likelihood: number
  readonly step: Step
}

/** The number word that a reading counts by; undefined for a plain count. */
export function taleOf({ tale, measure }: Reading): MeasureRow | undefined {
  const name = tale ?? measure
  const row = name ? findMeasure(name) : undefined
  return row?.kind === 'count' ? row : undefined
}

/** What a number word says on its face: 100 of *long hundred*. */
function onItsFace(tale: string): number {
  const word = tale.slice(tale.lastIndexOf(' ') + 1)
  return Number(numbers.find(({ id }) => id === word)?.value ?? 1)
}

/**
 * Every meaning of the number word that a thing is counted by, the likeliest first; none for a plain count. Where a reading names the tale
 * beside its number (100 eggs, by the hundred), the amount is in ones; where the tale is the measure itself, the amount counts tales.
 */
export function toldBy({ reading, setting }: Question): readonly Told[] {
  const measure = taleOf(reading)
  if (!measure) return []
  const face = reading.tale === undefined ? 1 : onItsFace(reading.tale)
  const senses = count.senses({ reading: { ...reading, qualifier: null }, measure, setting })
  return senses
    .filter(({ quantity }) => quantity === 'count')
    .map(({ id, label, likelihood, exact, steps }) => ({ id, label, each: Number(exact) / face, likelihood, step: steps[0]! }))
}

/** Whether a tale says no more than the plain number: a dozen is twelve. */
export const saysPlainly = (told: readonly Told[]): boolean => told.every(({ each }) => each === 1)
