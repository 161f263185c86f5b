import type { AnswerSource } from './answer.js'
import { citeFull, type Step } from './cite/index.js'
import { findSource } from './tables/index.js'

const references = new Map<string, AnswerSource>()

/** A source's full reference, made once: the tables do not change. */
function referenceTo(id: string): AnswerSource {
  const known = references.get(id)
  if (known) return known
  const reference = { id, citation: citeFull(findSource(id)!) }
  references.set(id, reference)
  return reference
}

/** The sources that steps rest on, in the order in which they are met, each once. */
export function sourcesOf(steps: readonly Step[]): readonly AnswerSource[] {
  const ids = new Set(steps.flatMap(({ sources }) => sources.map(({ id }) => id)))
  return [...ids].map(referenceTo)
}
