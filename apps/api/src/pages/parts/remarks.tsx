import type { AnswerCaution } from '@pottle/core'
import { unbroken } from './figures.js'
import { ShortSources } from './sources.js'

/** What the reader should know before using the figure. */
export function Notes({ notes }: { notes: readonly string[] }) {
  if (notes.length === 0) return null
  return (
    <ul class="notes">
      {notes.map((note) => (
        <li>{unbroken(note)}</li>
      ))}
    </ul>
  )
}

/** Warnings, plainly. */
export function Cautions({ cautions }: { cautions: readonly AnswerCaution[] }) {
  return (
    <>
      {cautions.map(({ title, text, sources: texts }) => (
        <aside class="caution" aria-label={`Caution: ${title}`}>
          <h2>Caution: {title}</h2>
          <p>{text}</p>
          {texts.length > 0 && (
            <p class="small quiet">
              <ShortSources texts={texts} />
            </p>
          )}
        </aside>
      ))}
    </>
  )
}
