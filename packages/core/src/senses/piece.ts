/** Pieces that receipts count: a nutmeg, a blade of mace, a race of ginger, the juice of a lemon; by what such a piece weighs. */
import { product, spread, unknown } from '../bands/index.js'
import { noAnswer, type PottleError } from '../error.js'
import { type PieceRow, pieces, type SpellRow } from '../tables/index.js'
import { keyOf } from './name.js'
import type { Question, Sense, SenseKind } from './sense.js'
import { insisted, notThen, stepFor, thingOf, type Weighed, weighSpells } from './spell.js'

/** The word that a piece is counted by; the empty word for whole things. */
const wordOf = (measure: string | null | undefined): string => (measure && measure !== 'none' ? keyOf(measure) : '')

const byWord = new Map<string, PieceRow[]>()
for (const row of pieces) byWord.set(wordOf(row.measure), [...(byWord.get(wordOf(row.measure)) ?? []), row])

/** A whole thing goes by its own name; a blade or a sprig may be of anything of a kind. */
function rowFor(question: Question): PieceRow | undefined {
  const { thing, measure } = question.reading
  if (!thing) return undefined
  const word = wordOf(measure)
  const rows = byWord.get(word) ?? []
  const names = [thing, ...(word === '' ? [] : thingOf(question))].map(keyOf)
  for (const name of names) {
    const row = rows.find((one) => one.names.some((other) => keyOf(other) === name))
    if (row) return row
  }
  return undefined
}

/** Words for pieces that no other kind counts by. A loaf is bread unless the table has one of the thing. */
function isPieceWord({ reading }: Question): boolean {
  const word = wordOf(reading.measure)
  return word !== '' && word !== 'loaf' && byWord.has(word)
}

function unweighed({ reading }: Question): PottleError {
  const { measure, thing } = reading
  const known = (byWord.get(wordOf(measure)) ?? []).map(({ label }) => label).join(', ')
  return noAnswer('thing', `the tables do not say what a ${measure} of ${thing ?? 'a thing not named'} weighs; they know ${known}`)
}

function senseOf({ row: spell, weight }: Weighed<SpellRow>): Sense {
  const quantity = spell.quantity ?? 'mass'
  return {
    id: spell.id,
    label: spell.label,
    likelihood: weight,
    quantity,
    value: product(1, unknown(`piece:${spell.id}`, spread(spell))),
    steps: [stepFor(spell, spell, quantity)],
  }
}

/**
 * Pieces and whole things by their weight in g; juices by their volume in ml.
 *
 * @throws PottleError `no-answer` for a piece of a thing that the tables have no weight for
 * @example convert('a blade of mace', { year: 1750 }).value.best   // 0.6
 */
export const piece: SenseKind = {
  name: 'piece',
  answers: (question) => {
    const { kind } = question.reading
    return (kind === 'counted' || kind === 'measured') && (rowFor(question) !== undefined || isPieceWord(question))
  },
  senses: (question) => {
    const row = rowFor(question)
    if (!row) throw unweighed(question)
    const spells = weighSpells(row.spells, question.setting)
    if (spells.length === 0) throw notThen(row.label, row.spells, question.setting)
    return insisted(spells.map(senseOf), question)
  },
}
