/** Number words that meant more than they say: a hundred of eggs was six score. */
import { times } from '../bands/index.js'
import type { Step } from '../cite/index.js'
import type { Reading } from '../reading/index.js'
import { findMeasure, type MeasureRow, numbers } from '../tables/index.js'
import { count } from './count.js'
import type { Question, Sense } from './sense.js'

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

/** What a number word comes to for a thing: numbers of it, or of goods that are weighed a weight. */
function sensesOf({ reading, setting }: Question, measure: MeasureRow): readonly Sense[] {
  return count.senses({ reading: { ...reading, qualifier: null }, measure, setting })
}

/** *A hundred of raisins* is a hundredweight: its senses for each one that the amount counts; none for what is told one by one. */
export function weighedBy(question: Question): readonly Sense[] {
  const { tale } = question.reading
  const measure = taleOf(question.reading)
  if (tale === undefined || !measure) return []
  const each = 1 / onItsFace(tale)
  const senses = sensesOf(question, measure)
  if (senses.some(({ quantity }) => quantity === 'count')) return []
  return senses.map(({ exact, ...sense }) => ({
    ...sense,
    value: times(sense.value, each),
    weighed: true as const,
    ...(exact === undefined ? {} : { exact: String(Number(exact) * each) }),
  }))
}

/**
 * Every meaning of the number word that a thing is counted by, the likeliest first; none for a plain count. Where a reading names the tale
 * beside its number (100 eggs, by the hundred), the amount is in ones; where the tale is the measure itself, the amount counts tales.
 */
export function toldBy(question: Question): readonly Told[] {
  const { reading } = question
  const measure = taleOf(reading)
  if (!measure) return []
  const face = reading.tale === undefined ? 1 : onItsFace(reading.tale)
  return sensesOf(question, measure)
    .filter(({ quantity }) => quantity === 'count')
    .map(({ id, label, likelihood, exact, steps }) => ({ id, label, each: Number(exact) / face, likelihood, step: steps[0]! }))
}

/** Whether a tale says no more than the plain number: a dozen is twelve. */
export const saysPlainly = (told: readonly Told[]): boolean => told.every(({ each }) => each === 1)
