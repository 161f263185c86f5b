import type { AnswerSource, AnswerStep } from '@pottle/core'
import { ShortSources, sayGrade } from './sources.js'

/** The factors of a derivation, each with who says so and how well. */
export function Steps({ steps, sources }: { steps: readonly AnswerStep[]; sources: readonly AnswerSource[] }) {
  return (
    <ol class="steps">
      {steps.map(({ text, factor, grade, checked, sources: texts }) => (
        <li>
          <span>{text}</span>
          <span class="factor">{factor}</span>
          <span class="who">
            {sayGrade(grade, checked)}
            {texts.length > 0 && ': '}
            <ShortSources texts={texts} sources={sources} />
          </span>
        </li>
      ))}
    </ol>
  )
}
