import type { AnswerCaution } from './answer.js'
import type { Assessment } from './assess.js'

/** Warnings that a phrase and its thing touch. */
export function cautionsAbout(_assessment: Assessment, _phrase: string): readonly AnswerCaution[] {
  return []
}
