/** Eggs, in grams without the shell: how heavy an egg was, by bird and date, and how much of it is white and yolk. */

import { spread, times, unknown, type Weighted } from '../bands/index.js'
import type { Step } from '../cite/index.js'
import { modernEggs } from '../modern/index.js'
import type { EggParts, Reading } from '../reading/index.js'
import { type EggPartsRow, eggCustoms, eggSizes, type SizedRow, type SpellRow } from '../tables/index.js'
import { type Batch, batchOf } from './egg-batch.js'
import { eggsInPan, isEggs, weighedLikeEggs } from './egg-scale.js'
import { contentsOf, eggOf, findEgg, partsOf } from './egg-weight.js'
import type { Question, Sense, SenseKind } from './sense.js'
import { insisted, sayFactor, stepFor, type Weighed, weighSpells } from './spell.js'
import { saysPlainly, type Told, taleOf, toldBy } from './told.js'

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

/** A hundred of eggs is six score by the custom of the trade, or five score. */
function byTale(question: Question, tales: readonly Told[]): readonly Sense[] {
  const { reading } = question
  const inOnes = reading.tale === undefined ? { ...reading, eggs: null, amount: reading.amount ?? { low: 1, high: 1 } } : reading
  const senses = counted({ ...question, reading: inOnes })
  if (saysPlainly(tales)) return senses
  return tales.flatMap(({ id, label, each, likelihood, step }) =>
    senses.map((sense) => ({
      ...sense,
      id: `${sense.id}.${id}`,
      label: `${sense.label}; ${label}`,
      likelihood: sense.likelihood * likelihood,
      value: times(sense.value, each),
      steps: [step, ...sense.steps],
    })),
  )
}

function everySense(question: Question): readonly Sense[] {
  const pan = eggsInPan(question.reading)
  if (pan) return weighedLikeEggs(question, pan)
  const tales = toldBy(question)
  return tales.length > 0 ? byTale(question, tales) : counted(question)
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
    const told = taleOf(reading) !== undefined && findEgg(reading.thing ?? '') !== undefined
    return told || isEggs(reading) || eggsInPan(reading) !== undefined
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
