import { comparisons, lengths, type SizedRow } from '../tables/index.js'
import { byKey, keyOf } from './name.js'
import type { Question, SenseKind } from './sense.js'
import { sensesOfSized } from './sized.js'

const index = byKey(lengths)
const solids = byKey(comparisons)

/** *The thickness of a walnut* is the breadth of the walnut that *the bigness of a walnut* means. */
function across(key: string): SizedRow | undefined {
  const solid = solids().get(key)
  const spells = solid?.forms.flatMap(({ width, ...form }) => (width ? [{ ...form, ...width, label: `${solid.label} across` }] : [])) ?? []
  return solid && spells.length > 0 ? { ...solid, spells } : undefined
}

function lengthIn({ reading }: Question): SizedRow | undefined {
  const { kind, measure } = reading
  if (!measure || (kind !== 'length' && kind !== 'comparison')) return undefined
  // *The breadth of a straw* is in the table as it stands; *the thickness of a nail* only as a nail.
  const bare = measure.toLowerCase().replace(/^(?:the )?(?:thickness|breadth|width|depth) of (?:a |an |the )?/, '')
  const named = index().get(keyOf(measure)) ?? index().get(keyOf(bare))
  return named ?? (kind === 'length' || bare !== measure.toLowerCase() ? across(keyOf(bare)) : undefined)
}

/**
 * Lengths, in mm: inches and ells, fingers and hands, the thickness of a straw and the breadth of a saucer.
 *
 * @example convert('two inches', { year: 1700 }).value.best   // 50.8
 */
export const length: SenseKind = {
  name: 'length',
  answers: (question) => lengthIn(question) !== undefined,
  senses: (question) => sensesOfSized(lengthIn(question)!, 'length', question),
}
