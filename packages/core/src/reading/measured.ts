import type { MeasureWordRow } from '../tables/index.js'
import { type Amount, amountAt } from './amount.js'
import { bearerOf } from './bearer.js'
import { standsBehind } from './before.js'
import { orMore, trailingPart } from './counted.js'
import type { Line } from './line.js'
import type { Named } from './lookup.js'
import { pricedAt, worthAt } from './priced.js'
import { shiftBehind } from './shift.js'
import { type Stated, shareOf, statedAt, wantingBehind } from './stated.js'
import { type Context, type Statement, statement } from './statement.js'
import { severalOf, thingAt, unknownFrom } from './thing.js'
import { timeAt } from './time.js'
import { isEmptyVessel, pastQualifiers, standardBehind, unitAt } from './unit.js'
import { the } from './vocabulary.js'
import { digits, mark, Role } from './word.js'

const measures = new Set(['weight', 'capacity', 'spoon', 'cup', 'hand', 'piece'])

/** A stated measure of a thing: weights, vessels, spoons, hands, pieces, pennyworths, loaves by price, and lengths of time. */
export function measuredAt(context: Context, start: number, stated: Amount | null): Statement | null {
  const { line } = context
  if (line.at(start) === the.ditto) return dittoAt(context, start)
  const latin = latinAt(line, start, stated)
  const amount = latin?.amount ?? stated ?? bareAmount(line, start)
  if (amount === null) return null
  const between = latin === null ? pastQualifiers(line, amount.end) : { end: latin.unit.end, qualifier: null, standard: null }
  const unit = latin?.unit ?? unitAt(line, between.end)
  if (unit === null) return pricedAt(context, start, amount, between.end) ?? elidedAt(context, start, amount)
  if (unit.row.class === 'time') return timeAt(context, start, amount, unit)
  if (unit.row.class === 'money') return worthAt(context, start, amount, unit)
  if (!measures.has(unit.row.class)) return null
  return pricedAt(context, start, amount, between.end) ?? measureOf(context, amount, unit, between)
}

/** The statement of an amount in a measure, with its thing. */
function measureOf(
  context: Context,
  amount: Amount,
  unit: Named<MeasureWordRow>,
  between: { qualifier: string | null; standard: string | null },
): Statement | null {
  const { line } = context
  let stated = statedAt(line, unit, amount)
  if (!isMeasure(context, stated, amount)) return null
  const near = standardBehind(line, stated.end)
  if (near !== null) stated = { ...stated, end: near.end }
  const bearer = bearerOf(context, stated, amount)
  if (bearer === null) return null
  const { thing } = bearer
  // "equal quantities of treacle and sugar, a pound of each"
  const eachOfThese = thing === null && bearer.each && !amount.each
  const these = eachOfThese ? (context.last?.things ?? null) : null
  if (thing === null && these === null && isAside(context, stated, bearer.end, eachOfThese, amount)) return null
  const ahead = bearer.start === amount.start
  const added = thing !== null && ahead ? trailingPart(line, bearer.end) : null
  const wanting = thing !== null && ahead ? wantingBehind(line, bearer.end, unit.row) : null
  const implied = thing === null && amount.each ? lastNamed(context, unit.row.label) : null
  const told = wanting?.end ?? added?.end ?? bearer.end
  const shift = stated.qualifier === null && ahead ? shiftBehind(line, told) : null
  const end = shift?.end ?? told
  const far = near === null && ahead ? standardBehind(line, end) : null
  const more = added?.value ?? 0
  // "a race of ginger or two"
  const top = thing !== null && ahead && end === bearer.end ? orMore(line, end) : null
  const high = Math.max(stated.amount.high, top?.value ?? 0)
  return statement('measured', bearer.start, far?.end ?? top?.end ?? end, {
    amount: { low: stated.amount.low + more - (wanting?.high ?? 0), high: high + more - (wanting?.low ?? 0) },
    measure: unit.row.label,
    thing: thing?.name ?? these?.[0] ?? implied,
    qualifier: between.qualifier ?? amount.qualifier ?? stated.qualifier ?? shift?.qualifier ?? (wanting?.scant ? 'scant' : null),
    implied: implied !== null,
    things: these ?? severalOf(thing),
    alternatives: thing?.alternatives,
    each: bearer.each,
    standard: between.standard ?? near?.standard ?? far?.standard,
    parts: stated.parts.length > 0 ? stated.parts : null,
    unknown: ahead ? unknownFrom(line, thing) : undefined,
  })
}

