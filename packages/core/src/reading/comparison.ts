import { type Amount, addedPart, amountAt, valueAt } from './amount.js'
import { type Context, once, type Statement, statement } from './statement.js'
import { longestName, pastDescribing, type Thing, thingAt } from './thing.js'
import type { Line } from './tokens.js'
import { the } from './vocabulary.js'
import { mark, Role } from './word.js'

const withArticle = (noun: string): string => (/^[aeiou]/.test(noun) ? `an ${noun}` : `a ${noun}`)

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
function objectAt(line: Line, start: number): { noun: string; count: number; end: number } | null {
  const bare = longestName(line, start, 'coin')
  if (bare !== null) return { noun: bare.row.label, count: 1, end: bare.end }
  const value = valueAt(line, start)
  let at = value?.end ?? start
  while (
    at < start + 4 &&
    line.is(at, Role.Describing | Role.Qualifier | Role.Determiner) &&
    longestName(line, at, 'object') === null &&
    longestName(line, at, 'coin') === null
  )
    at++
  const found = longestName(line, at, 'coin') ?? longestName(line, at, 'object')
  if (found !== null) return { noun: found.row.label, count: value?.value ?? 1, end: found.end }
  const thing = thingAt(line, at, false)
  return thing === null || value === null ? null : { noun: thing.name, count: value.value, end: thing.end }
}

/** *the bigness of a walnut*, *the size of half-a-crown*, *as big as an egg*. */
export function sizeAt(line: Line, start: number): { noun: string; count: number; end: number } | null {
  let at = pastLead(line, start)
  if (line.is(at, Role.Size)) return line.at(at + 1) === the.of ? objectAt(line, at + 2) : null
  if (line.at(at) === the.as) at++
  const big = line.at(at).qualifier === 'large' || line.at(at).qualifier === 'small'
  return big && line.at(at + 1) === the.as ? objectAt(line, at + 2) : null
}

/** The statement of a size, about a thing. */
function bigness(
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
  if (line.at(piece.end) !== the.of) return piece.row.label === 'quantity' ? quantityBehind(context, start, piece.end) : null
  const thing = thingAt(line, piece.end + 1, context.phrase)
  if (thing === null) return null
  const sized = sizedPiece(line, start, thing.end, amount?.low ?? 1, thing)
  if (sized !== null || piece.row.class === 'piece') return sized
  if (amount !== null && !amount.article && amount.high > 1 && thing.row?.count === undefined) return null
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
  return at
}

/** *butter the size of a walnut*, once the thing has been named: the size is what measures it. */
export function sizeBehind(context: Context, start: number): Statement | null {
  const { line, loose } = context
  const size = sizeAt(line, start)
  if (size === null) return null
  const last = loose.at(-1)
  if (last !== undefined && (last.end === start || (last.end === start - 1 && line.at(last.end) === mark.comma))) {
    return last.row?.count === undefined || context.phrase ? bigness(size, last.name, 1, last.start, size.end, null) : null
  }
  if (line.at(size.end) !== the.of) return context.phrase ? bigness(size, null, 1, start, size.end, null) : null
  const thing = thingAt(line, size.end + 1, context.phrase)
  return thing === null ? null : bigness(size, thing.name, 1, start, thing.end, null)
}

const lying = new Set(['lie', 'lye', 'ly', 'lay', 'stand', 'go', 'cover', 'heap', 'hold', 'rest', 'take'])

