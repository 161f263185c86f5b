import { citeShort } from '../cite/index.js'
import type { Attested, Checked, Citation, Grade } from '../tables/index.js'

/** Who says so, as readers are shown it. */
export interface Cited {
  /** The footnote form of its sources. */
  readonly source: string
  readonly sources: readonly Citation[]
  readonly grade: Grade
  readonly checked: Checked
  readonly note: string | null
}

/** What a row says of its own worth. */
export function cited({ source, grade, checked, note }: Attested): Cited {
  return { source: source.map(citeShort).join('; '), sources: source, grade, checked, note: note ?? null }
}
