import type { MeasureWordRow } from '../tables/index.js'
import { type Amount, addedPart, amountAt } from './amount.js'
import { pricedAt, worthAt } from './priced.js'
import type { AmountPart, Range } from './reading.js'
import { type Context, type Statement, statement } from './statement.js'
import { longestName, type Named, pastDescribing, sharedThings, type Thing, thingAt } from './thing.js'
import { timeAt } from './time.js'
import type { Line } from './tokens.js'
import { lexicon, the } from './vocabulary.js'
import { mark, Role } from './word.js'

/** An amount with its measure, before the thing. */
interface Stated {
  readonly unit: MeasureWordRow
  readonly amount: Range
  readonly end: number
  readonly parts: readonly AmountPart[]
}

const measures = new Set(['weight', 'capacity', 'spoon', 'cup', 'hand', 'piece'])
const vessels = new Set([
  'mould',
  'pan',
  'basin',
  'bottle',
  'jar',
  'mug',
  'jug',
  'dish',
  'pot',
  'can',
  'bowl',
  'kettle',
  'saucepan',
  'stewpan',
  'tin',
  'cup',
  'glass',
  'ladle',
])

/** Words between an amount and its measure: *a good wine pint*, *two heaping tablespoonfuls*. */
export function pastQualifiers(line: Line, start: number): { end: number; qualifier: string | null; standard: string | null } {
  let qualifier: string | null = null
  let standard: string | null = null
  let end = start
  while (end < start + 5) {
    const word = line.at(end)
    const unit = longestName(line, end, 'measure')
    if (unit !== null && (unit.end > end + 1 || !line.is(end, Role.Standard))) break
    if ((word.roles & Role.Qualifier) !== 0) qualifier = word.qualifier
    else if ((word.roles & Role.Standard) !== 0 && (line.at(end + 1).measure !== null || line.is(end + 1, Role.Qualifier)))
      standard = word.text
    else if ((word.roles & (Role.Describing | Role.Degree)) === 0 || word.thing !== null) break
    end++
  }
  return { end, qualifier, standard }
}

/** The measure at a token, unless a longer name of a thing starts there: *a pound cake* is no pound. */
function unitAt(line: Line, at: number): Named<MeasureWordRow> | null {
  const unit = longestName(line, at, 'measure')
  if (unit === null) return null
  const thing = longestName(line, at, 'thing')
  return thing !== null && thing.end > unit.end ? null : unit
}

/** Whether a word that is not always a measure is one here: *a glass of wine*, but not *a glass*. */
function holds(context: Context, unit: MeasureWordRow, end: number, amount: Amount): boolean {
  const { line } = context
  const next = line.at(end)
  if (unit.needs === undefined)
    return (
      !isVessel(line, end) && ((unit.class !== 'spoon' && unit.class !== 'cup') || !amount.article || next === the.of || isFull(line, end))
    )
  if (unit.needs === 'full') return next === the.full
  if (next === the.of) return !line.is(end + 1, Role.Determiner) || line.at(end + 1) === the.the
  // "cayenne, two cloves": the cloves are themselves the thing.
  if (line.at(end - 1).thing?.count === 'each') return false
  if (next === the.full || next === the.each || line.at(end - 1) === the.full) return true
  if (!amount.article && standsBehind(context, amount) && (next.roles & Role.Mark) !== 0) return true
  return !amount.article && unit.class !== 'vague' && thingAt(line, end, false) !== null
}

/** A spoonful is an amount, a spoon a tool. */
const isFull = (line: Line, end: number): boolean =>
  line.at(end - 1) === the.full || /ful/i.test(line.text.slice(line.start(end - 1), line.end(end - 1)))

/** Whether the last thing named stands right before this amount: *mace, 2 blades*. */
function standsBehind(context: Context, amount: Amount): boolean {
  const { line } = context
  const last = context.loose.at(-1)
  if (last === undefined) return false
  let at = last.end
  while (at < amount.start && isBetween(line, at)) at++
  return at === amount.start
}

/** Commas and words such as *of each of these* between a thing and its amount. */
const isBetween = (line: Line, at: number): boolean =>
  line.at(at) === mark.comma ||
  line.at(at) === the.of ||
  line.at(at) === the.both ||
  line.is(at, Role.Each | Role.Describing | Role.Determiner)

