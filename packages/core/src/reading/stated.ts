import type { MeasureWordRow } from '../tables/index.js'
import { type Amount, amountAt } from './amount.js'
import type { Line } from './line.js'
import type { Named } from './lookup.js'
import type { AmountPart, Range } from './reading.js'
import { shiftBehind } from './shift.js'
import { thingAt } from './thing.js'
import { isFullVessel, standardBehind, unitAt } from './unit.js'
import { addedPart } from './value.js'
import { lexicon, the } from './vocabulary.js'
import { mark, Role } from './word.js'

/** An amount with its measure and all that stands behind the measure, before the thing. */
export interface Stated {
  readonly unit: MeasureWordRow
  readonly amount: Range
  readonly end: number
  /** The terms of a compound; none where there is one. */
  readonly parts: readonly AmountPart[]
  /** What a word behind the measure makes of it: *or rather more*, *heaped*. */
  readonly qualifier: string | null
}

/** Adds what stands behind a measure to its amount: *and a half*, *or two*, *and three ounces*. */
export function statedAt(line: Line, unit: Named<MeasureWordRow>, amount: Amount): Stated {
  let { low, high } = amount
  let end = pastNoise(line, unit.end)
  const added = addedPart(line, end)
  if (added !== null && !isOfSmaller(line, added.end, unit.row)) {
    low += added.value
    high += added.value
    end = added.end
  }
  const shift = shiftBehind(line, end)
  if (shift !== null) end = shift.end
  const more = rangeOfMeasures(line, end, unit.row, line.at(amount.start - 1) === the.from)
  if (more !== null) {
    high = Math.max(high, more.high)
    end = more.end
  }
  const parts: AmountPart[] = [{ amount: { low, high }, measure: unit.row.label }]
  for (let next = smallerAt(line, end, unit.row); next !== null; next = smallerAt(line, end, next.unit)) {
    const share = shareOf(next.unit, unit.row)
    parts.push({ amount: { low: next.low, high: next.high }, measure: next.unit.label })
    low += next.low * share
    high += next.high * share
    end = next.end
  }
  const wanting = wantingAt(line, end, unit.row)
  if (wanting !== null) {
    low -= wanting.high
    high -= wanting.low
    end = wanting.end
  }
  const qualifier = shift?.qualifier ?? (wanting?.scant ? 'scant' : null)
  return { unit: unit.row, amount: { low, high }, end: pastNoise(line, end), parts: parts.length > 1 ? parts : [], qualifier }
}

const lacking = new Set(['wanting', 'want', 'lacking', 'lack', 'less', 'minus', 'save'])

/** An amount that is taken off another, in the measure of that, and the token behind it. */
interface Wanting extends Range {
  readonly end: number
  /** It is too little to be told in that measure. */
  readonly scant?: boolean
}

/** *a bushel of flour, wanting a quart*: behind the thing only words that can tell of nothing else. */
export function wantingBehind(line: Line, at: number, unit: MeasureWordRow): Wanting | null {
  const first = line.at(at) === mark.comma ? at + 1 : at
  const wanting = line.at(first).text === 'save' ? null : wantingAt(line, first, unit)
  return wanting !== null && line.at(wanting.end) !== the.of ? wanting : null
}

/** *wanting a quarter of an ounce*: the part is of that. */
const isWhole = (line: Line, at: number): boolean => line.is(at, Role.Article | Role.Cardinal) && line.at(at + 1).measure !== null

/** *a pound wanting two ounces*, *a pint all but a gill*: what is taken off again, in the larger measure. */
function wantingAt(line: Line, at: number, unit: MeasureWordRow): Wanting | null {
  const but = line.at(at) === the.all && line.at(at + 1) === the.but
  if (!but && !lacking.has(line.at(at).text)) return null
  const first = but || line.at(at + 1) === the.by ? at + 2 : at + 1
  // "six pounds, wanting a quarter, of cherries": a quarter of one.
  const part = line.is(first, Role.Article) ? first + 1 : first
  if (
    line.is(part, Role.Part | Role.Half) &&
    (line.at(part + 1) === the.of || line.is(part + 1, Role.Mark)) &&
    line.at(part + 2).measure === null
  )
    return isWhole(line, part + 2) ? null : { low: line.value(part), high: line.value(part), end: part + 1 }
  const amount = amountAt(line, first)
  const smaller = amount === null ? null : unitAt(line, amount.end)
  if (amount === null || smaller === null) return null
  // "half a pint, wanting two spoonfuls": no table binds them together, but the pint is scant.
  if (smaller.row.class === 'spoon' && unit.class === 'capacity') return { low: 0, high: 0, scant: true, end: smaller.end }
  const share = shareOf(smaller.row, unit)
  return share > 0 && amount.high * share < 1 ? { low: amount.low * share, high: amount.high * share, end: smaller.end } : null
}

