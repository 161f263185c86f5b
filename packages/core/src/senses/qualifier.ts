import { type Expression, spread, times, unknown } from '../bands/index.js'
import type { Step } from '../cite/index.js'
import { type MeasureKind, type QualifierRow, qualifiers } from '../tables/index.js'
import type { Sense } from './sense.js'

const byWord = new Map<string, QualifierRow[]>()
for (const row of qualifiers) byWord.set(row.word ?? row.id, [...(byWord.get(row.word ?? row.id) ?? []), row])

/** The row of a word for a kind of measure: one for that very shape of vessel before one for any. */
function rowFor(word: string, kind: string, shape: Sense['shape']): QualifierRow | undefined {
  const rows = byWord.get(word)?.filter(({ kinds }) => kinds.length === 0 || kinds.includes(kind as MeasureKind)) ?? []
  return rows.find(({ shapes }) => shape !== undefined && shapes?.includes(shape)) ?? rows.find(({ shapes }) => !shapes)
}

function stepFor(row: QualifierRow): Step {
  const { low, best, high } = row.factor
  const factor = best === 1 ? `${low} to ${high}` : `${best} (${low} to ${high})`
  return { text: row.note ?? row.label, factor, grade: row.grade, checked: row.checked, sources: row.source }
}

/**
 * A sense of a measure that a word makes larger, smaller or less sure: *a good pint*, *about a pound*.
 * A word that does not bear on this kind of measure leaves the sense as it was: a pound cannot be large.
 */
export function qualify(sense: Sense, qualifier: string | null, kind: string): Sense {
  const row = qualifier && !sense.qualified ? rowFor(qualifier, kind, sense.shape) : undefined
  if (!row) return sense
  const value: Expression = times(sense.value, unknown(`qualifier:${row.id}`, spread(row.factor)))
  const { exact: _, ...rest } = sense
  return { ...rest, value, steps: [...sense.steps, stepFor(row)] }
}
