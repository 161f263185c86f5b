import type { Amount } from './amount.js'
import type { Line } from './line.js'
import { longestName } from './lookup.js'
import { type Context, type Statement, statement } from './statement.js'
import { type Thing, thingAt } from './thing.js'
import { valueAt } from './value.js'
import { the } from './vocabulary.js'
import { mark, Role } from './word.js'

/** *a walnut*, *an egg*: a noun as the name of a measure holds it. */
export const withArticle = (noun: string): string => (/^[aeiou]/.test(noun) ? `an ${noun}` : `a ${noun}`)

/** Skips words such as *the*, *about* and *of* that may stand before a comparison. */
function pastLead(line: Line, start: number): number {
  let at = start
  while (
    at < start + 4 &&
    (line.at(at) === mark.comma ||
      line.at(at) === the.of ||
      line.at(at) === the.about ||
      (line.is(at, Role.Determiner | Role.Degree) && line.at(at) !== the.as))
  )
    at++
  return at
}

/** Something of a known size or a coin: *a walnut*, *half-a-crown*, *two eggs*. */
export function objectAt(line: Line, start: number): { noun: string; count: number; end: number } | null {
  const bare = longestName(line, start, 'coin')
  if (bare !== null) return { noun: bare.row.label, count: 1, end: bare.end }
  // "your two fists"
  const value = valueAt(line, line.is(start, Role.Determiner) ? start + 1 : start)
  let at = value?.end ?? start
  while (
    at < start + 4 &&
    line.is(at, Role.Describing | Role.Qualifier | Role.Determiner) &&
    longestName(line, at, 'object') === null &&
    longestName(line, at, 'coin') === null
  )
    at++
  const found = longestName(line, at, 'coin') ?? longestName(line, at, 'object')
  const thing = thingAt(line, at, false)
  // A walnut-shell is no walnut.
  if (found !== null && (thing?.end ?? 0) <= found.end) return { noun: found.row.label, count: value?.value ?? 1, end: found.end }
  return thing === null || value === null ? null : { noun: thing.name, count: value.value, end: thing.end }
}

function bareObjectAt(line: Line, at: number): { noun: string; count: number; end: number } | null {
  let object = at
  while (object < at + 2 && line.is(object, Role.Describing) && longestName(line, object, 'object') === null) object++
  const found = longestName(line, object, 'coin') ?? longestName(line, object, 'object')
  return found === null ? null : { noun: found.row.label, count: 1, end: found.end }
}

/** *no bigger than a pea* is as big as one. */
const bigger = new Set(['bigger', 'larger', 'greater'])

/** *the bigness of a walnut*, *the size of half-a-crown*, *as big as an egg*. */
export function sizeAt(line: Line, start: number): { noun: string; count: number; end: number } | null {
  // "half the size of an egg"
  const times = line.is(start, Role.Half) ? line.value(start) : line.is(start, Role.Twice) ? 2 : 1
  const size = wholeSizeAt(line, times === 1 ? start : start + 1)
  return size === null || times === 1 ? size : { ...size, count: size.count * times }
}

function wholeSizeAt(line: Line, start: number): { noun: string; count: number; end: number } | null {
  let at = pastLead(line, start)
  if (line.is(at, Role.Size)) return line.at(at + 1) === the.of ? objectAt(line, at + 2) : null
  // "the quantity of a walnut": of what is a size or a coin, and of nothing else.
  if (line.is(at, Role.Quantity)) return line.at(at + 1) === the.of && line.is(at + 2, Role.Article) ? bareObjectAt(line, at + 3) : null
  if (bigger.has(line.at(at).text) && line.at(at + 1) === the.than && line.is(at - 1, Role.Degree)) return objectAt(line, at + 2)
  // "butter equal in size to an egg"
  if (line.at(at) === the.equal && line.at(at + 1) === the.in && line.is(at + 2, Role.Size) && line.at(at + 3) === the.to)
    return objectAt(line, at + 4)
  if (line.at(at) === the.as) at++
  const big = line.at(at).qualifier === 'large' || line.at(at).qualifier === 'small'
  return big && line.at(at + 1) === the.as ? objectAt(line, at + 2) : null
}