/** Whether a word that is not always a measure is one here: *a glass of wine*, but not *a glass*. */
function isMeasure(context: Context, { unit, end }: Stated, amount: Amount): boolean {
  const { line } = context
  const next = line.at(end)
  if (unit.needs === 'number' && !amount.article) return true
  if (unit.needs === undefined) return !isEmptyVessel(line, end) && !isTool(line, unit, end, amount)
  if (unit.needs === 'full') return line.at(end - 1) === the.full
  if (next === the.of) return !line.is(end + 1, Role.Determiner) || line.at(end + 1) === the.the
  // "cayenne, two cloves": the cloves are themselves the thing.
  if (line.at(end - 1).thing?.count === 'each' || (end === line.length && isThing(line, end - 1))) return false
  if (next === the.each || line.at(end - 1) === the.full) return true
  if (context.phrase && end === line.length && unit.class !== 'vague') return !amount.article || isFull(line, end - 1)
  if (amount.article) return false
  return ((next.roles & Role.Mark) !== 0 && standsBehind(context, amount)) || thingAt(line, end, false) !== null
}

/** *twelve rolls* are bread, and rolls of nothing. */
const isThing = (line: Line, at: number): boolean => line.at(at).thing !== null && line.at(at).measure?.class === 'piece'

/** Whether a word says that it is a measure of what fills it: *a tumblerful*. */
const isFull = (line: Line, at: number): boolean => /ful/i.test(line.text.slice(line.start(at), line.end(at)))

/** A spoonful is an amount, a spoon a tool. */
function isTool(line: Line, unit: MeasureWordRow, end: number, amount: Amount): boolean {
  if ((unit.class !== 'spoon' && unit.class !== 'cup') || !amount.article || line.at(end) === the.of) return false
  return line.at(end - 1) !== the.full && !isFull(line, end - 1)
}

const holding = new Set(['hold', 'holding', 'contain', 'containing'])

/** A measure of nothing: a gloss in brackets, the size of a vessel, what a phial holds, a word that needed its *of*. */
function isAside({ line }: Context, { unit }: Stated, end: number, eachOfNone: boolean, amount: Amount): boolean {
  if (eachOfNone || line.at(end) === mark.close || (line.at(end) === the.of && (unit.needs === 'of' || unit.needs === 'number')))
    return true
  if (!amount.article) return false
  const before = line.at(amount.start - 1)
  // "at sixpence a pound"
  if (before.coin !== null) return true
  return holding.has(before.text) || (unit.class === 'capacity' && (before === the.in || before === the.into || before === the.on))
}

/** *to every pound* without a word more means the thing that was spoken of last, or last by that measure. */
function lastNamed({ every, last, loose, by }: Context, measure: string): string | null {
  if (every?.measure === measure) return every.thing
  return loose.at(-1)?.name ?? by.get(measure) ?? last?.thing ?? null
}

/** A measure before its number, by itself or behind *of each*: *℥ ij*, *ana ℥ j*. */
function latinAt(line: Line, start: number, stated: Amount | null): ReturnType<typeof measureFirst> {
  if (stated === null) return measureFirst(line, start)
  const latin = stated.each && line.is(stated.end - 1, Role.Each) ? measureFirst(line, stated.end) : null
  return latin === null ? null : { unit: latin.unit, amount: { ...latin.amount, start: stated.start, each: true } }
}

