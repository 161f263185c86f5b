import { turningYears } from './assess.js'
import { Memory } from './memory.js'
import type { CheckedOptions } from './options.js'
import type { Reading } from './reading/index.js'
import { numberOf, Resolved } from './resolved.js'
import type { Setting } from './setting.js'

/** The turning years of questions; none where it is not rows alone that a year decides by. */
const remembered = { turns: new Memory<string, readonly number[] | 'none'>(5000), answers: new Memory<string, Resolved>(10_000) }

/** Eggs are counted in the value itself, so their number belongs to the question. */
function eggsSaid({ eggs, amount, thing }: Reading): string {
  if (!eggs && !thing?.endsWith('egg')) return ''
  return `${eggs?.whole},${eggs?.yolks},${eggs?.whites},${amount?.low},${amount?.high}`
}

/** All of a question but its year. */
function keyOf(reading: Reading, { setting, coverage, quantity, standard }: CheckedOptions): string {
  const { kind, measure, thing, qualifier } = reading
  const { ratio } = numberOf(reading.amount)
  const said = `${kind}|${measure}|${thing}|${qualifier}|${reading.standard ?? ''}|${reading.part ?? ''}|${reading.tale ?? ''}|${reading.describing ?? ''}|${ratio}`
  return `${said}|${eggsSaid(reading)}|${setting.places[0]}|${coverage}|${quantity ?? ''}|${standard ?? ''}`
}

/** A year by how many of the turning years it has reached; else the date as the caller wrote it. */
function eraOf(asked: string, reading: Reading, setting: Setting): string {
  if (setting.from !== setting.to) return String(setting.year)
  const turns = remembered.turns.get(asked) ?? remembered.turns.set(asked, turningYears(reading, setting) ?? 'none')
  if (turns === 'none') return String(setting.year)
  let reached = 0
  while (reached < turns.length && turns[reached]! <= setting.from) reached++
  return `era ${reached}`
}

const rememberable: ReadonlySet<Reading['kind']> = new Set(['measured', 'counted', 'priced', 'eggparts'])

/** Readings that point at another one can't be remembered under their own words, and those that contradict themselves have nothing to remember. */
function plain(reading: Reading): boolean {
  return rememberable.has(reading.kind) && !reading.reference && !reading.parts && !reading.contradiction
}

/**
 * Works out a reading for one of its measure. What depends only on measure, thing and setting is remembered, so that a reader's number
 * scales a band instead of computing it again; years between which no table changes share what was worked out for the first of them.
 */
export function resolve(reading: Reading, checked: CheckedOptions): Resolved {
  if (!plain(reading)) return new Resolved(reading, checked)
  const asked = keyOf(reading, checked)
  const key = `${asked}|${eraOf(asked, reading, checked.setting)}`
  return remembered.answers.get(key) ?? remembered.answers.set(key, new Resolved(reading, checked))
}
