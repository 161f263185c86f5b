/**
 * Spoons, cups, glasses and hands: vessels that no law sized, by what they held at one time and another.
 *
 * Dry things stood above the rim of a spoon: before level measuring was taught (Farmer, Boston Cooking-School Cook Book, 1896) a spoonful
 * of flour was a rounded one. How far above is a factor on the level content (`heaps`).
 */

import { type Expression, product, spread, unknown } from '../bands/index.js'
import type { Step } from '../cite/index.js'
import { noAnswer, type PottleError } from '../error.js'
import { type HeapRow, heaps, type SpellRow, type VesselRow, vessels } from '../tables/index.js'
import { byKey, keyOf } from './name.js'
import type { Question, Sense, SenseKind } from './sense.js'
import { insisted, notThen, stepFor, thingOf, type Weighed, weighSpells } from './spell.js'

const index = byKey(vessels)

interface Named {
  readonly vessel: VesselRow
  /** The word in front belongs to the name: *a large wine-glass*, *a good pinch*. */
  readonly qualified: boolean
}

function vesselIn({ reading: { kind, measure, qualifier } }: Question): Named | undefined {
  if (!measure || (kind !== 'measured' && kind !== 'comparison')) return undefined
  const plain = index().get(keyOf(measure))
  const own = qualifier && plain ? index().get(keyOf(`${qualifier} ${measure}`)) : undefined
  const vessel = own ?? plain
  return vessel && { vessel, qualified: own !== undefined }
}

/** How a measure of this thing was heaped: as the words say, else as the time did. Nothing for liquids and for hands. */
function heapsFor(vessel: VesselRow, question: Question, thing: readonly string[]): readonly Weighed<HeapRow>[] {
  const rows = heaps.filter(({ shape }) => shape === vessel.shape)
  const word = question.reading.qualifier
  const asked = word ? rows.filter(({ names }) => names.includes(word)) : []
  if (asked.length > 0) return weighSpells(asked, question.setting)
  if (vessel.filled) return []
  return weighSpells(
    rows.filter(({ names }) => names.length === 0),
    question.setting,
    thing,
  )
}

function heldBy(spell: SpellRow, heap: HeapRow | undefined): Expression {
  const held = unknown(`vessel:${spell.id}`, spread(spell))
  return heap ? product(1, held, unknown(`heap:${heap.id}`, spread(heap.factor))) : product(1, held)
}

function senseOf({ row: spell, weight }: Weighed<SpellRow>, heap: Weighed<HeapRow> | undefined, { shape }: VesselRow): Sense {
  const quantity = spell.quantity ?? 'volume'
  const steps: Step[] = [stepFor(spell, spell, quantity)]
  if (heap) steps.push(stepFor(heap.row, heap.row.factor, 'factor'))
  return {
    id: heap ? `${spell.id}.${heap.row.id}` : spell.id,
    label: heap ? `${spell.label}; ${heap.row.label}` : spell.label,
    likelihood: weight * (heap?.weight ?? 1),
    quantity,
    value: heldBy(spell, heap?.row),
    steps,
    choice: `vessel:${spell.id.split('.')[0]}`,
    standard: spell.id,
    shape,
  }
}

function unsized({ label, unsized: why }: VesselRow): PottleError {
  return noAnswer('phrase', `nobody knows how much a ${label} held. ${why?.note ?? ''} Give a measure of the thing instead`)
}

/** Each spell with each way of heaping that holds in its own years: an early spoon is not given a late heap. */
function pairs(vessel: VesselRow, question: Question, thing: readonly string[]): readonly Sense[] {
  const spells = weighSpells(vessel.spells, question.setting, thing)
  if (spells.length === 0) throw notThen(`the ${vessel.label}`, vessel.spells, question.setting)
  const ways = heapsFor(vessel, question, thing)
  return spells.flatMap((spell) => {
    const { years } = spell.row
    const inTime = ways.filter(({ row }) => !years || !row.years || (row.years[0] <= years[1] && years[0] <= row.years[1]))
    const total = inTime.reduce((sum, { weight }) => sum + weight, 0)
    if (spell.row.quantity === 'mass' || total === 0) return [senseOf(spell, undefined, vessel)]
    return inTime.map(({ row, weight }) => senseOf(spell, { row, weight: weight / total }, vessel))
  })
}

/**
 * Spoonfuls, cupfuls, glassfuls and handfuls: volume in ml, or mass in g where a handful of that thing has been weighed.
 *
 * @throws PottleError `no-answer` for a vessel that was not yet in use, or that nobody sized
 * @example convert('a table-spoonful of vinegar', { year: 1830 }).value.best   // 14.787
 */
export const vessel: SenseKind = {
  name: 'vessel',
  answers: (question) => !question.measure && vesselIn(question) !== undefined,
  dated: (question) => [...vesselIn(question)!.vessel.spells, ...heaps],
  senses: (question) => {
    const { vessel: row, qualified } = vesselIn(question)!
    if (row.spells.length === 0) throw unsized(row)
    const senses = pairs(row, question, thingOf(question)).map((sense) => (qualified ? { ...sense, qualified } : sense))
    return insisted(
      senses.sort((a, b) => b.likelihood - a.likelihood),
      question,
    )
  },
}