/** *as will lie on a shilling*, *to lie on the point of a knife*, *as would cover a sixpence*. */
function heapAt(line: Line, start: number): { on: string; end: number } | null {
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

/** What makes *as much as* a quantity that no table can give: *as will make it stiff*, *as you please*. */
function isToTaste(line: Line, at: number): boolean {
  if (line.at(at) !== the.as) return false
  const next = line.at(at + 1)
  if (next === the.you)
    return !line.is(at + 2, Role.Plain) || !['do', 'have', 'did', 'had', 'put', 'take', 'took'].includes(line.at(at + 2).text)
  return line.is(at + 1, Role.Plain) && next.thing === null && next !== the.for && next !== the.in && next !== the.there
}

/** *as much ale*, *half as much of sugar*, *as many blades of mace*, *as much mace as will lie on a sixpence*. */
export function asMuchAt(context: Context, start: number): Statement | null {
  const { line } = context
  const times = line.at(start) === the.as || line.at(start) === the.so ? null : multipleAt(line, start)
  let at = times?.end ?? start
  if ((line.at(at) !== the.as && line.at(at) !== the.so) || (line.at(at + 1) !== the.much && line.at(at + 1) !== the.many)) return null
  at += 2
  if (line.at(at) === the.more) at++
  const early = line.at(at) === the.as ? heapAt(line, at + 1) : null
  if (early !== null) {
    const of = line.at(early.end) === the.of ? thingAt(line, early.end + 1, true) : null
    return heaped(early.on, of?.name ?? null, start, of?.end ?? early.end)
  }
  if (line.at(at) === the.as) return asBigAs(context, start, at + 1, null)
  if (line.at(at) === the.of || line.at(at) === the.in) at++
  const unit = longestName(line, at, 'measure')
  if (unit !== null && line.at(unit.end) === the.of) at = unit.end + 1
  const thing = thingAt(line, at, context.phrase)
  if (thing === null) return null
  const heap = line.at(thing.end) === the.as ? heapAt(line, thing.end + 1) : null
  if (heap !== null) return heaped(heap.on, thing.name, start, heap.end)
  if (isToTaste(line, thing.end)) return eggsThatWeigh(line, start, thing)
  const big = line.at(thing.end) === the.as ? asBigAs(context, start, thing.end + 1, thing) : null
  if (big !== null) return big
  const beside = line.at(thing.end) === the.as ? thingAt(line, thing.end + 1, false) : null
  const value = times?.value ?? 1
  return statement('comparison', start, beside?.end ?? thing.end, {
    amount: { low: value, high: value },
    measure: 'as-much',
    thing: thing.name,
    refers: true,
    beside: beside?.name,
  })
}

/** *as many eggs as weigh the sugar*. */
function eggsThatWeigh(line: Line, start: number, thing: Thing): Statement | null {
  let at = thing.end + 1
  while (at < thing.end + 4 && line.is(at, Role.Plain) && line.at(at) !== the.weigh) at++
  if (line.at(at) !== the.weigh) return null
  const other = thingAt(line, at + 1, false)
  if (other === null) return null
  return statement('comparison', start, other.end, {
    amount: once,
    measure: 'equal-weight',
    thing: thing.name,
    refers: true,
    beside: other.name,
  })
}

/** *as much butter as a walnut*, *as much as an egg of butter*. */
function asBigAs(context: Context, start: number, at: number, thing: Thing | null): Statement | null {
  const { line } = context
  const size = sizeAt(line, at) ?? (line.is(at, Role.Article) ? objectAt(line, at) : null)
  if (size === null) return null
  const of = thing === null && line.at(size.end) === the.of ? thingAt(line, size.end + 1, context.phrase) : null
  if (thing === null && of === null) return null
  return bigness(size, thing?.name ?? of!.name, 1, start, of?.end ?? size.end, null)
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

/** *twice*, *double*, *half*, *three quarters of*. */
function multipleAt(line: Line, start: number): { value: number; end: number } | null {
  const word = line.at(start)
  if ((word.roles & Role.Twice) !== 0) return { value: /^(thrice|treble|triple)$/.test(word.text) ? 3 : 2, end: start + 1 }
  const value = valueAt(line, start)
  if (value === null || value.article) return null
  const times = line.at(value.end) === the.time ? value.end + 1 : value.end
  return { value: value.value, end: line.at(times) === the.of ? times + 1 : times }
}

/** *the like quantity of harts-tongue*, *the same of lard*, *an equal weight of sugar*, *their weight in fine sugar*. */
export function alikeAt(context: Context, start: number): Statement | null {
  const { line, measured } = context
  const times = line.is(start, Role.Determiner | Role.Article | Role.Alike) ? null : multipleAt(line, start)
  let at = times?.end ?? start
  const first = at
  while (at < first + 3 && line.is(at, Role.Determiner | Role.Article) && !line.is(at, Role.Alike)) at++
  const alike = line.is(at, Role.Alike)
  if (alike) at++
  const byWeight = line.is(at, Role.Weight)
  const owned = at > first && line.is(first, Role.Determiner) && !line.is(first, Role.Article)
  if (byWeight || line.is(at, Role.Quantity)) at++
  else if (!alike || line.at(at) !== the.of) return null
  if (byWeight ? !alike && !owned : !alike) return null
  let value = times?.value ?? 1
  const more = byWeight ? addedPart(line, at) : null
  if (more !== null) {
    value += more.value
    at = more.end
  }
  const pronoun = byWeight && line.at(at) === the.of && (line.at(at + 1) === the.it || line.at(at + 1) === the.them)
  if (pronoun) at += 2
  if (line.at(at) !== the.of && line.at(at) !== the.in) return null
  if (byWeight && !pronoun && !alike && line.at(first) === the.the) return null
  const thing = thingAt(line, at + 1, true)
  const name = thing?.name ?? (line.at(pastDescribing(line, at + 1)).text === 'one' ? (measured?.thing ?? null) : null)
  if (name === null) return null
  return statement('comparison', start, thing?.end ?? at + 2, {
    amount: { low: value, high: value },
    measure: byWeight ? 'equal-weight' : 'as-much',
    thing: name,
    refers: true,
  })
}

/** *the weight of six eggs in sugar*, *the weight of the whites of eight eggs in flour*, *the weight of two shillings of mace*. */
export function weightOfAt(context: Context, start: number): Statement | null {
  const { line } = context
  let at = start
  while (at < start + 2 && line.is(at, Role.Determiner | Role.Article)) at++
  if (!line.is(at, Role.Weight) || line.at(at + 1) !== the.of) return null
  at += 2
  if (line.is(at, Role.Determiner)) at++
  const parts = line.is(at, Role.White | Role.Yolk) ? at : -1
  if (parts >= 0 && line.at(at + 1) === the.of) at += 2
  const amount = amountAt(line, at)
  if (amount === null) return weightOfThing(context, start, at)
  let end = line.is(amount.end, Role.White | Role.Yolk) ? amount.end : pastDescribing(line, amount.end)
  let measure: string
  let { low, high } = amount
  const coin = longestName(line, end, 'coin')
  if (coin !== null) {
    measure = `weight of ${withArticle(coin.row.label)}`
    end = coin.end
    const and = line.at(end) === mark.comma ? end + 1 : end
    const more = line.at(and) === the.and ? amountAt(line, and + 1) : null
    const small = more === null ? null : longestName(line, more.end, 'coin')
    if (more !== null && small !== null && coin.row.worth && small.row.worth) {
      low += (more.low * small.row.worth) / coin.row.worth
      high += (more.high * small.row.worth) / coin.row.worth
      end = small.end
    }
  } else {
    const white = line.is(end, Role.White | Role.Yolk) ? end : parts
    if (white === end && line.at(end + 1) === the.of) end = pastDescribing(line, end + 2)
    if (!line.is(end, Role.Egg)) return null
    measure = white < 0 ? 'weight-of-eggs' : line.is(white, Role.White) ? 'weight-of-egg-whites' : 'weight-of-egg-yolks'
    end++
  }
  return ofWhat(context, start, end, measure, { low, high })
}

/** *the weight of the eggs in sugar*: as much sugar as the eggs weigh. */
function weightOfThing(context: Context, start: number, at: number): Statement | null {
  const { line } = context
  const other = thingAt(line, at, false)
  if (other === null || line.at(other.end) !== the.in) return null
  const thing = thingAt(line, other.end + 1, context.phrase)
  if (thing === null) return null
  return statement('comparison', start, thing.end, {
    amount: once,
    measure: 'equal-weight',
    thing: thing.name,
    refers: true,
    beside: other.name,
  })
}

/** The thing of a weight, behind it (*in sugar*, *of mace*) or before it (*of ginger, the weight of five groats*). */
function ofWhat(context: Context, start: number, end: number, measure: string, amount: { low: number; high: number }): Statement {
  const { line, loose } = context
  const last = loose.at(-1)
  const before = last !== undefined && (last.end === start || (last.end === start - 1 && line.at(last.end) === mark.comma))
  if (before && line.at(end) === mark.comma) return statement('comparison', last.start, end, { amount, measure, thing: last.name })
  let at = line.at(end) === mark.comma ? end + 1 : end
  if (line.at(at) === the.in || line.at(at) === the.of || line.at(at).text === 'into') {
    at++
    const each = line.is(at, Role.Each)
    const thing = thingAt(line, each ? at + 1 : at, context.phrase)
    if (thing !== null) return statement('comparison', start, thing.end, { amount, measure, thing: thing.name, each })
  }
  return statement('comparison', before ? last.start : start, end, { amount, measure, thing: before ? last.name : null })
}
