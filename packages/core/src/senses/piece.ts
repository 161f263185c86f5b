/** Pieces that receipts count: a nutmeg, a blade of mace, a race of ginger, the juice of a lemon; by what such a piece weighs. */
import { product, spread, unknown } from '../bands/index.js'
import { noAnswer, type PottleError } from '../error.js'
import { type PieceRow, pieces, type SpellRow } from '../tables/index.js'
import { keyOf } from './name.js'
import type { Question, Sense, SenseKind } from './sense.js'
import { insisted, notThen, stepFor, thingOf, type Weighed, weighSpells } from './spell.js'

/** The word that a piece is counted by; the empty word for whole things. */
const wordOf = (measure: string | null | undefined): string => (measure && measure !== 'none' ? keyOf(measure) : '')

/** By the word that they are counted by, then by the name of the thing. */
const byWord = new Map<string, Map<string, PieceRow>>()
for (const row of pieces) {
  const things = byWord.get(wordOf(row.measure)) ?? new Map<string, PieceRow>()
  for (const name of row.names) if (!things.has(keyOf(name))) things.set(keyOf(name), row)
  byWord.set(wordOf(row.measure), things)
}

/** A whole thing goes by its own name, and a part of it by both: *lemon juice*. The grating of a nutmeg is all of it. A blade or a sprig may be of anything of a kind. */
function rowFor(question: Question): PieceRow | undefined {
  const { thing, measure, part } = question.reading
  if (!thing) return undefined
  const word = wordOf(measure)
  const things = byWord.get(word)
  const kinds = word === '' || part ? [] : thingOf(question)
  const own = part ? [`${thing} ${part}`, ...(part === 'grating' ? [thing] : [])] : [thing]
  const names = [...own, ...kinds].map(keyOf)
  return names.map((name) => things?.get(name)).find((row) => row !== undefined)
}

/** Counted, or measured by a word for a piece. */
const counts = ({ reading: { kind } }: Question): boolean => kind === 'counted' || kind === 'measured'

/** Words for pieces that no other kind counts by. A loaf is bread unless the table has one of the thing. */
function isPieceWord({ reading }: Question): boolean {
  const word = wordOf(reading.measure)
  return word !== '' && word !== 'loaf' && byWord.has(word)
}

function unweighed({ reading }: Question): PottleError {
  const { measure, thing } = reading
  const known = [...new Set(byWord.get(wordOf(measure))?.values())].map(({ label }) => label).join(', ')
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
 * Pieces and whole things by their weight in g; juices by their volume in ml. Asked before vessels and weights, for a clove of garlic is no
 * clove of cheese.
 *
 * @throws PottleError `no-answer` for a piece that was not yet known
 * @example convert('a blade of mace', { year: 1750 }).value.best   // 0.6
 */
export const piece: SenseKind = {
  name: 'piece',
  answers: (question) => counts(question) && rowFor(question) !== undefined,
  dated: (question) => rowFor(question)!.spells,
  senses: (question) => {
    const row = rowFor(question)!
    const spells = weighSpells(row.spells, question.setting)
    if (spells.length === 0) throw notThen(row.label, row.spells, question.setting)
    return insisted(spells.map(senseOf), question)
  },
}

/**
 * Pieces of things that the tables have no weight for.
 *
 * @throws PottleError `no-answer`, naming the things of which the tables know such a piece
 */
export const unknownPiece: SenseKind = {
  name: 'piece',
  answers: (question) => counts(question) && isPieceWord(question),
  senses: (question) => {
    throw unweighed(question)
  },
}