/** A pint basin holds a pint, but asks for none. */
const isVessel = (line: Line, at: number): boolean => vessels.has(line.at(at).text) && line.at(at + 1) !== the.of

const orMore = new Set(['more', 'less', 'so', 'thereabouts', 'upwards', 'better', 'above', 'rather', 'something'])

/** Adds what stands behind the measure: *and a half*, *or two*, *and three ounces*. */
function withTails(line: Line, unit: Named<MeasureWordRow>, amount: Amount): Stated {
  let { low, high } = amount
  let end = pastNoise(line, unit.end)
  const parts: AmountPart[] = [{ amount: { low, high }, measure: unit.row.label }]
  const added = addedPart(line, end)
  if (
    added !== null &&
    line.at(added.end).measure === null &&
    !(line.is(added.end, Role.Article) && line.at(added.end + 1).measure !== null)
  ) {
    low += added.value
    high += added.value
    end = added.end
  }
  if (line.at(end) === the.or && orMore.has(line.at(end + 1).text)) end += 2
  const more = rangeOfMeasures(line, end, unit.row)
  if (more !== null) {
    high = Math.max(high, more.high)
    end = more.end
  }
  for (let next = smallerMeasure(line, end, unit.row); next !== null; next = smallerMeasure(line, end, next.unit)) {
    const share = shareOf(next.unit, unit.row)
    parts.push({ amount: { low: next.low, high: next.high }, measure: next.unit.label })
    low += next.low * share
    high += next.high * share
    end = next.end
  }
  return { unit: unit.row, amount: { low, high }, end: pastNoise(line, end), parts: parts.length > 1 ? parts : [] }
}

/** Skips *weight*, *full* and a gloss in brackets that stand between a measure and its thing. */
function pastNoise(line: Line, at: number): number {
  let end = at
  if (line.is(end, Role.Weight) && line.at(end + 1) !== the.in) end++
  if (line.at(end) === the.full || (vessels.has(line.at(end).text) && line.at(end + 1) === the.of)) end++
  if (line.at(end) !== mark.open) return end
  for (let close = end + 1; close < end + 9; close++)
    if (line.at(close) === mark.close) return line.at(close + 1) === the.of ? close + 1 : end
  return end
}

/** *a handful or two*, *half a pound to thirty pounds*: the far end of a range that repeats its measure or leaves it out. */
function rangeOfMeasures(line: Line, at: number, unit: MeasureWordRow): { high: number; end: number } | null {
  const joint = line.at(at)
  if (joint !== the.or && joint !== the.to && joint !== mark.hyphen && joint !== mark.dash) return null
  const second = amountAt(line, at + 1)
  if (second === null) return null
  const again = unitAt(line, second.end)
  if (again !== null) {
    if (again.row !== unit) return null
    const added = addedPart(line, again.end)
    return { high: second.high + (added?.value ?? 0), end: added?.end ?? again.end }
  }
  if (second.article || joint !== the.or) return null
  return line.at(second.end) === the.of || thingAt(line, second.end, false) === null ? { high: second.high, end: second.end } : null
}

/** The next term of a compound: *and two ounces*, *4 oz.* behind pounds. */
function smallerMeasure(line: Line, at: number, unit: MeasureWordRow): (Amount & { unit: MeasureWordRow }) | null {
  const joined = line.at(at) === the.and
  const amount = amountAt(line, joined ? at + 1 : at)
  if (amount === null || amount.each || amount.qualifier !== null || (!joined && amount.article)) return null
  const smaller = unitAt(line, amount.end)
  if (smaller === null || smaller.row.class !== unit.class || shareOf(smaller.row, unit) === 0) return null
  return { ...amount, end: smaller.end, unit: smaller.row }
}

/** How much of a larger measure a smaller one is; 0 where they are not of one chain. */
function shareOf(smaller: MeasureWordRow, larger: MeasureWordRow): number {
  let share = 1
  let row: MeasureWordRow | null = smaller
  while (row?.within !== undefined && row.parts !== undefined) {
    share /= row.parts
    if (row.within === larger.id) return share
    row = lexicon.get(row.within).measure
  }
  return 0
}

/** *lib. iij*, *℥ ss*, *oz. 4*: physicians and cooks who wrote Latin put the number last. */
function measureFirst(line: Line, start: number): { unit: Named<MeasureWordRow>; amount: Amount } | null {
  const unit = unitAt(line, start)
  if (unit === null || !line.short(start)) return null
  const amount = amountAt(line, unit.end)
  if (amount === null || amount.article || amount.each || unitAt(line, amount.end)?.row.class === unit.row.class) return null
  return { unit: { row: unit.row, end: amount.end }, amount }
}

