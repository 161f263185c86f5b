import type { Checked, Citation, Grade } from '../tables/index.js'
import { citeShort } from './cite.js'

/** One factor of a derivation, with who says so. */
export interface Step {
  readonly text: string
  readonly factor: string
  readonly grade: Grade
  readonly checked: Checked
  readonly sources: readonly Citation[]
}

/** A step as an answer has it: its sources as footnotes. Their full records are in the answer's `sources`. */
export interface AnswerStep extends Omit<Step, 'sources'> {
  readonly sources: readonly string[]
}

/**
 * A step as a reader is told it, with its sources as footnotes.
 *
 * @example loafWeight({ year: 1680 }).steps.map(tellStep)[0]?.factor   // '45 s a quarter'
 */
export function tellStep({ text, factor, grade, checked, sources }: Step): AnswerStep {
  return { text, factor, grade, checked, sources: sources.map(citeShort) }
}
