import type { Checked } from '@pottle/core'
import { type AnswerSource, type Grade, sources } from '@pottle/core'

/** What a grade promises. */
const gradeWords: Readonly<Record<Grade, string>> = {
  statute: 'by statute',
  standard: 'by a standard',
  measured: 'as measured',
  handbook: 'by a handbook',
  scholarship: 'by scholarship',
  practice: 'by common practice',
  judgement: 'our judgement',
}

const checkedWords: Readonly<Record<Checked, string>> = {
  read: 'read in the source',
  memory: 'from memory, not looked up',
  none: '',
}

/** How well something is attested, in words: `by statute, read in the source`. */
export const sayGrade = (grade: Grade, checked: Checked): string => [gradeWords[grade], checkedWords[checked]].filter(Boolean).join(', ')

export const sourceAddress = (id: string): string => `/sources/${encodeURIComponent(id)}`

/** The longest first, so that a form which begins like another is not taken for it. */
const byShort = sources.map(({ id, custom }) => ({ id, short: custom.short })).sort((a, b) => b.short.length - a.short.length)
const known = new Map<string, string | undefined>()

/** The source that a footnote form speaks of: *Digby, Closet Opened (1669), p. 3*. */
export function sourceOf(text: string): string | undefined {
  if (!known.has(text)) known.set(text, byShort.find(({ short }) => text === short || text.startsWith(`${short}, `))?.id)
  return known.get(text)
}

/** A footnote form, linked to its source. */
function ShortSource({ text }: { text: string }) {
  const id = sourceOf(text)
  return id ? <a href={sourceAddress(id)}>{text}</a> : <span>{text}</span>
}

/** Footnote forms, one after another. */
export function ShortSources({ texts }: { texts: readonly string[] }) {
  return (
    <>
      {texts.map((text, i) => (
        <>
          {i > 0 && '; '}
          <ShortSource text={text} />
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