/** The statement of a size, about a thing. */
export function bigness(
  size: { noun: string; count: number },
  thing: string | null,
  count: number,
  start: number,
  end: number,
  qualifier: string | null,
): Statement {
  const times = count * size.count
  return statement('comparison', start, end, {
    amount: { low: times, high: times },
    measure: `bigness of ${withArticle(size.noun)}`,
    thing,
    qualifier,
  })
}

/** *a piece of butter the size of a walnut*; without a size the piece is vague. */
export function pieceAt(context: Context, start: number, amount: Amount | null): Statement | null {
  const { line } = context
  let at = amount?.end ?? start
  let qualifier = amount?.qualifier ?? null
  while (at < start + 6 && line.is(at, Role.Describing | Role.Qualifier | Role.Degree) && line.at(at).measure === null) {
    qualifier = line.at(at).qualifier ?? qualifier
    at++
  }
  const piece = longestName(line, at, 'measure')
  if (piece === null || (piece.row.class !== 'vague' && piece.row.class !== 'piece')) return null
  if (amount === null && at === start && !context.phrase) return null
  if (line.at(piece.end) !== the.of) return piece.row.label === 'quantity' ? quantityBehind(context, start, piece.end) : null
  const thing = thingAt(line, piece.end + 1, context.phrase)
  if (thing === null) return null
  const sized = sizedPiece(line, start, thing.end, amount?.low ?? 1, thing)
  if (sized !== null || piece.row.class === 'piece') return sized
  if (amount !== null && !amount.article) {
    // "four lumps of sugar" are counted, "a lump of sugar" is only some.
    return statement('measured', start, thing.end, {
      amount: { low: amount.low, high: amount.high },
      measure: piece.row.label,
      thing: thing.name,
      qualifier,
    })
  }
  const good = qualifier === 'good' && (piece.row.label === 'deal' || piece.row.label === 'store')
  return statement('vague', start, thing.end, { measure: good ? `good ${piece.row.label}` : piece.row.label, thing: thing.name, qualifier })
}

/** *red rose leaves a pretty quantity*. */
function quantityBehind({ loose }: Context, start: number, end: number): Statement | null {
  const last = loose.at(-1)
  return last?.end === start ? statement('vague', last.start, end, { measure: 'quantity', thing: last.name }) : null
}

function sizedPiece(line: Line, start: number, end: number, count: number, thing: Thing): Statement | null {
  const size = sizeAt(line, pastAdverbs(line, end))
  return size === null ? null : bigness(size, thing.name, count, start, size.end, null)
}

/** Skips participles behind a thing: *butter, melted, the size of an egg*. */
function pastAdverbs(line: Line, start: number): number {
  let at = start
  while (at < start + 3 && line.is(at, Role.Describing) && line.at(at).qualifier === null) at++
  // "butter rolled in flour"
  const into = at > start && line.at(at) === the.in ? thingAt(line, at + 1, false) : null
  return into?.end ?? at
}

/** *butter rolled in flour as big as an egg*: the butter has the size. */
function rolledIn({ line, loose }: Context, flour: Thing): Thing | null {
  const rolled = loose.at(-2)
  return line.at(flour.start - 1) === the.in && line.is(flour.start - 2, Role.Describing) && rolled?.end === flour.start - 2 ? rolled : null
}

/** *butter the size of a walnut*, once the thing has been named: the size is what measures it. */
export function sizeBehind(context: Context, start: number): Statement | null {
  const { line, loose } = context
  const size = sizeAt(line, start)
  if (size === null) return null
  const named = loose.at(-1)
  if (named !== undefined && (named.end === start || (named.end === start - 1 && line.at(named.end) === mark.comma))) {
    const last = rolledIn(context, named) ?? named
    return last.row?.count === undefined || context.phrase ? bigness(size, last.name, 1, last.start, size.end, null) : null
  }
  if (line.at(size.end) !== the.of) return context.phrase ? bigness(size, null, 1, start, size.end, null) : null
  const thing = thingAt(line, size.end + 1, context.phrase)
  return thing === null ? null : bigness(size, thing.name, 1, start, thing.end, null)
}
