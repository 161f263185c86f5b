import { amountAt } from './amount.js'
import { groupBefore } from './before.js'
import { eggNamed } from './egg-clauses.js'
import type { Line } from './line.js'
import { longestName } from './lookup.js'
import { withArticle } from './size.js'
import { type Context, once, type Statement, statement } from './statement.js'
import { pastDescribing, severalOf, sharedThings, type Thing, thingAt } from './thing.js'
import { addedPart, valueAt } from './value.js'
import { the } from './vocabulary.js'
import { mark, Role } from './word.js'

/** *twice*, *double*, *half*, *three quarters of*, *a third part*. */
export function multipleAt(line: Line, start: number): { value: number; end: number } | null {
  const word = line.at(start)
  if ((word.roles & Role.Twice) !== 0) return { value: /^(thrice|treble|triple)$/.test(word.text) ? 3 : 2, end: start + 1 }
  const named = line.is(start, Role.Article) ? start + 1 : start
  if (line.is(named, Role.Part) && line.at(named + 1).text === 'part') return { value: line.value(named), end: named + 2 }
  const value = valueAt(line, start)
  if (value === null || value.article) return null
  const times = line.at(value.end) === the.time ? value.end + 1 : value.end
  return { value: value.value, end: line.at(times) === the.of ? times + 1 : times }
}

/** Words that liken one amount to another, before the thing that they are said of. */
interface Likening {
  readonly value: number
  readonly byWeight: boolean
  /** *Their weight* is that of the thing spoken of before any other weighing. */
  readonly theirs: boolean
  /** *equal quantities of oil and vinegar* compares the two; *an equal quantity* compares with what went before. */
  readonly mutual: boolean
  /** The words *of* or *in* must stand before a thing that follows. */
  readonly end: number
}

/** *the like quantity*, *an equal weight*, *twice their own weight*, *double the quantity*, *the same*, *double that*. */
function likeningAt(line: Line, start: number): Likening | null {
  const bare = line.is(start, Role.Determiner | Role.Alike) || (line.is(start, Role.Article) && !line.is(start + 1, Role.Part))
  const times = bare ? null : multipleAt(line, start)
  let at = times?.end ?? start
  const first = at
  while (at < first + 3 && line.is(at, Role.Determiner | Role.Article) && !line.is(at, Role.Alike)) at++
  const owner = line.at(at - 1)
  const theirs = at > first && (line.is(first, Role.Determiner) || owner === the.its) && !line.is(first, Role.Article) && owner !== the.the
  if (line.at(at).text === 'own') at++
  const alike = line.is(at, Role.Alike)
  if (alike) at++
  const byWeight = line.is(at, Role.Weight)
  const mutual = line.text[line.end(at) - 1] === 's' && !line.is(at, Role.Mark)
  const value = times?.value ?? 1
  const found = { byWeight, theirs: byWeight && theirs && !alike, mutual }
  if (byWeight) {
    if (!alike && !theirs && times === null && !isOfPronoun(line, at + 1)) return null
    const more = addedPart(line, at + 1)
    const again = more !== null && line.is(more.end, Role.Determiner) && line.is(more.end + 1, Role.Weight)
    return { ...found, value: value + (more?.value ?? 0), end: again ? more.end + 2 : (more?.end ?? at + 1) }
  }
  if (line.is(at, Role.Quantity) || (alike && line.at(at).text === 'part'))
    return alike || times !== null ? { ...found, value, end: at + 1 } : null
  if (alike && line.at(at) === the.much) return { ...found, value, end: at + 1 }
  // "mace, the same": a list goes on with it.
  const listed = line.at(at - 1) === the.same && line.at(start - 1) === mark.comma && line.is(at, Role.Mark)
  if (alike) return listed || line.at(at) === the.of || line.is(start - 1, Role.Each) ? { ...found, value, end: at } : null
  return times !== null && owner === the.that && line.at(at) === the.of ? { ...found, value, end: at } : null
}

/** *the weight of it*. */
const isOfPronoun = (line: Line, at: number): boolean =>
  line.at(at) === the.of && (line.at(at + 1) === the.it || line.at(at + 1) === the.them)

/** The thing named right before a likening: *sugar the same weight*. */
export function nameBefore({ line, loose }: Context, start: number): Thing | null {
  const last = loose.at(-1)
  return last !== undefined && (last.end === start || (last.end === start - 1 && line.at(last.end) === mark.comma)) ? last : null
}