/** *lib. iij*, *℥ ss*, *oz. 4*: physicians and cooks who wrote Latin put the number last. */
function measureFirst(line: Line, start: number): { unit: Named<MeasureWordRow>; amount: Amount } | null {
  const unit = unitAt(line, start)
  if (unit === null || !line.short(start)) return null
  const amount = amountAt(line, unit.end)
  // "M. ij" is two handfuls, "p. 34" a page.
  if (amount !== null && line.at(unit.end).text === digits && line.end(start) === line.start(start) + 1 && unit.row.class === 'hand')
    return null
  if (amount === null || amount.article || amount.each) return null
  // "℥j ʒij" is an ounce and two drachms; in "lb 4 oz" the 4 belongs to the ounces.
  const more = unitAt(line, amount.end) === null ? null : measureFirst(line, amount.end)
  if (more === null && unitAt(line, amount.end)?.row.class === unit.row.class) return null
  const share = more === null ? 0 : shareOf(more.unit.row, unit.row)
  const end = more !== null && share > 0 ? more.unit.end : amount.end
  const low = amount.low + share * (more?.amount.low ?? 0)
  const high = amount.high + share * (more?.amount.high ?? 0)
  return { unit: { row: unit.row, end }, amount: { ...amount, start, low, high } }
}

/** Words that begin a measured statement without an amount: *gill of cold water*, *large tablespoonful of yeast*. */
function bareAmount(line: Line, start: number): Amount | null {
  const unit = unitAt(line, pastQualifiers(line, start).end)
  if (unit === null || unit.row.class === 'vague' || unit.row.class === 'time') return null
  if (line.is(start - 1, Role.Determiner | Role.Vague | Role.Qualifier | Role.Cardinal)) return null
  const plural = line.text[line.end(unit.end - 1) - 1] === 's'
  const alone = unit.end === line.length && isFull(line, unit.end - 1)
  if (unit.row.class !== 'money' && (plural || (line.at(unit.end) !== the.of && !alone))) return null
  return { low: 1, high: 1, start, end: start, article: false, each: false, qualifier: null, tale: null }
}

const endsInS = (line: Line, at: number): boolean => line.text[line.end(at) - 1] === 's'

/** The end of *ditto* or *do.* behind a number, or 0. */
function dittoEnd(line: Line, at: number): number {
  if (line.at(at) === the.ditto) return at + 1
  if (line.at(at).text !== 'do') return 0
  return line.at(at + 1) === mark.stop ? at + 2 : at + 1
}

/** *four of vinegar*, *two ditto of ketchup*: the measure is that of the statement before. */
function elidedAt({ line, measured }: Context, start: number, amount: Amount): Statement | null {
  if (measured === null || amount.each) return null
  const ditto = dittoEnd(line, amount.end)
  const at = ditto || amount.end
  const of = line.at(at) === the.of
  if ((amount.article || !of) && ditto === 0) return null
  if (of && line.is(at + 1, Role.Determiner)) return null
  const thing = thingAt(line, of ? at + 1 : at, of)
  // "three of the lemons" counts, "one of bitter almonds" does not.
  const told = thing?.row?.count !== undefined && !(amount.high === 1 && endsInS(line, thing.end - 1))
  if (thing === null || (told && ditto === 0)) return null
  return statement('measured', start, thing.end, {
    amount: { low: amount.low, high: amount.high },
    measure: measured.measure,
    thing: thing.name,
    qualifier: amount.qualifier,
  })
}

/** *ditto flour*: amount and measure of the statement before. */
function dittoAt({ line, measured }: Context, start: number): Statement | null {
  const thing = thingAt(line, line.at(start + 1) === the.of ? start + 2 : start + 1, false)
  if (measured === null || thing === null) return null
  return statement('measured', start, thing.end, { amount: measured.amount, measure: measured.measure, thing: thing.name })
}
