import type { AnswerCaution } from './answer.js'
import type { Assessment } from './assess.js'
import { type Caution, cautionsFor } from './cautions/index.js'
import { citeShort } from './cite/index.js'

/** A caution as an answer carries it. */
export function answerCaution({ id, title, text, source }: Caution): AnswerCaution {
  return { id, title, text, sources: source.map(citeShort) }
}

/** Warnings that a phrase touches, by its thing, its eggs and its heat. */
export function cautionsAbout({ question: { reading } }: Assessment): readonly AnswerCaution[] {
  const { thing, eggs, heat } = reading
  return cautionsFor({ things: thing ? [thing] : [], eggs: eggs !== null, ...(heat ? { heat } : {}) }).map(answerCaution)
}
