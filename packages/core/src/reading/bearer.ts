import type { Amount } from './amount.js'
import type { Line } from './line.js'
import type { Stated } from './stated.js'
import type { Context } from './statement.js'
import { isEntryEnd, pastDescribing, sharedThings, type Thing, thingAt, unknownBefore, withParts } from './thing.js'
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

/** *Peruvian bark, in fine powder, one ounce*. */
export const isInPowder = (line: Line, at: number): boolean =>
  (line.at(at) === the.in && (line.at(at + 1).text === 'powder' || line.at(at + 2).text === 'powder')) ||
  (line.at(at).text === 'powder' && (line.at(at - 1) === the.in || line.at(at - 2) === the.in))

/** Commas and words such as *of each of these* between a thing and its amount. */
const isBetween = (line: Line, at: number): boolean =>
  line.at(at) === mark.comma ||
  isInPowder(line, at) ||
  line.at(at) === the.of ||
  (line.at(at) === the.and && line.is(at - 1, Role.Describing) && line.is(at + 1, Role.Describing)) ||
  line.at(at) === the.both ||
  line.is(at, Role.Each | Role.Describing | Role.Determiner)

const isUnknown = (line: Line, at: number): boolean => line.at(at).roles === 0

/** What as a verb takes a dish or a joint and no measure. */
const fats = new Set(['butter', 'lard'])

/** *drink two spoonfuls*: a word that may be a verb needs its comma. */
const mayBeVerb = (line: Line, at: number): boolean => line.is(at, Role.Plain) && !fats.has(line.at(at).text) && line.at(at - 1) !== the.of

/** Whether the last thing named stands right before an amount: *mace, 2 blades*. */
export function standsBehind({ line, loose }: Context, amount: Amount): boolean {
  const last = loose.at(-1)
  if (last === undefined) return false
  if (last.end === amount.start && last.end === last.start + 1 && mayBeVerb(line, last.start)) return false
  let at = last.end
  while (at < amount.start && (isBetween(line, at) || (amount.each && isUnknown(line, at)))) at++
  return at === amount.start
}

/**
 * The thing of a measure: behind it (*a pint of cream*, *2 lb. flour*), before it (*cream, 1 pint*; *a ham of ten pounds*),
 * or a whole list before it (*sage, rue and mint, of each a handful*).
 *
 * @returns null when the words make no measure after all
 */
export function bearerOf(context: Context, stated: Stated, amount: Amount): Bearer | null {
  const { line } = context
  const { at, of, each } = pastEach(line, stated.end, amount.each)
  const listed = standsBehind(context, amount)
  const behind =
    of || each || !isEmptyVessel(line, at) ? (thingAt(line, at, of) ?? (of ? sortAt(context, at) : unlistedAt(line, at, amount))) : null
  // "of each M. j. of aniseed half an ounce": what is told in Latin is told behind its things.
  const latin = amount.each && line.is(stated.end - 1, Role.Cardinal)
  if (behind !== null && !(listed && (latin || isParted(line, stated.end, behind)))) {
    if (stated.unit.class === 'piece' && madeHere.has(behind.name)) return null
    // "a half-pound pudding" is a pudding of that size.
    if (!of && behind.row?.count === 'dish') return null
    const thing = withParts(line, sharedThings(line, withParts(line, behind), each))
    return { thing, each, start: amount.start, end: thing.end }
  }
  if (of && !(listed && latin)) return { thing: null, each, start: amount.start, end: stated.end }
  const bearer = listed ? groupBefore(context, each || line.is(amount.start - 1, Role.Each)) : bearerBefore(context, stated, amount)
  if (bearer === null) {
    const unknown = isEntryEnd(line, at)
      ? unknownBefore(line, line.at(amount.start - 1) === mark.comma ? amount.start - 1 : amount.start)
      : null
    return { thing: unknown, each, start: unknown?.start ?? amount.start, end: at }
  }
  return { thing: bearer, each: each || bearer.names.length > 1, start: bearer.start, end: of ? stated.end : at }
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

const weighing = new Set(['weighing', 'weigh', 'of'])

/** What has the weight: *a ham of ten pounds*, *a piece of beef weighing about ten pounds*. */
function bearerBefore({ line, loose, last }: Context, { unit }: Stated, { start }: Amount): Thing | null {
  if (!weighing.has(line.at(start - 1).text)) return null
  const end = line.at(start - 2) === the.that || line.at(start - 2) === the.which ? start - 2 : start - 1
  const named = loose.at(-1)
  if (named?.end === end) return named
  // "two fowls of three pounds" are so heavy each, "two fowls weighing six pounds" together.
  const isOne =
    last?.kind === 'vague' || (last?.kind === 'counted' && last.part === null && (last.amount?.high === 1 || line.at(start - 1) !== the.of))
  if (!isOne || last === null || last.end !== end || unit.class !== 'weight') return null
  return { name: last.thing!, row: null, start: last.start, end, names: [last.thing!] }
}

/** The thing named last, or with *each* every thing of the list that it closes. */
export function groupBefore({ line, loose }: Context, list: boolean): Thing {
  const last = loose.at(-1)!
  const names = [last.name]
  let start = last.start
  for (let i = loose.length - 2; list && i >= 0; i--) {
    const earlier = loose[i]!
    let at = earlier.end
    while (at < start && isJoint(line, at)) at++
    if (at !== start) break
    names.unshift(earlier.name)
    start = earlier.start
  }
  return { ...last, start, name: names[0]!, names }
}

/** What may stand between the things of a list; a cook's word that no table knows does not end it. */
const isJoint = (line: Line, at: number): boolean =>
  line.at(at) === mark.comma || line.at(at) === mark.colon || line.at(at) === the.and || line.is(at, Role.Describing) || isUnknown(line, at)
