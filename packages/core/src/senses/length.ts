import { lengths, type SizedRow } from '../tables/index.js'
import { byKey, keyOf } from './name.js'
import type { Question, SenseKind } from './sense.js'
import { sensesOfSized } from './sized.js'

const index = byKey(lengths)

function lengthIn({ reading }: Question): SizedRow | undefined {
  const { kind, measure } = reading
  if (!measure || (kind !== 'length' && kind !== 'comparison')) return undefined
  // *The breadth of a straw* is in the table as it stands; *the thickness of a nail* only as a nail.
  const bare = measure.toLowerCase().replace(/^(?:the )?(?:thickness|breadth|width|depth) of (?:a |an |the )?/, '')
  const row = index.get(keyOf(measure)) ?? (bare === measure.toLowerCase() ? undefined : index.get(keyOf(bare)))
  return kind === 'length' || bare !== measure.toLowerCase() ? row : undefined
}

/**
 * Lengths, in mm: inches and ells, fingers and hands, and the thickness of a straw.
 *
 * @example length.name   // 'length'
 */
export const length: SenseKind = {
  name: 'length',
  answers: (question) => lengthIn(question) !== undefined,
  senses: (question) => sensesOfSized(lengthIn(question)!, 'length', question),
}