/** *sugar, flour and butter, of each a like quantity*: as much of one as of another, and how much is left open. */
function alikeOfEach(context: Context, start: number, end: number): Statement | null {
  const { line } = context
  const each = line.at(start - 2) === the.of ? start - 2 : start - 1
  if (nameBefore(context, each) === null) return null
  const { name, names, start: first } = groupBefore(context, true)
  return statement('comparison', first, end, { amount: once, measure: 'as-much', thing: name, things: names.length > 1 ? names : null })
}

/** *the like quantity of harts-tongue*, *the same of lard*, *an equal weight of sugar*, *their weight in fine sugar*, *sugar the same weight*. */
export function alikeAt(context: Context, start: number): Statement | null {
  const { line, measured, phrase } = context
  const likening = likeningAt(line, start)
  if (likening === null) return null
  const { value, byWeight, theirs, mutual } = likening
  let { end: at } = likening
  if (byWeight && isOfPronoun(line, at)) at += 2
  const known = {
    amount: { low: value, high: value },
    measure: byWeight ? 'equal-weight' : 'as-much',
    theirs,
    refers: !mutual,
  }
  if (line.at(at) !== the.of && line.at(at) !== the.in) {
    if (line.is(start - 1, Role.Each)) return alikeOfEach(context, start, at)
    const before = nameBefore(context, start)
    if (before !== null) return statement('comparison', before.start, at, { ...known, thing: before.name })
    return phrase && (line.is(at, Role.Mark) || at === line.length) ? statement('comparison', start, at, known) : null
  }
  const named = thingAt(line, at + 1, true)
  const thing = mutual && named !== null ? sharedThings(line, named, false) : named
  const ones = thing === null ? onesAt(line, at + 1, measured) : null
  const name = thing?.name ?? ones?.name ?? null
  if (name === null) return null
  const end = thing?.end ?? ones!.end
  const beside = line.at(end) === the.as ? besideAt(line, end + 1) : null
  return statement('comparison', start, beside?.end ?? end, { ...known, thing: name, things: severalOf(thing), beside: beside?.name })
}

/** *bitter almonds, and the same of sweet ones*: of the last thing, but of another kind where a word says so. */
function onesAt(line: Line, start: number, measured: Statement | null): { name: string; end: number } | null {
  const at = pastDescribing(line, start)
  const name = measured?.thing
  if (!name || line.at(at).text !== 'one') return null
  return { name: at > start ? name.slice(name.lastIndexOf(' ') + 1) : name, end: at + 1 }
}

/** *the same weight of sugar as of suet*. */
function besideAt(line: Line, at: number): Thing | null {
  return thingAt(line, line.at(at) === the.of ? at + 1 : at, false)
}

/** *a shilling's weight of mace*, *half a crown's weight*; a pennyweight is a weight of its own. */
function weightOfCoinsAt(context: Context, start: number): Statement | null {
  const { line } = context
  // "half a crown" is one coin.
  const bare = longestName(line, start, 'coin') !== null
  const amount = bare ? { ...once, end: start } : amountAt(line, start)
  const coin = amount === null ? null : longestName(line, amount.end, 'coin')
  if (amount === null || coin === null || !line.is(coin.end, Role.Weight) || longestName(line, coin.end - 1, 'measure') !== null)
    return null
  return ofWhat(context, start, coin.end + 1, `weight of ${withArticle(coin.row.label)}`, { low: amount.low, high: amount.high })
}

/** *the weight of six eggs in sugar*, *twice the weight of the fruit in sugar*, *the weight of two shillings of mace*. */
export function weightOfAt(context: Context, start: number): Statement | null {
  const { line } = context
  const equal = equalTo(line, start)
  if (equal !== null) return weightOf(context, equal.start, equal.at, 1) ?? asHeavyAs(context, equal.start, equal.at)
  const times = line.is(start, Role.Determiner | Role.Article) ? null : multipleAt(line, start)
  const by = times?.value ?? 1
  const first = times?.end ?? start
  let at = first
  while (at < first + 2 && line.is(at, Role.Determiner | Role.Article)) at++
  if (!line.is(at, Role.Weight) || line.at(at + 1) !== the.of) return weightOfCoinsAt(context, start)
  at = line.is(at + 2, Role.Determiner) ? at + 3 : at + 2
  return weightOf(context, start, at, by) ?? weightOfThing(context, start, at, by)
}

/** *the weight of a nutmeg in cloves*: no nutmeg goes in. */
function weightOfPieces(context: Context, start: number, at: number, amount: { low: number; high: number }): Statement | null {
  const piece = thingAt(context.line, at, false)
  return piece?.row?.count === 'each' ? ofWhat(context, start, piece.end, `weight of ${withArticle(piece.name)}`, amount) : null
}

