import type { Plan } from '@pottle/core'
import { UsageError } from '../fault.js'

type Fixed = NonNullable<Plan['fixed']>
type Limit = NonNullable<Plan['limit']>

const pair = /^([^=]{1,60})=(.{1,60})$/
const figure = /^(\d{1,7}(?:\.\d{1,6})?) ?(g\/ml|g|ml|°?c|°?f)?$/i
const line = /^(?:line )?(\d{1,7})$/

/** For the help. */
export const fixForms =
  "NAME=VALUE: pint=wine, 'penny loaf=300g', spoonful=15ml, egg=52g (yours, in its shell), line 3=ale, cream=1.01g/ml, oven=180C"

function refuse(text: string, detail: string): never {
  throw new UsageError('--fix', `"${text.slice(0, 60)}" ${detail}; give ${fixForms}`)
}

/** One choice, as a part of what the library takes. */
function readFix(text: string): Fixed {
  const [, left, right] = pair.exec(text.trim()) ?? []
  if (left === undefined || right === undefined) return refuse(text, 'has no NAME=VALUE')
  const name = left.trim().toLowerCase()
  const [, digits, mark = ''] = figure.exec(right.trim()) ?? []
  const value = Number(digits)
  const unit = mark.toLowerCase().replace('°', '')
  const number = line.exec(name)?.[1]
  if (digits === undefined) {
    const standard = right.trim()
    return number === undefined ? { standards: { [name]: standard } } : { lines: { [number]: { standard } } }
  }
  if (name === 'oven') return { oven: unit === 'f' ? Number((((value - 32) * 5) / 9).toFixed(1)) : value }
  if (name === 'egg' && (unit === 'g' || unit === '')) return { egg: value }
  if (unit === 'g/ml') return { densities: { [name]: value } }
  if (unit !== 'g' && unit !== 'ml') return refuse(text, 'needs a unit: g, ml or g/ml')
  return number === undefined ? { sizes: { [name]: { [unit]: value } } } : { lines: { [number]: { [unit]: value } } }
}

const named = (fixes: readonly Fixed[], part: 'standards' | 'sizes' | 'lines' | 'densities'): Fixed => {
  const entries = fixes.flatMap((fix) => Object.entries(fix[part] ?? {}))
  return entries.length > 0 ? { [part]: Object.fromEntries(entries) } : {}
}

/**
 * Choices as a command line has them, together; of two of the same the later one holds.
 *
 * @throws UsageError for what is no choice; whether there is such a measure is the library's to say
 * @example readFixes(['pint=wine', 'egg=52g'])   // { standards: { pint: 'wine' }, egg: 52 }
 */
export function readFixes(texts: readonly string[]): Fixed {
  const fixes = texts.map(readFix)
  const egg = fixes.findLast((fix) => fix.egg !== undefined)
  const oven = fixes.findLast((fix) => fix.oven !== undefined)
  return {
    ...named(fixes, 'standards'),
    ...named(fixes, 'sizes'),
    ...named(fixes, 'lines'),
    ...named(fixes, 'densities'),
    ...(egg ? { egg: egg.egg } : {}),
    ...(oven ? { oven: oven.oven } : {}),
  }
}

const least = /^([^=]{1,60})=\s{0,4}(\d{1,7}(?:[./]\d{1,6})?) ?([a-z-]{1,20})?$/i

/**
 * The one thing that there is least of.
 *
 * @throws UsageError for what is no thing and amount
 * @example readLimit('cream=300ml')   // { thing: 'cream', amount: '300', unit: 'ml' }
 */
export function readLimit(text: string): Limit {
  const [, thing, amount, unit = 'each'] = least.exec(text.trim()) ?? []
  if (thing === undefined || amount === undefined)
    throw new UsageError('--limit', `"${text.slice(0, 60)}" is no thing and amount; give THING=AMOUNT, such as cream=300ml or egg=3`)
  return { thing: thing.trim(), amount, unit: unit.toLowerCase() }
}
