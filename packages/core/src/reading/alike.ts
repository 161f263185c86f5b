import { amountAt } from './amount.js'
import { eggNamed } from './egg-clauses.js'
import type { Line } from './line.js'
import { longestName } from './lookup.js'
import { withArticle } from './size.js'
import { type Context, once, type Statement, statement } from './statement.js'
import { pastDescribing, severalOf, sharedThings, thingAt } from './thing.js'
import { addedPart, valueAt } from './value.js'
import { the } from './vocabulary.js'
import { mark, Role } from './word.js'

/** *twice*, *double*, *half*, *three quarters of*. */
export function multipleAt(line: Line, start: number): { value: number; end: number } | null {
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
  // "equal quantities of oil and vinegar" compares the two; "an equal quantity" compares with what went before.
  const mutual = line.text[line.end(at) - 1] === 's' && !line.is(at, Role.Mark)
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
  const named = thingAt(line, at + 1, true)
  const thing = mutual && named !== null ? sharedThings(line, named, false) : named
  const name = thing?.name ?? (line.at(pastDescribing(line, at + 1)).text === 'one' ? (measured?.thing ?? null) : null)
  if (name === null) return null
  return statement('comparison', start, thing?.end ?? at + 2, {
    amount: { low: value, high: value },
    measure: byWeight ? 'equal-weight' : 'as-much',
    thing: name,
    things: severalOf(thing),
    refers: !mutual,
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
    const egg = eggNamed(line, end)
    if (egg === null) return null
    measure = white < 0 ? 'weight-of-eggs' : line.is(white, Role.White) ? 'weight-of-egg-whites' : 'weight-of-egg-yolks'
    bird = egg.thing === 'egg' ? null : egg.thing
    end = egg.end
  }
  return { ...ofWhat(context, start, end, measure, { low, high }), beside: bird }
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
