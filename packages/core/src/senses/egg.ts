/** Eggs, in grams without the shell: how heavy an egg was, by bird and date, and how much of it is white and yolk. */

import { exact, spread, times, unknown, type Weighted } from '../bands/index.js'
import type { Step } from '../cite/index.js'
import { modernEggs } from '../modern/index.js'
import type { EggParts, Reading } from '../reading/index.js'
import { type EggPartsRow, type EggTaleRow, eggCustoms, eggSizes, eggTales, type SizedRow, type SpellRow } from '../tables/index.js'
import { type Batch, batchOf } from './egg-batch.js'
import { eggsInPan, isEggs, weighedLikeEggs } from './egg-scale.js'
import { contentsOf, eggOf, findEgg, partsOf } from './egg-weight.js'
import { keyOf } from './name.js'
import type { Question, Sense, SenseKind } from './sense.js'
import { insisted, sayFactor, stepFor, type Weighed, weighSpells } from './spell.js'

const one = { low: 1, best: 1, high: 1 }

function partsStep(row: EggPartsRow, { whole, yolks, whites }: EggParts): Step {
  const said = [whole > 0 ? `${whole} whole` : '', yolks > 0 ? `${yolks} yolks` : '', whites > 0 ? `${whites} whites` : '']
  const factor = `${said.filter(Boolean).join(', ')}: white ${sayFactor(row.white, '')}, yolk ${sayFactor(row.yolk, '')}`
  return { ...stepFor(row, one, 'factor'), factor }
}

/** What cooks did that the words do not say: told beside the answer, and no part of it. */
function customStepsFor({ eggs: parts, amount }: Reading): readonly Step[] {
  const count = parts ? parts.whole : (amount?.low ?? 0)
  return eggCustoms.filter(({ use, from = 0 }) => use === 'yolks' && count >= from).map((row) => stepFor(row, one, 'factor'))
}

function senseOf(bird: SizedRow, { row: spell, weight }: Weighed<SpellRow>, reading: Reading, batch: Batch): Sense {
  const size = eggSizes.find(({ names }) => reading.qualifier !== null && names.includes(reading.qualifier))
  const value = times(contentsOf(bird, spell, batch.parts), batch.times)
  return {
    id: `egg.${spell.id}`,
    label: spell.label,
    likelihood: weight,
    quantity: 'mass',
    value: size ? times(value, unknown(`egg-size:${size.id}`, spread(size.factor))) : value,
    steps: [
      stepFor(spell, spell, 'mass'),
      ...(size ? [stepFor(size, size.factor, 'factor')] : []),
      partsStep(partsOf(bird), batch.parts),
      ...customStepsFor(reading),
    ],
    whole: true,
    choice: `egg:${bird.id}`,
    standard: spell.id,
  }
}

function counted({ reading, setting }: Question): readonly Sense[] {
  const bird = eggOf(reading.thing)
  const batch = batchOf(reading)
  return weighSpells(bird.spells, setting).map((spelled) => senseOf(bird, spelled, reading, batch))
}

const tales = new Map<string, EggTaleRow[]>()
for (const row of eggTales) for (const key of row.names.map(keyOf)) tales.set(key, [...(tales.get(key) ?? []), row])

/** The numbers that a measure counts eggs by: `dozen`, `hundred`; none for a plain count. */
function talesOf({ measure }: Reading): readonly EggTaleRow[] {
  return (measure && tales.get(keyOf(measure))) || []
}

/** A hundred of eggs is six score by the custom of the trade, or five score. */
function byTale(question: Question, rows: readonly EggTaleRow[]): readonly Sense[] {
  const reading = { ...question.reading, eggs: null, amount: question.reading.amount ?? { low: 1, high: 1 } }
  return weighSpells(rows, question.setting).flatMap(({ row, weight }) => {
    const step = stepFor(row, { low: row.eggs, best: row.eggs, high: row.eggs }, 'count')
    return counted({ ...question, reading }).map((sense) => ({
      ...sense,
      id: `${sense.id}.${row.id}`,
      label: `${sense.label}; ${row.label}`,
      likelihood: sense.likelihood * weight,
      value: times(sense.value, unknown(`tale:${row.id}`, exact(row.eggs))),
      steps: [step, ...sense.steps],
    }))
  })
}

function everySense(question: Question): readonly Sense[] {
  const pan = eggsInPan(question.reading)
  if (pan) return weighedLikeEggs(question, pan)
  const rows = talesOf(question.reading)
  return rows.length > 0 ? byTale(question, rows) : counted(question)
}

const wholeEggs = { whole: 1, yolks: 0, whites: 0 }

const toWeighted = ({ likelihood, value }: Sense): Weighted => ({ weight: likelihood, value })

/**
 * Eggs and their parts, hundreds of eggs, and things that are to weigh as much as eggs: grams, without the shell except where whole eggs
 * lie in a scale. `value` counts the eggs already.
 *
 * @throws PottleError `no-answer` where no number is given, or no egg is left of it
 * @example convert('ten eggs', { year: 1830 }).value.best   // 403.695
 */
export const egg: SenseKind = {
  name: 'egg',
  answers: ({ reading }) => {
    const taled = talesOf(reading).length > 0 && findEgg(reading.thing ?? '') !== undefined
    return taled || isEggs(reading) || eggsInPan(reading) !== undefined
  },
  senses: (question) =>
    insisted(
      [...everySense(question)].sort((a, b) => b.likelihood - a.likelihood),
      question,
    ),
  // Things that weigh as much as eggs are no eggs to crack.
  modern: (question, { coverage }) =>
    eggsInPan(question.reading) ? [] : modernEggs(everySense(question).map(toWeighted), question.reading.eggs ?? wholeEggs, coverage),
}