/** *equal in weight to*, *in weight equal to*: where the statement starts, and what stands behind. */
function equalTo(line: Line, start: number): { start: number; at: number } | null {
  if (line.at(start) === the.equal && line.at(start + 1) === the.in && line.is(start + 2, Role.Weight) && line.at(start + 3) === the.to)
    return { start, at: start + 4 }
  const before = line.at(start - 1) === the.in && line.is(start, Role.Weight)
  return before && line.at(start + 1) === the.equal && line.at(start + 2) === the.to ? { start: start - 1, at: start + 3 } : null
}

/** *sugar equal in weight to the apples*. */
function asHeavyAs(context: Context, start: number, at: number): Statement | null {
  const before = nameBefore(context, start)
  const other = thingAt(context.line, at, false)
  if (before === null || other === null) return null
  const known = { amount: once, measure: 'equal-weight', thing: before.name, refers: true, beside: other.name }
  return statement('comparison', before.start, other.end, known)
}

/** So many eggs or coins, behind the words for their weight. */
function weightOf(context: Context, start: number, first: number, by: number): Statement | null {
  const { line } = context
  let at = first
  const parts = line.is(at, Role.White | Role.Yolk) ? at : -1
  if (parts >= 0 && line.at(at + 1) === the.of) at += 2
  const amount = amountAt(line, at)
  if (amount === null) return null
  let end = line.is(amount.end, Role.White | Role.Yolk) ? amount.end : pastDescribing(line, amount.end)
  let measure: string
  let bird: string | null = null
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
    const egg = eggNamed(line, end) ?? elidedEggs(context, end)
    if (egg === null) return weightOfPieces(context, start, end, { low: by * low, high: by * high })
    measure = white < 0 ? 'weight-of-eggs' : line.is(white, Role.White) ? 'weight-of-egg-whites' : 'weight-of-egg-yolks'
    bird = egg.thing === 'egg' ? null : egg.thing
    end = egg.end
  }
  return { ...ofWhat(context, start, end, measure, { low: by * low, high: by * high }), beside: bird }
}

/** *the weight of four eggs in flour, of three in sugar*: the weights go on. */
export function weightGoesOnAt(context: Context, start: number): Statement | null {
  const { line, last } = context
  const amount = last?.measure?.startsWith('weight') ? amountAt(line, start + 1) : null
  if (amount === null || amount.article || amount.each) return null
  const coin = longestName(line, amount.end, 'coin')
  const end = coin?.end ?? amount.end
  if (line.at(end) !== the.in || (coin !== null) !== last!.measure!.startsWith('weight of')) return null
  const measure = coin === null ? last!.measure! : `weight of ${withArticle(coin.row.label)}`
  const weighed = ofWhat(context, start, end, measure, { low: amount.low, high: amount.high })
  return weighed.thing === null ? null : { ...weighed, beside: last!.beside }
}

/** *eight eggs, the weight of five in flour*: the eggs are those that were spoken of. */
function elidedEggs({ line, eggs }: Context, at: number): { thing: string; end: number } | null {
  return eggs !== null && line.at(at) === the.in ? { thing: eggs.thing!, end: at } : null
}

/** *the weight of the eggs in sugar*: as much sugar as the eggs weigh. */
function weightOfThing(context: Context, start: number, at: number, times: number): Statement | null {
  const { line } = context
  const other = thingAt(line, at, false)
  if (other === null || line.at(other.end) !== the.in) return null
  const thing = thingAt(line, other.end + 1, context.phrase)
  if (thing === null) return null
  return statement('comparison', start, thing.end, {
    amount: { low: times, high: times },
    measure: 'equal-weight',
    thing: thing.name,
    refers: true,
    beside: other.name,
  })
}

/** The thing of a weight, behind it (*in sugar*, *of mace*) or before it (*of ginger, the weight of five groats*). */
function ofWhat(context: Context, start: number, end: number, measure: string, amount: { low: number; high: number }): Statement {
  const { line } = context
  const before = nameBefore(context, start)
  if (before !== null && line.at(end) === mark.comma)
    return statement('comparison', before.start, end, { amount, measure, thing: before.name })
  let at = line.at(end) === mark.comma ? end + 1 : end
  if (line.at(at) === the.in || line.at(at) === the.of || line.at(at).text === 'into') {
    at++
    const each = line.is(at, Role.Each)
    const first = thingAt(line, each ? at + 1 : at, context.phrase)
    const thing = each && first !== null ? sharedThings(line, first, true) : first
    if (thing !== null)
      return statement('comparison', start, thing.end, { amount, measure, thing: thing.name, things: severalOf(thing), each })
  }
  return statement('comparison', before?.start ?? start, end, { amount, measure, thing: before?.name ?? null })
}
