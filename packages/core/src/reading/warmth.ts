/**
 * The heights of boiled sugar and the warmth of liquids: *to a candy height*, *milk-warm*, *till it blows*.
 *
 * They stand inside other statements (*a pint of lukewarm milk*) and beside them, so that a text is walked for them apart.
 */
import { liquidHeats, sugarHeights } from '../tables/index.js'
import { fromDegree, wordsIn } from './likeness.js'
import type { Line } from './line.js'
import { longestName } from './lookup.js'
import type { HeatOf } from './reading.js'
import { lexicon, the } from './vocabulary.js'
import { Leads, mark, Role, type Word } from './word.js'

/** Where a warmth is told, and its words in modern spelling. */
export interface Warmth {
  readonly of: HeatOf
  readonly start: number
  readonly end: number
  readonly words: string
}

type Names = ReadonlyMap<Word, readonly (readonly Word[])[]>

/** Every name of some rows by its first word, the longest first. */
function namesOf(rows: readonly { readonly names: readonly { readonly words: string }[] }[]): Names {
  const names = new Map<Word, Word[][]>()
  for (const { words } of rows.flatMap((row) => row.names)) {
    const parts = lexicon.wordsOf(words)
    names.set(parts[0]!, [...(names.get(parts[0]!) ?? []), parts])
  }
  for (const list of names.values()) list.sort((a, b) => b.length - a.length)
  return names
}

const heights = namesOf(sugarHeights)
const warmths = namesOf(liquidHeats)

/** The end of the longest name that starts at a token, commas apart, or 0. */
function nameAt(line: Line, start: number, names: Names): number {
  for (const name of names.get(line.at(start)) ?? []) {
    let at = start
    const met = name.every((word) => {
      if (line.at(at) === mark.comma && at > start) at++
      return line.at(at++) === word
    })
    if (met) return at
  }
  return 0
}

const raised = new Set(['height', 'high', 'degree', 'heighth'])
const boiling = new Set(['boil', 'boiled', 'boiling', 'seethe'])
const sugars = new Set(['sugar', 'syrup'])

/** How far back the sugar stands that is boiled to a height. */
const memory = 24

function speaksOf(line: Line, at: number, words: ReadonlySet<string>): boolean {
  for (let before = at - 1; before >= Math.max(0, at - memory); before--) if (words.has(line.at(before).text)) return true
  return false
}

/**
 * How boldly names are taken: in running prose only those that can be nothing else, in a phrase of a few words those that are likely, and if
 * nothing else is told in it, any.
 */
export type Boldness = 'prose' | 'likely' | 'any'

/** Whether a longer name of a thing begins before a token and holds it: *sugar candy* is no candy height. */
const isInsideThing = (line: Line, at: number): boolean => (longestName(line, at - 1, 'thing')?.end ?? 0) > at

/** *a candy height*, *the degree called blown*, and behind boiling sugar *to a feather*, *till it cracks*. */
function heightAt(line: Line, at: number, boldness: Boldness): Warmth | null {
  const end = nameAt(line, at, heights)
  if (end === 0 || isInsideThing(line, at)) return null
  const told = (last: number): Warmth => ({ of: 'sugar', start: at, end: last, words: wordsIn(line, at, end).join(' ') })
  const raisedBy = raised.has(line.at(end).text) ? end + 1 : end
  if (raisedBy > end || raised.has(line.at(end - 1).text)) return told(raisedBy)
  let before = at - 1
  while (before > at - 4 && line.is(before, Role.Article | Role.Determiner | Role.Degree | Role.Plain) && !isJoint(line.at(before)))
    before--
  const by = line.at(before).text
  if ((by === 'called' || by === 'of') && raised.has(line.at(before - 1).text)) return told(end)
  const until = isJoint(line.at(before))
  if (boldness === 'any' || (boldness === 'likely' && (until || end > at + 1))) return told(end)
  return until && speaksOf(line, before, boiling) && speaksOf(line, at, sugars) ? told(end) : null
}

const isJoint = (word: Word): boolean => word === the.to || word.text === 'till' || word.text === 'until' || word === the.into

/** One word that in running prose is no verb and no more than a warmth. */
const plainly = new Set(['lukewarm', 'tepid', 'milkwarm', 'bloodwarm'])

/** *milk-warm*, *something more than blood-warm*, *scalding hot*. */
function warmthAt(line: Line, at: number, boldness: Boldness): Warmth | null {
  const end = nameAt(line, at, warmths)
  if (end === 0 || (end === at + 1 && boldness !== 'any' && !plainly.has(line.at(at).text))) return null
  // "when it boils up" tells what is done, "a walm" how long.
  if (boldness === 'prose' && (line.is(at, Role.Article) || boiling.has(line.at(at).text))) return null
  let start = at
  if (line.at(start - 1) === the.than) start = fromDegree(line, start - 1)
  else if (line.is(start - 1, Role.Qualifier | Role.Degree)) start = fromDegree(line, start)
  return { of: 'liquid', start, end, words: wordsIn(line, start, end).join(' ') }
}

/** Every height of sugar and warmth of a liquid that a line tells, in its order. */
export function warmthsIn(line: Line, boldness: Boldness): readonly Warmth[] {
  const found: Warmth[] = []
  for (let at = 0; at < line.length; at++) {
    const word = line.at(at)
    const one = (heights.has(word) ? heightAt(line, at, boldness) : null) ?? (warmths.has(word) ? warmthAt(line, at, boldness) : null)
    if (one === null) continue
    found.push(one)
    at = one.end - 1
  }
  return found
}

/** Whether nothing but a warmth is told: a musk-ball is no height of sugar, and unknown words tell something else. */
export function tellsAlone(line: Line, { start, end, of }: Warmth): boolean {
  for (let at = 0; at < line.length; at++) {
    if (at === start) at = end
    const word = line.at(at)
    const other = of === 'sugar' && (word.leads & Leads.Thing) !== 0 && !sugars.has(word.text)
    if (at < line.length && (word.roles === 0 || other)) return false
  }
  return true
}

/** Where the words begin that lead up to a warmth and say no more than it: *boil your sugar to*, *let it be*. */
export function leadOf(line: Line, { start, of }: Warmth): number {
  let at = start
  while (
    at > 0 &&
    (line.is(at - 1, Role.Plain | Role.Determiner | Role.Article | Role.Mark) ||
      isJoint(line.at(at - 1)) ||
      raised.has(line.at(at - 1).text) ||
      (of === 'sugar' && sugars.has(line.at(at - 1).text)))
  )
    at--
  return at
}
