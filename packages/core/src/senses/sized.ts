import { constant, product, spread, unknown } from '../bands/index.js'
import type { Quantity, SizedRow, SpellRow } from '../tables/index.js'
import type { Question, Sense } from './sense.js'
import { insisted, notThen, stepFor, thingOf, type Weighed, weighSpells } from './spell.js'

function senseOf(spell: Weighed<SpellRow>, quantity: Quantity): Sense {
  const { row, weight } = spell
  const sure = row.low === row.high
  return {
    id: row.id,
    label: row.label,
    likelihood: weight,
    quantity,
    value: sure ? constant(row.best) : product(1, unknown(`${quantity}:${row.id}`, spread(row))),
    ...(sure ? { exact: String(row.best) } : {}),
    steps: [stepFor(row, row, quantity)],
  }
}

/**
 * The senses of a measure that the table sizes outright: its spells in the setting, in the unit of the quantity.
 *
 * @throws PottleError `no-answer` where the measure was not in use then
 */
export function sensesOfSized(row: SizedRow, quantity: Quantity, question: Question): readonly Sense[] {
  const spells = weighSpells(row.spells, question.setting, thingOf(question))
  if (spells.length === 0) throw notThen(row.label, row.spells, question.setting)
  return insisted(
    spells.map((spell) => senseOf(spell, spell.row.quantity ?? quantity)),
    question,
  )
}
