import { multipleAt, nameBefore } from './alike.js'
import { type Fill, fillAt } from './heap.js'
import type { Line } from './line.js'
import { longestName } from './lookup.js'
import { bigness, objectAt, sizeAt } from './size.js'
import { type Context, once, type Statement, statement } from './statement.js'
import { isEntryEnd, type Thing, thingAt } from './thing.js'
import { the } from './vocabulary.js'
import { mark, Role } from './word.js'

/** Skips what stands between commas: *as much cream, blood-warm, as will …*. */
function pastAside(line: Line, start: number): number {
  if (line.at(start) !== mark.comma) return start
  for (let at = start + 1; at < start + 8; at++) if (line.at(at) === mark.comma) return at + 1
  return start
}

/** What makes *as much as* a quantity that no table can give: *as will make it stiff*, *as you please*. */
function isToTaste(line: Line, behind: number): boolean {
  const at = pastAside(line, behind)
  if (line.at(at) !== the.as) return false
  const next = line.at(at + 1)
  if (next === the.you)
    return !line.is(at + 2, Role.Plain) || !['do', 'have', 'did', 'had', 'put', 'take', 'took'].includes(line.at(at + 2).text)
  return line.is(at + 1, Role.Plain) && next.thing === null && next !== the.for && next !== the.in && next !== the.of && next !== the.there
}

/** *as much ale*, *half as much of sugar*, *as many blades of mace*, *as much mace as will lie on a sixpence*. */
export function asMuchAt(context: Context, start: number): Statement | null {
  const { line } = context
  const times = line.at(start) === the.as || line.at(start) === the.so ? null : multipleAt(line, start)
  let at = times?.end ?? start
  if ((line.at(at) !== the.as && line.at(at) !== the.so) || (line.at(at + 1) !== the.much && line.at(at + 1) !== the.many)) return null
  const many = line.at(at + 1) === the.many
  at += 2
  if (line.at(at) === the.more || line.at(at).text === 'again') at++
  const early = line.at(at) === the.as ? fillAt(line, at + 1) : null
  if (early !== null) {
    const of = line.at(early.end) === the.of ? thingAt(line, early.end + 1, true) : null
    const before = of === null ? nameBefore(context, start) : null
    return filled(early, of?.name ?? before?.name ?? null, before?.start ?? start, of?.end ?? early.end)
  }
  if (line.at(at) === the.as) return asBigAs(context, start, at + 1, null)
  const byWeight = (line.at(at) === the.in || line.at(at) === the.by) && line.is(at + 1, Role.Weight)
  if (byWeight) at += 2
  const of = line.at(at) === the.of || line.at(at) === the.in
  if (of) at++
  const unit = longestName(line, at, 'measure')
  const named = unit !== null && line.at(unit.end) === the.of ? unit : null
  if (named !== null) at = named.end + 1
  const value = times?.value ?? 1
  // "as many lemons" are told one by one, whatever went before; "as many of sugar" in the measure of what went before.
  const counted = named?.row.label ?? (many && !of ? 'none' : null)
  const known = {
    amount: { low: value, high: value },
    measure: byWeight ? 'equal-weight' : many ? 'as-many' : 'as-much',
    unit: counted,
    refers: true,
  }
  const thing = thingAt(line, at, context.phrase)
  if (thing === null) {
    // "cayenne, half as much"
    const before = isEntryEnd(line, at) ? nameBefore(context, start) : null
    if (before !== null) return statement('comparison', before.start, at, { ...known, thing: before.name })
    return context.phrase && at >= line.length ? statement('comparison', start, at, known) : null
  }
  const fill = line.at(thing.end) === the.as ? fillAt(line, thing.end + 1) : null
  if (fill !== null) return filled(fill, thing.name, start, fill.end)
  if (isToTaste(line, thing.end)) return eggsThatWeigh(line, start, thing)
  const big = line.at(thing.end) === the.as ? asBigAs(context, start, thing.end + 1, thing) : null
  if (big !== null) return big
  const beside = line.at(thing.end) === the.as ? thingAt(line, pastThereAre(line, thing.end + 1), false) : null
  const again = line.at(thing.end).text === 'again' ? thing.end + 1 : thing.end
  return statement('comparison', start, beside?.end ?? again, { ...known, thing: thing.name, beside: beside?.name })
}

const filled = ({ kind, amount, measure }: Fill, thing: string | null, start: number, end: number): Statement =>
  statement(kind, start, end, { amount, measure, thing })

/** Skips *of*, *there are*, *you have* before what is compared with. */
function pastThereAre(line: Line, at: number): number {
  if (line.at(at) === the.of) return at + 1
  return (line.at(at) === the.there || line.at(at) === the.you) && line.is(at + 1, Role.Plain) ? at + 2 : at
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
  const size = sizeAt(line, at) ?? (line.is(at, Role.Article | Role.Cardinal) ? objectAt(line, at) : null)
  if (size === null) return null
  const of = thing === null && line.at(size.end) === the.of ? thingAt(line, size.end + 1, context.phrase) : null
  const last = context.loose.at(-1)
  if (thing === null && of === null && last?.end === start) return bigness(size, last.name, 1, last.start, size.end, null)
  const named = thing ?? of
  return named === null ? null : bigness(size, named.name, 1, start, of?.end ?? size.end, null)
}
