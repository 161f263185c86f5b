import type { AnswerStep } from '@pottle/core'
import { ShortSources, sayGrade } from './sources.js'

/** A step as a sentence begins, with its units as they are printed. */
const begun = (text: string): string => `${text.charAt(0).toUpperCase()}${text.slice(1)}`
const printed = (factor: string): string => factor.replace(/\bin3\b/g, 'in³').replace(/\bdeg([CF])\b/g, '°$1')

/** The factors of a derivation, each with who says so and how well. */
export function Steps({ steps }: { steps: readonly AnswerStep[] }) {
  return (
    <ol class="steps">
      {steps.map(({ text, factor, grade, checked, sources }) => (
        <li>
          <span>{begun(text)}</span>
          <span class="factor">{printed(factor)}</span>
          <span class="who">
            {sayGrade(grade, checked)}
            {sources.length > 0 && ': '}
            <ShortSources texts={sources} />
          </span>
        </li>
      ))}
    </ol>
  )
}