/** The thing of a measure, behind it or, in lists, before it. */
function thingOf(context: Context, stated: Stated, amount: Amount): { thing: Thing | null; each: boolean; start: number; end: number } {
  const { line } = context
  const { start } = amount
  let at = stated.end
  let each = line.is(at, Role.Each) || amount.each
  if (line.is(at, Role.Each)) at++
  const of = line.at(at) === the.of
  if (of && line.is(at + 1, Role.Each) && line.at(at + 1) !== the.every) {
    each = true
    at += 2
    if (line.at(at) === the.of) at++
  } else if (of) at++
  const listed = standsBehind(context, amount)
  const ended = listed && line.text[line.end(stated.end - 1)] === '.' && isCapital(line, at)
  const found = !ended && (of || each || !isVessel(line, at)) ? thingAt(line, at, of) : null
  if (found !== null && madeHere.has(found.name) && stated.unit.class === 'piece') return { thing: null, each, start, end: -1 }
  if (found !== null) return { thing: sharedThings(line, found, each), each, start, end: 0 }
  const before = listed ? groupBefore(context, each || line.is(start - 1, Role.Each)) : null
  const bearer = line.at(start - 1) === the.of && !of ? bearerBefore(context, start - 1) : null
  if (bearer !== null) return { thing: bearer, each, start: bearer.start, end: at }
  if (before !== null) return { thing: before, each: each || before.names.length > 1, start: before.start, end: at }
  return { thing: null, each, start, end: of ? stated.end : at }
}

/** What has the weight: *a turkey of ten pounds*. */
function bearerBefore(context: Context, of: number): Thing | null {
  const last = context.loose.at(-1)
  return last?.end === of ? last : null
}

/** What a receipt makes and then cuts up: *a sheet of paste* is a step, not an ingredient. */
const madeHere = new Set(['paste', 'dough', 'batter'])

const isCapital = (line: Line, at: number): boolean => at < line.length && /^[A-Z]/.test(line.text[line.start(at)]!)

/** The thing named last, or with *each* every thing of the list that it closes. */
function groupBefore(context: Context, list: boolean): Thing {
  const { line, loose } = context
  const last = loose.at(-1)!
  const names = [last.name]
  let start = last.start
  for (let i = loose.length - 2; list && i >= 0; i--) {
    const earlier = loose[i]!
    let at = earlier.end
    // A cook's word that no table knows does not end the list.
    while (
      at < start &&
      (line.at(at) === mark.comma ||
        line.at(at) === mark.colon ||
        line.at(at) === the.and ||
        line.is(at, Role.Describing) ||
        line.at(at).roles === 0)
    )
      at++
    if (at !== start) break
    names.unshift(earlier.name)
    start = earlier.start
  }
  return { ...last, start, name: names[0]!, names }
}

/** *four of vinegar*, *two ditto of ketchup*: the measure is that of the statement before. */
function elidedAt(context: Context, start: number, amount: Amount): Statement | null {
  const { line, measured } = context
  if (measured === null || amount.article || amount.each || measured.kind !== 'measured') return null
  const ditto = line.at(amount.end) === the.ditto
  const of = ditto ? amount.end + 1 : amount.end
  if (line.at(of) !== the.of || line.is(of + 1, Role.Determiner)) return null
  const thing = thingAt(line, of + 1, true)
  if (thing === null || (thing.row?.count !== undefined && !ditto)) return null
  return statement('measured', start, thing.end, {
    amount: { low: amount.low, high: amount.high },
    measure: measured.measure,
    thing: thing.name,
    qualifier: amount.qualifier,
  })
}

/** A half or more behind the thing: *a pound of flour and a half*. */
function trailingPart(line: Line, at: number): { value: number; end: number } | null {
  const added = line.at(at) === the.and ? addedPart(line, at) : null
  if (added === null) return null
  const free =
    line.at(added.end).measure === null &&
    line.at(added.end) !== the.of &&
    !line.is(added.end, Role.Article | Role.Determiner) &&
    thingAt(line, added.end, false) === null
  return free ? added : null
}

