import type { Amount } from './amount.js'
import { standsBehind, thingBefore } from './before.js'
import type { Line } from './line.js'
import type { Stated } from './stated.js'
import type { Context } from './statement.js'
import { isEntryEnd, pastDescribing, sharedThings, type Thing, thingAt, withParts } from './thing.js'
import { isEmptyVessel } from './unit.js'
import { the } from './vocabulary.js'
import { mark, Role } from './word.js'

/** What a measure is of, and where the statement starts and ends with it. */
export interface Bearer {
  readonly thing: Thing | null
  readonly each: boolean
  readonly start: number
  readonly end: number
}

/** What a receipt makes and then cuts up: *a sheet of paste* is a step, not an ingredient. */
const madeHere = new Set(['paste', 'dough', 'batter'])

/**
 * The thing of a measure: behind it (*a pint of cream*, *2 lb. flour*), before it (*cream, 1 pint*; *a ham of ten pounds*),
 * or a whole list before it (*sage, rue and mint, of each a handful*).
 *
 * @returns null when the words make no measure after all
 */
export function bearerOf(context: Context, stated: Stated, amount: Amount): Bearer | null {
  const { line } = context
  const { at, of, each } = pastEach(line, stated.end, amount.each)
  const behind = thingBehind(context, at, of, each, amount)
  const listed = standsBehind(context, amount)
  // "of each M. j. of aniseed half an ounce": what is told in Latin is told behind its things.
  const latin = listed && amount.each && line.is(stated.end - 1, Role.Cardinal)
  if (behind !== null && !latin && !(listed && isParted(line, stated.end, behind))) {
    if (stated.unit.class === 'piece' && madeHere.has(behind.name)) return null
    // "a half-pound pudding" is a pudding of that size.
    if (!of && behind.row?.count === 'dish') return null
    const thing = withParts(line, sharedThings(line, withParts(line, behind), each))
    return { thing, each, start: amount.start, end: thing.end }
  }
  const end = of ? stated.end : at
  const before = of && !latin ? null : thingBefore(context, stated, amount, each, isEntryEnd(line, at))
  if (before === null) return { thing: null, each, start: amount.start, end }
  return { thing: before, each: each || before.names.length > 1, start: before.start, end }
}

/** The thing that stands behind a measure, behind its *of* where it has one. */
function thingBehind(context: Context, at: number, of: boolean, each: boolean, amount: Amount): Thing | null {
  const { line } = context
  if (!of && !each && isEmptyVessel(line, at)) return null
  return thingAt(line, at, of) ?? (of ? sortAt(context, at) : unlistedAt(line, at, amount))
}

const partsOfDay = new Set(['morning', 'evening', 'noon', 'meal'])

/** *a spoonful every morning*, *a pint each night* tell when, and not of what each. */
const tellsWhen = (line: Line, each: number): boolean =>
  line.at(each) === the.every || line.at(each + 1).measure?.class === 'time' || partsOfDay.has(line.at(each + 1).text)

/** Skips *of*, *each*, *of each of* behind a measure. */
function pastEach(line: Line, start: number, known: boolean): { at: number; of: boolean; each: boolean } {
  let at = start
  let each = known
  if (line.is(at, Role.Each) && !tellsWhen(line, at)) {
    each = true
    at++
  } else if (line.is(at, Role.Article) && line.at(at + 1).text === 'piece') {
    // "a dram a piece"
    each = true
    at += 2
  }
  const of = line.at(at) === the.of
  if (!of) return { at, of, each }
  at++
  if (!line.is(at, Role.Each) || line.at(at) === the.every) return { at, of, each }
  at++
  return { at: line.at(at) === the.of ? at + 1 : at, of: line.at(at) === the.of, each: true }
}

/** In a list, a thing behind a comma or a full stop opens the next entry. */
function isParted(line: Line, end: number, thing: Thing): boolean {
  if (line.text[line.end(end - 1)] === '.' && /[A-Z]/.test(line.text[line.start(thing.start)]!)) return true
  for (let at = end; at < thing.end; at++) if (line.at(at) === mark.comma) return true
  return false
}

/** *a pottle of white wine and a quart of red*: of the same thing, but of another sort. */
function sortAt({ line, measured }: Context, start: number): Thing | null {
  const end = pastDescribing(line, start)
  if (end === start || !measured?.thing || !isEntryEnd(line, end)) return null
  const name = measured.thing.slice(measured.thing.lastIndexOf(' ') + 1)
  return { name, row: null, start, end, names: [name] }
}

/** *1 dessertspoonful chutney,*: in lists a word that no table knows is the thing if the entry ends behind it. */
function unlistedAt(line: Line, start: number, amount: Amount): Thing | null {
  const thing = amount.article ? null : thingAt(line, start, true)
  return thing !== null && isEntryEnd(line, thing.end) ? thing : null
}
