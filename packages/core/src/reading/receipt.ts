import { badOption } from '../error.js'
import type { Line } from './line.js'
import { readLine } from './reader.js'
import type { Found, FoundHeat, FoundThing, FoundTime, ReceiptReading } from './reading.js'
import { addDetails, type Mutable, nothing, referenceOf, spanOf } from './report.js'
import { servesIn } from './serves.js'
import type { Statement } from './statement.js'
import type { Thing } from './thing.js'
import { scan } from './tokens.js'
import { lexicon } from './vocabulary.js'
import { type Warmth, warmthsIn } from './warmth.js'

/**
 * Finds every stated measure, heat, time, length and consistency in running prose, and the things named without an amount.
 *
 * Offsets are UTF-16 offsets into the text as given. Time grows with the length of the text and no faster.
 *
 * @throws PottleError `bad-option` when the text is none
 * @example readReceipt('Take a pynte of creme and vj egges').measures.length   // 2
 */
export function readReceipt(text: string): ReceiptReading {
  if (typeof text !== 'string') throw badOption('text', 'must be text')
  const line = scan(text, lexicon)
  const warm = warmthsIn(line, 'prose')
  const { statements: all, unmeasured } = readLine(line, false)
  const statements = all.filter(unlessHeight(warm))
  const measures: Found[] = []
  const heats: FoundHeat[] = []
  const times: FoundTime[] = []
  const lengths: Found[] = []
  const consistencies: Found[] = []
  for (let index = 0; index < statements.length; index++) {
    const one = statements[index]!
    if (one.kind === 'heat') heats.push({ ...placeOf(line, one), heat: one.heatClass!, words: one.heat! })
    else if (one.kind === 'time') times.push({ ...placeOf(line, one), minutes: one.minutes ?? null })
    else if (one.kind === 'length') lengths.push(foundOf(line, one, statements, index))
    else if (one.kind === 'consistency') consistencies.push(foundOf(line, one, statements, index))
    else measures.push(foundOf(line, one, statements, index))
  }
  const warmths = warm.map((one) => ({ ...placeOf(line, one), of: one.of, words: one.words }))
  const fed = servesIn(line)
  const serves = fed && { ...placeOf(line, fed), amount: fed.amount }
  const loose = unmeasured.filter(outside(warm))
  return { measures, heats, warmths, times, lengths, consistencies, unmeasured: unmeasuredOf(line, loose, measures), serves }
}

function placeOf(line: Line, one: { start: number; end: number }): { start: number; end: number; phrase: string } {
  const { start, end } = spanOf(line, one.start, one.end)
  return { start, end, phrase: line.text.slice(start, end) }
}

function foundOf(line: Line, one: Statement, statements: readonly Statement[], index: number): Found {
  const { kind, amount, measure, thing, qualifier, eggs } = one
  const start = line.start(one.start)
  const end = line.end(one.end - 1)
  const understood = [spanOf(line, one.start, one.unknown)]
  const unread = one.unknown < one.end ? [spanOf(line, one.unknown, one.end)] : nothing
  const found: Mutable<Found> = {
    start,
    end,
    phrase: line.text.slice(start, end),
    kind,
    amount,
    measure,
    thing,
    qualifier,
    eggs,
    understood,
    unread,
  }
  addDetails(found, one, line)
  const reference = referenceOf(line, one, statements, index)
  if (reference !== undefined) found.reference = reference
  return found
}

/** Tells, of statements in the order of the text, those that are no height of sugar misread: the plum of *a plume height* is none. */
function unlessHeight(warmths: readonly Warmth[]): (one: Statement) => boolean {
  const heights = warmths.filter(({ of }) => of === 'sugar')
  let next = 0
  return ({ kind, start, end }) => {
    while (next < heights.length && heights[next]!.end <= start) next++
    return kind !== 'counted' || next === heights.length || end <= heights[next]!.start
  }
}

/** Tells, of things in the order of the text, those that stand in no name of a warmth: the milk of *milk-warm* is none. */
function outside(warmths: readonly Warmth[]): (thing: Thing) => boolean {
  let next = 0
  return ({ start }) => {
    while (next < warmths.length && warmths[next]!.end <= start) next++
    return next === warmths.length || start < warmths[next]!.start
  }
}

/** The first mention of each thing that no measure speaks of. */
function unmeasuredOf(line: Line, things: readonly Thing[], measures: readonly Found[]): FoundThing[] {
  const told = new Set<string | null>()
  for (const { thing, things } of measures) {
    told.add(thing)
    if (things !== undefined) for (const other of things) told.add(other)
  }
  const found: FoundThing[] = []
  for (const thing of things) {
    if (told.has(thing.name)) continue
    told.add(thing.name)
    found.push({ ...placeOf(line, thing), thing: thing.name })
  }
  return found
}