/** Words that begin a measured statement without an amount: *gill of cold water*, *pinch of salt*. */
function bareAmount(line: Line, start: number): Amount | null {
  const unit = unitAt(line, start)
  if (
    unit === null ||
    unit.row.class === 'vague' ||
    unit.row.class === 'time' ||
    line.is(start - 1, Role.Determiner | Role.Vague | Role.Qualifier | Role.Cardinal)
  )
    return null
  if (unit.row.class !== 'money' && (line.at(unit.end) !== the.of || line.text[line.end(start) - 1] === 's')) return null
  return { low: 1, high: 1, start, end: start, article: false, each: false, qualifier: null }
}

/** A stated measure of a thing: weights, vessels, spoons, hands, pieces, pennyworths, loaves by price, and lengths of time. */
export function measuredAt(context: Context, start: number): Statement | null {
  const { line } = context
  const latin = measureFirst(line, start)
  const amount = latin?.amount ?? amountAt(line, start) ?? bareAmount(line, start)
  if (amount === null) return null
  const between = latin === null ? pastQualifiers(line, amount.end) : { end: latin.unit.end, qualifier: null, standard: null }
  const unit = latin?.unit ?? unitAt(line, between.end)
  if (unit === null) return pricedAt(context, start, amount, between.end) ?? elidedAt(context, start, amount)
  if (unit.row.class === 'time') return timeAt(context, start, amount, unit)
  if (unit.row.class === 'money') return worthAt(context, start, amount, unit)
  if (!measures.has(unit.row.class)) return null
  const loaf = pricedAt(context, start, amount, between.end)
  if (loaf !== null) return loaf
  const stated = withTails(line, unit, amount)
  if (!holds(context, unit.row, stated.end, amount)) return null
  const standard = between.standard ?? standardBehind(line, stated.end)
  const found = thingOf(
    context,
    standard === null || between.standard !== null ? stated : { ...stated, end: pastStandard(line, stated.end) },
    amount,
  )
  if (found.end < 0 || (found.thing === null && line.at(found.end) === the.of && unit.row.needs === 'of')) return null
  if (found.thing === null && (isAside(line, unit.row, found.end, amount) || (found.each && !amount.each))) return null
  let end = Math.max(found.end, found.start === start ? (found.thing?.end ?? 0) : 0)
  let { low, high } = stated.amount
  const trailing = found.start === start && found.thing !== null ? trailingPart(line, end) : null
  if (trailing !== null) {
    low += trailing.value
    high += trailing.value
    end = trailing.end
  }
  const thing = found.thing
  const spokenOf = thing === null && amount.each ? lastNamed(context) : null
  return statement('measured', found.start, end, {
    amount: { low, high },
    measure: unit.row.label,
    thing: thing?.name ?? spokenOf,
    ...(spokenOf !== null && { implied: true }),
    qualifier: between.qualifier ?? amount.qualifier,
    ...(thing !== null && thing.names.length > 1 && { things: thing.names }),
    ...(found.each && { each: true }),
    ...(standard !== null && { standard }),
    ...(stated.parts.length > 0 && { parts: stated.parts }),
    ...(thing !== null && thing.row === null && { unknown: pastDescribing(line, thing.start) }),
  })
}

/** *to every pound* without a word more means the thing that was spoken of last. */
const lastNamed = (context: Context): string | null => context.loose.at(-1)?.name ?? context.last?.thing ?? null

/** A measure of nothing: a gloss in brackets, the size of a vessel, what something holds. */
function isAside(line: Line, unit: MeasureWordRow, end: number, amount: Amount): boolean {
  if (line.at(end) === mark.close) return true
  const before = line.at(amount.start - 1)
  return (
    amount.article &&
    (holding.has(before.text) || (unit.class === 'capacity' && (before === the.in || before === the.into || before === the.on)))
  )
}

const holding = new Set(['hold', 'holding', 'contain', 'containing'])

/** *a pint, wine measure*; *a pound troy*. */
function standardBehind(line: Line, at: number): string | null {
  const word = line.at(line.at(at) === mark.comma ? at + 1 : at)
  return (word.roles & Role.Standard) !== 0 && pastStandard(line, at) > at ? word.text : null
}

function pastStandard(line: Line, at: number): number {
  const first = line.at(at) === mark.comma ? at + 1 : at
  if (line.at(first + 1).text === 'measure' || line.is(first + 1, Role.Weight)) return first + 2
  return ['troy', 'avoirdupois'].includes(line.at(first).text) ? first + 1 : at
}
