import { turningYears } from './assess.js'
import type { CheckedOptions } from './options.js'
import type { Reading } from './reading/index.js'
import { numberOf, Resolved } from './resolved.js'
import type { Setting } from './setting.js'

/** What was worked out for one question, by the years that have the same answer. */
interface Remembered {
  readonly turns: readonly number[] | undefined
  readonly answers: Map<string | number | null, Resolved>
}

const remembered = new Map<string, Remembered>()
let answersRemembered = 0
const mostRemembered = 10_000

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
function eraOf({ year, from, to }: Setting, turns: readonly number[] | undefined): string | number | null {
  if (!turns || from !== to) return year
  let reached = 0
  while (reached < turns.length && turns[reached]! <= from) reached++
  return reached
}

const rememberable: ReadonlySet<Reading['kind']> = new Set(['measured', 'counted', 'priced', 'eggparts'])

/** Readings that point at another one can't be remembered under their own words, and those that contradict themselves have nothing to remember. */
function plain(reading: Reading): boolean {
  return rememberable.has(reading.kind) && !reading.reference && !reading.parts && !reading.contradiction
}

function recall(reading: Reading, checked: CheckedOptions): Remembered {
  const key = keyOf(reading, checked)
  const known = remembered.get(key)
  if (known) return known
  const fresh = { turns: turningYears(reading, checked.setting), answers: new Map() }
  remembered.set(key, fresh)
  return fresh
}

/** Forgets everything once there is too much of it: what is asked often is soon there again. */
function makeRoom(): void {
  if (remembered.size + answersRemembered < mostRemembered) return
  remembered.clear()
  answersRemembered = 0
}

/**
 * Works out a reading for one of its measure. What depends only on measure, thing and setting is remembered, so that a reader's number
 * scales a band instead of computing it again; years between which no table changes share what was worked out for the first of them.
 */
export function resolve(reading: Reading, checked: CheckedOptions): Resolved {
  if (!plain(reading)) return new Resolved(reading, checked)
  makeRoom()
  const { turns, answers } = recall(reading, checked)
  const era = eraOf(checked.setting, turns)
  const known = answers.get(era)
  if (known) return known
  const fresh = new Resolved(reading, checked)
  answers.set(era, fresh)
  answersRemembered++
  return fresh
}