/** *a pint and half a gill*, *a pint and a third part of a pint*: the part belongs to the measure behind it. */
function isOfSmaller(line: Line, at: number, unit: MeasureWordRow): boolean {
  if (line.at(at).measure !== null) return true
  const article = line.at(at) === the.of ? at + 1 : at
  const { measure } = line.at(article + 1)
  return line.is(article, Role.Article) && measure !== null && (article === at || shareOf(measure, unit) > 0)
}

/** Skips *weight*, *full* and a gloss in brackets that stand between a measure and its thing. */
function pastNoise(line: Line, at: number): number {
  let end = at
  if (line.is(end, Role.Weight) && line.at(end + 1) !== the.in) end++
  if (isFullVessel(line, end)) end++
  if (line.at(end) === the.full) end++
  if (line.at(end) !== mark.open || standardBehind(line, end) !== null) return end
  for (let close = end + 1; close < end + 9; close++) {
    if (line.at(close) === mark.close) return line.at(close + 1) === the.of ? close + 1 : end
  }
  return end
}

/** *a handful or two*, *half a pound to thirty pounds*: the far end of a range that repeats its measure or leaves it out. */
function rangeOfMeasures(line: Line, at: number, unit: MeasureWordRow, from: boolean): { high: number; end: number } | null {
  const parted = line.at(at) === mark.comma && line.at(at + 1) === the.or ? at + 1 : at
  const joint = line.at(parted)
  if (joint !== the.or && joint !== the.to && joint !== mark.hyphen && joint !== mark.dash) return null
  const second = amountAt(line, parted + 1)
  if (second === null) return null
  const again = unitAt(line, second.end)
  if (again !== null) {
    // "a quart, or three pints"
    const share = ratioOf(again.row, unit)
    // "six gallons to a bushel" tells how much of one goes to the other.
    const rate = joint === the.to && second.article && again.row !== unit && !from
    if (share === 0 || rate) return null
    const added = addedPart(line, again.end)
    const end = added?.end ?? again.end
    const closed = parted > at && line.at(end) === mark.comma && line.at(end + 1) === the.of
    return { high: (second.high + (added?.value ?? 0)) * share, end: closed ? end + 1 : end }
  }
  if (second.article || joint !== the.or) return null
  // "six spoonfuls, or eight, of white wine"
  if (parted > at)
    return line.at(second.end) === mark.comma && line.at(second.end + 1) === the.of ? { high: second.high, end: second.end + 1 } : null
  return line.at(second.end) === the.of || thingAt(line, second.end, false) === null ? { high: second.high, end: second.end } : null
}

/** The next term of a compound: *and two ounces*, *4 oz.* behind pounds. */
function smallerAt(line: Line, at: number, unit: MeasureWordRow): (Amount & { unit: MeasureWordRow }) | null {
  const joined = line.at(at) === the.and
  const amount = amountAt(line, joined ? at + 1 : at)
  if (amount === null || amount.each || amount.qualifier !== null || (!joined && amount.article)) return null
  const smaller = unitAt(line, amount.end)
  if (smaller === null || smaller.row.class !== unit.class || shareOf(smaller.row, unit) === 0) return null
  // "a pint and half a pint" is one amount, "a pint and a pint" two.
  if (smaller.row === unit && (!joined || amount.high >= 1)) return null
  return { ...amount, end: smaller.end, unit: smaller.row }
}

/** A measure and the larger ones that it is a part of, each with how much of it one is. */
function* wholesOf(unit: MeasureWordRow): Generator<{ readonly id: string; readonly share: number }> {
  let share = 1
  let row: MeasureWordRow | null = unit
  yield { id: unit.id, share }
  while (row?.within !== undefined && row.parts !== undefined) {
    share /= row.parts
    yield { id: row.within, share }
    row = lexicon.get(row.within).measure
  }
}

/**
 * How many of a measure another is, by the chains of measures that hold each other; 0 where they are of no one chain.
 *
 * @param one,other labels of measures, as readings give them
 * @example ratioOfMeasures('gallon', 'quart')   // 4
 */
export function ratioOfMeasures(one: string, other: string): number {
  const [first, second] = [lexicon.find(one).measure, lexicon.find(other).measure]
  return one === other ? 1 : first === null || second === null ? 0 : ratioOf(first, second)
}

/** How many of one measure another is; 0 where they are of no one chain. */
function ratioOf(one: MeasureWordRow, other: MeasureWordRow): number {
  if (one === other) return 1
  const wholes = new Map([...wholesOf(other)].map(({ id, share }) => [id, share]))
  for (const { id, share } of wholesOf(one)) {
    const own = wholes.get(id)
    if (own !== undefined) return share / own
  }
  return 0
}

/** How much of a larger measure a smaller one is; 0 where it is not smaller, or of another chain. */
export function shareOf(smaller: MeasureWordRow, larger: MeasureWordRow): number {
  const ratio = ratioOf(smaller, larger)
  return ratio <= 1 ? ratio : 0
}
