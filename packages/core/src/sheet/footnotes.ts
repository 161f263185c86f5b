import { citeFull, citeShort } from '../cite/index.js'
import { type Citation, findSource } from '../tables/index.js'
import type { SheetSource } from './sheet.js'

/** Numbers sources in the order in which a sheet first leans on them. */
export interface Footnotes {
  /** The numbers of some citations, each once. */
  cite(citations: readonly Citation[]): readonly number[]
  /** Every footnote, with the places in the source that were leant on. */
  list(): readonly SheetSource[]
}

/** Places that would make a footnote longer than the eye takes in stand in the full citation alone. */
const longestPlace = 60

interface Note {
  readonly number: number
  readonly places: Set<string>
}

export function startFootnotes(): Footnotes {
  const notes = new Map<string, Note>()
  const numberOf = ({ id, at }: Citation): number => {
    const note = notes.get(id) ?? { number: notes.size + 1, places: new Set() }
    notes.set(id, note)
    if (at) note.places.add(at)
    return note.number
  }
  return {
    cite: (citations) => [...new Set(citations.map(numberOf))].sort((a, b) => a - b),
    list: () =>
      [...notes].map(([id, { number, places }]) => {
        const source = findSource(id)
        const whole = source ? citeFull(source) : id
        const at = [...places].join('; ')
        const citation = at ? `${whole.replace(/\.$/, '')}: ${at}.` : whole
        return { number, id, short: citeShort({ id, ...(at && at.length <= longestPlace ? { at } : {}) }), citation }
      }),
  }
}
