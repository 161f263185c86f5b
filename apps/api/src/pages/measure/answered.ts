import { type Answer, convert, PottleError } from '@pottle/core'
import type { Asked } from '../parts/asked.js'

/** An answer, or why there is none. */
export type Answered = { readonly answer: Answer } | { readonly error: PottleError }

/** What the form asks of the library. */
export function answered(asked: Asked): Answered {
  const { phrase = '', year, place, thing, standard, coverage } = asked
  try {
    return { answer: convert(phrase, { year, place, thing, standard, coverage: coverage === undefined ? undefined : Number(coverage) }) }
  } catch (error) {
    if (error instanceof PottleError) return { error }
    throw error
  }
}
