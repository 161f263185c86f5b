/** Parts that are asked for by the number of their wholes: *the juice of two lemons*, *the rind and juice of three*. */
import type { Amount } from './amount.js'
import type { Line } from './line.js'
import { type Context, type Statement, statement } from './statement.js'
import { thingAt } from './thing.js'
import { the } from './vocabulary.js'
import { mark, Role, type Word } from './word.js'

/** Draws *the juice of*, *the rind and juice of* and their like into the statement that they stand before. */
export function withPart(context: Context, next: Statement | null): Statement | null {
  if (next === null || (next.kind !== 'counted' && next.kind !== 'priced' && next.measure !== 'as-many')) return next
  const { line } = context
  const first = partOfAt(line, next.start)
  if (first === null) return shared(context, next)
  let start = first
  const portions = [line.at(start).text]
  for (let at = partBefore(line, start); at !== null && portions.length < 4; at = partBefore(line, start)) {
    start = at
    portions.unshift(line.at(at).text)
  }
  while (start > next.start - 6 && line.is(start - 1, Role.Describing | Role.Determiner | Role.Article)) start--
  return { ...next, start, part: portions.at(-1)!, portions: portions.length > 1 ? portions : null }
}

const citrus = new Set(['lemon', 'orange', 'Seville orange', 'lime', 'citron'])

/** *the juice of one lemon and two oranges*: the juice of both. */
function shared({ line, last }: Context, next: Statement): Statement {
  const goesOn = last?.kind === 'counted' && last.part !== null && line.at(last.end) === the.and && next.start === last.end + 1
  const alike = goesOn && citrus.has(last.thing ?? '') && citrus.has(next.thing ?? '')
  return alike ? { ...next, part: last.part, portions: last.portions } : next
}

/** The part that an amount is of: *the juice of two*, *the rinds of but two*. */
function partOfAt(line: Line, start: number): number | null {
  const of = line.at(start - 1).text === 'but' || line.at(start - 1).text === 'only' ? start - 2 : start - 1
  return line.at(of) === the.of && line.is(of - 1, Role.PartOf) ? of - 1 : null
}

/** The part named before another: the rind of *the rind and the juice*. */
function partBefore(line: Line, start: number): number | null {
  let and = start - 1
  while (and > start - 4 && line.is(and, Role.Determiner | Role.Article | Role.Describing)) and--
  const joined = line.at(and) === the.and || (line.at(and) === mark.comma && !line.is(and - 1, Role.Describing))
  return joined && line.is(and - 1, Role.PartOf) ? and - 1 : null
}

/** *the peel of a lemon and the juice of two*, *grate two of the rinds*: the lemons go without saying. */
export function elidedWholeAt({ line, last }: Context, start: number, amount: Amount | null): Statement | null {
  if (amount === null || amount.article || amount.each) return null
  if (last?.kind !== 'counted' || last.measure !== 'none' || last.eggs !== null) return null
  const { low, high, end, qualifier } = amount
  const known = { amount: { low, high }, measure: 'none', thing: last.thing, qualifier }
  if (line.at(end) === the.of && line.is(end + 1, Role.Determiner) && isOnlyPart(line.at(end + 2)))
    return statement('counted', start, end + 3, { ...known, part: line.at(end + 2).text })
  return partOfAt(line, start) === null || thingAt(line, end, true) !== null ? null : statement('counted', start, end, known)
}

/** Whether a word names a part and no thing by itself: a rind, but no seed of what. */
const isOnlyPart = ({ roles, thing }: Word): boolean => (roles & Role.PartOf) !== 0 && (thing === null || thing.head === true)
