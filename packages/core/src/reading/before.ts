/** What stands before an amount and may be what it measures: in lists, and what is said to weigh so much. */
import type { Amount } from './amount.js'
import type { Line } from './line.js'
import type { Stated } from './stated.js'
import type { Context } from './statement.js'
import { type Thing, unknownBefore } from './thing.js'
import { the } from './vocabulary.js'
import { mark, Role } from './word.js'

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
 * The thing before an amount, or the list that it closes; null where nothing there is measured.
 *
 * @param list whether the amount is *of each* of the things before it
 * @param ended whether the entry ends behind the measure, so that even words that no table knows may be the thing
 */
export function thingBefore(context: Context, stated: Stated, amount: Amount, list: boolean, ended: boolean): Thing | null {
  const { line } = context
  if (standsBehind(context, amount)) return groupBefore(context, list || line.is(amount.start - 1, Role.Each))
  const comma = line.at(amount.start - 1) === mark.comma
  return weighedBefore(context, stated, amount) ?? (ended ? unknownBefore(line, comma ? amount.start - 1 : amount.start) : null)
}

const weighing = new Set(['weighing', 'weigh', 'of'])

/** What has the weight: *a ham of ten pounds*, *a piece of beef weighing about ten pounds*. */
function weighedBefore({ line, loose, last }: Context, { unit }: Stated, { start }: Amount): Thing | null {
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
