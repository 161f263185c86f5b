import type { Checked } from '@pottle/core'
import { type AnswerSource, citeShort, type Grade } from '@pottle/core'

/** What a grade promises. */
export const gradeWords: Readonly<Record<Grade, string>> = {
  statute: 'by statute',
  standard: 'by a standard',
  measured: 'as measured',
  handbook: 'by a handbook',
  scholarship: 'by scholarship',
  practice: 'by common practice',
  judgement: 'our judgement',
}

export const checkedWords: Readonly<Record<Checked, string>> = {
  read: 'read in the source',
  memory: 'from memory, not looked up',
  none: '',
}

/** How well something is attested, in words: `by statute, read in the source`. */
export const sayGrade = (grade: Grade, checked: Checked): string => [gradeWords[grade], checkedWords[checked]].filter(Boolean).join(', ')

export const sourceAddress = (id: string): string => `/sources/${encodeURIComponent(id)}`

/** A footnote form, linked to its source where it is one of those known. */
export function ShortSource({ text, sources }: { text: string; sources: readonly AnswerSource[] }) {
  const found = sources.find(({ id }) => {
    const short = citeShort({ id })
    return text === short || text.startsWith(`${short}, `)
  })
  return found ? <a href={sourceAddress(found.id)}>{text}</a> : <span>{text}</span>
}

/** Footnote forms, one after another. */
export function ShortSources({ texts, sources }: { texts: readonly string[]; sources: readonly AnswerSource[] }) {
  return (
    <>
      {texts.map((text, i) => (
        <>
          {i > 0 && '; '}
          <ShortSource text={text} sources={sources} />
        </>
      ))}
    </>
  )
}

/** Full references, each with a page of its own. */
export function SourceList({ sources }: { sources: readonly AnswerSource[] }) {
  return (
    <ul class="plain small">
      {sources.map(({ id, citation }) => (
        <li>
          <a href={sourceAddress(id)}>{citation}</a>
        </li>
      ))}
    </ul>
  )
}
