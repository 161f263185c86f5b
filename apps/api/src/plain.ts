import { type Band, type Citation, citeFull, citeShort, findSource } from '@pottle/core'

/** Footnote forms of citations, as steps and rows carry them. */
export const shortly = (citations: readonly Citation[]): string[] => citations.map(citeShort)

/** The sources that citations name, each once, as the end of an answer lists them. */
export function sourceNotes(citations: Iterable<Citation>): { id: string; citation: string }[] {
  const ids = new Set([...citations].map(({ id }) => id))
  return [...ids].map((id) => ({ id, citation: citeFull(findSource(id)!) }))
}

/** A band in degC as a value. */
export function temperature({ low, best, high, coverage }: Band) {
  return { quantity: 'temperature' as const, unit: 'degC', low, best, high, coverage }
}

/** A row or step without its citation records; `source` or `sources` have their footnote forms. */
export function withoutRecords<Row extends { readonly sources: readonly Citation[] }>({ sources: _, ...row }: Row): Omit<Row, 'sources'> {
  return row
}
