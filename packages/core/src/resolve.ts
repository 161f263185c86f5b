import type { CheckedOptions } from './options.js'
import type { Reading } from './reading/index.js'
import { numberOf, Resolved } from './resolved.js'

const remembered = new Map<string, Resolved>()
const mostRemembered = 20_000

/** Eggs are counted in the value itself, so their number belongs to the question. */
function eggsSaid({ eggs, amount, thing }: Reading): string {
  if (!eggs && !thing?.endsWith('egg')) return ''
  return `${eggs?.whole},${eggs?.yolks},${eggs?.whites},${amount?.low},${amount?.high}`
}

function keyOf(reading: Reading, checked: CheckedOptions): string {
  const { setting, coverage, quantity, standard } = checked
  const { kind, measure, thing, qualifier } = reading
  const { ratio } = numberOf(reading.amount)
  const said = `${kind}|${measure}|${thing}|${qualifier}|${reading.standard ?? ''}|${reading.part ?? ''}|${reading.tale ?? ''}|${reading.describing ?? ''}|${ratio}`
  return `${said}|${eggsSaid(reading)}|${setting.year}|${setting.places[0]}|${coverage}|${quantity ?? ''}|${standard ?? ''}`
}

const rememberable: ReadonlySet<Reading['kind']> = new Set(['measured', 'counted', 'priced', 'eggparts'])

/** Readings that point at another one can't be remembered under their own words, and those that contradict themselves have nothing to remember. */
function plain(reading: Reading): boolean {
  return rememberable.has(reading.kind) && !reading.reference && !reading.parts && !reading.contradiction
}

/**
 * Works out a reading for one of its measure. What depends only on measure, thing and setting is remembered, so that a reader's number
 * scales a band instead of computing it again.
 */
export function resolve(reading: Reading, checked: CheckedOptions): Resolved {
  if (!plain(reading)) return new Resolved(reading, checked)
  const key = keyOf(reading, checked)
  const known = remembered.get(key)
  if (known) return known
  const fresh = new Resolved(reading, checked)
  if (remembered.size >= mostRemembered) remembered.clear()
  remembered.set(key, fresh)
  return fresh
}
