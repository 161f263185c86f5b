/**
 * *The weight of six eggs in sugar*: things that are to weigh as much as eggs, which lie in the other pan of the scale.
 */
import { exact, product, rectangle, times, unknown } from '../bands/index.js'
import type { EggParts, Reading } from '../reading/index.js'
import { type EggCustomRow, eggCustoms, type SizedRow, type SpellRow } from '../tables/index.js'
import { type Batch, batchOf } from './egg-batch.js'
import { contentsOf, eggInShell, eggOf, findEgg } from './egg-weight.js'
import { keyOf } from './name.js'
import type { Question, Sense } from './sense.js'
import { stepFor, type Weighed, weighSpells } from './spell.js'

const one = { low: 1, best: 1, high: 1 }

export function isEggs(reading: Reading): boolean {
  if (reading.eggs) return true
  return reading.kind === 'counted' && reading.thing !== null && findEgg(reading.thing) !== undefined
}

/** Measures that count what lies in the other pan themselves. */
const panOf: Readonly<Record<string, (count: number) => EggParts>> = {
  weightofegg: (count) => ({ whole: count, yolks: 0, whites: 0 }),
  weightofeggwhite: (count) => ({ whole: 0, yolks: 0, whites: count }),
  weightofeggyolk: (count) => ({ whole: 0, yolks: count, whites: 0 }),
}

/** The eggs that lie in the other pan: those the words point at, or those that the measure itself counts. */
export function eggsInPan(reading: Reading): Reading | undefined {
  const { reference, measure, amount } = reading
  if (reference && isEggs(reference)) return reference
  const count = amount?.low ?? 1
  const eggs = panOf[keyOf(measure ?? '')]?.(count)
  if (!eggs) return undefined
  const bird = reference?.thing && findEgg(reference.thing) ? reference.thing : 'egg'
  return { ...reading, kind: 'counted', thing: bird, eggs: reading.eggs ?? eggs }
}

function inScale(custom: EggCustomRow, bird: SizedRow, { row: spell, weight }: Weighed<SpellRow>, batch: Batch): Sense {
  const inShell = custom.use === 'weighed-in-shell'
  const value = inShell ? product(batch.parts.whole, eggInShell(bird, spell)) : contentsOf(bird, spell, batch.parts)
  return {
    id: `${custom.id}.${spell.id}`,
    label: `${spell.label}; ${custom.label}`,
    likelihood: weight,
    quantity: 'mass',
    value: times(value, batch.times),
    steps: [stepFor(spell, spell, 'mass'), stepFor(custom, one, 'factor')],
    whole: true,
    choice: 'egg-weighing',
    standard: custom.id,
  }
}

/** Every way to weigh the eggs in the pan. Whites and yolks can only be weighed out of the shell. */
export function weighedLikeEggs({ reading, setting }: Question, pan: Reading): readonly Sense[] {
  const bird = eggOf(pan.thing)
  const batch = batchOf(pan)
  const broken = batch.parts.yolks + batch.parts.whites > 0
  const customs = eggCustoms.filter(({ use }) => use === 'weighed-broken' || (use === 'weighed-in-shell' && !broken))
  const multiple = pan === reading.reference && reading.amount ? rectangle(reading.amount.low, reading.amount.high) : exact(1)
  const by = unknown(`times:${reading.understood[0]?.start ?? 0}`, multiple)
  return weighSpells(customs, setting).flatMap((custom) =>
    weighSpells(bird.spells, setting).map((spelled) => {
      const sense = inScale(custom.row, bird, { row: spelled.row, weight: spelled.weight * custom.weight }, batch)
      return { ...sense, value: times(sense.value, by) }
    }),
  )
}
