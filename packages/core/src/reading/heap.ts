import { amountAt } from './amount.js'
import type { Line } from './line.js'
import { longestName } from './lookup.js'
import type { Range } from './reading.js'
import { withArticle } from './size.js'
import { type Context, once, type Statement, statement } from './statement.js'
import { unitAt } from './unit.js'
import { the } from './vocabulary.js'
import { Role } from './word.js'

const lying = new Set(['lie', 'lye', 'ly', 'lay', 'stand', 'go', 'cover', 'heap', 'hold', 'rest', 'take'])

const holding = new Set(['hold', 'contain', 'carry', 'bear', 'take'])

/** *as a shilling will hold*. */
function heldAt(line: Line, start: number): { on: string; end: number } | null {
  const coin = line.is(start, Role.Article) ? longestName(line, start + 1, 'coin') : null
  const end = coin === null ? 0 : pastHolding(line, coin.end)
  return coin === null || end === 0 ? null : { on: withArticle(coin.row.label), end }
}

/** The end of *will hold*, *can take up*, or 0. */
function pastHolding(line: Line, start: number): number {
  for (let at = start; at < start + 3 && line.is(at, Role.Plain); at++)
    if (holding.has(line.at(at).text)) return line.at(at + 1).text === 'up' ? at + 2 : at + 1
  return 0
}

/** *as will lie on a shilling*, *to lie on the point of a knife*, *as would cover a sixpence*, *as a shilling will hold*. */
function heapAt(line: Line, start: number): { on: string; end: number } | null {
  const held = heldAt(line, start)
  if (held !== null) return held
  let verb = false
  for (let at = start; at < start + 11 && !line.is(at, Role.Mark); at++) {
    if (lying.has(line.at(at).text)) verb = true
    else if (verb) {
      const knife = knifeAt(line, at)
      if (knife > 0) return { on: 'the point of a knife', end: knife }
      const coin = longestName(line, at, 'coin')
      if (coin !== null) return { on: withArticle(coin.row.label), end: coin.end }
    } else if (!line.is(at, Role.Plain)) return null
  }
  return null
}

/** The end of *point of a knife* or *knife's point*, or 0. */
function knifeAt(line: Line, at: number): number {
  const row = longestName(line, at, 'measure')
  return row?.row.id === 'knife-point' ? row.end : 0
}

/** *as you can take up between finger and thumb* is a pinch, *with two fingers and the thumb* a pugil: which one, and where the words end. */
function fingersAt(line: Line, start: number): { measure: 'pinch' | 'pugil'; end: number } | null {
  let at = start
  while (at < start + 6 && line.is(at, Role.Plain | Role.Determiner) && line.at(at).length?.label !== 'finger') at++
  const two = line.is(at, Role.Cardinal) && line.value(at) > 1
  if (two || line.is(at, Role.Article)) at++
  const thumb = line.is(at + 2, Role.Article | Role.Determiner) ? at + 3 : at + 2
  if (line.at(at).length?.label !== 'finger' || line.at(at + 1) !== the.and || line.at(thumb).length?.label !== 'thumb') return null
  return { measure: two ? 'pugil' : 'pinch', end: thumb + 1 }
}

/** *as half an egg-shell will hold*, *as will fill a half bushel*. */
function vesselAt(line: Line, start: number): { amount: Range; measure: string; end: number } | null {
  let fill = start
  while (fill < start + 3 && line.is(fill, Role.Plain) && line.at(fill).text !== 'fill') fill++
  const filling = line.at(fill).text === 'fill'
  const amount = amountAt(line, filling ? fill + 1 : start)
  const unit = amount === null ? null : unitAt(line, amount.end)
  if (amount === null || unit === null || !vessels.has(unit.row.class)) return null
  const end = filling ? unit.end : pastHolding(line, unit.end)
  return end === 0 ? null : { amount: { low: amount.low, high: amount.high }, measure: unit.row.label, end }
}

const vessels = new Set(['cup', 'spoon', 'capacity'])

/** What tells by itself how much *as much … as* is. */
export interface Fill {
  readonly kind: 'comparison' | 'measured'
  readonly amount: Range
  readonly measure: string
  readonly end: number
}

/** Behind *as much … as*: a heap on a coin, what the fingers take up, what a vessel holds. */
export function fillAt(line: Line, start: number): Fill | null {
  const heap = heapAt(line, start)
  if (heap !== null) return { kind: 'comparison', amount: once, measure: `as much as will lie on ${heap.on}`, end: heap.end }
  const fingers = fingersAt(line, start)
  if (fingers !== null) return { kind: 'measured', amount: once, ...fingers }
  const vessel = vesselAt(line, start)
  return vessel === null ? null : { kind: 'measured', ...vessel }
}

function heaped(on: string, thing: string | null, start: number, end: number): Statement {
  return statement('comparison', start, end, { amount: once, measure: `as much as will lie on ${on}`, thing })
}

/** *soda to lie on a shilling*. */
export function heapBehind(context: Context, start: number): Statement | null {
  const { line, loose } = context
  const last = loose.at(-1)
  if (last === undefined || last.end !== start || line.at(start) !== the.to) return null
  const heap = heapAt(line, start + 1)
  return heap === null ? null : heaped(heap.on, last.name, last.start, heap.end)
}
