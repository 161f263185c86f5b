import { findGood, type ThingWordRow, things } from '../tables/index.js'
import type { Line } from './line.js'
import { longestName, type Named } from './lookup.js'
import { the } from './vocabulary.js'
import { mark, Role, type Word } from './word.js'

/** A thing as the text names it. */
export interface Thing {
  readonly name: string
  /** Its row, if the tables know it. */
  readonly row: ThingWordRow | null
  readonly start: number
  readonly end: number
  /** All the things that stand together under one amount; one where only one does. */
  readonly names: readonly string[]
  /** What may stand in its place: *butter or lard*. */
  readonly alternatives?: readonly string[]
}

const mostWords = 10

/** How many times a thing may be *of* another: the syrup of the juice of lemons. */
const deepest = 2

/** Heads that stand before what they are made of, and after it in our order: *juice of lemons* is lemon juice. */
const turned = new Set([
  'juice',
  'peel',
  'seed',
  'flower',
  'pulp',
  'kernel',
  'root',
  'jelly',
  'jam',
  'marmalade',
  'gravy',
  'broth',
  'suet',
  'marrow',
])

/** Heads that say only in what shape a thing comes: *powder of ginger*, *poudre gynger*. */
const shapes = new Set(['powder', 'leaf'])

/** Skips what describes a thing without naming it: *of the best fine white*, *dry, sifted*. */
export function pastDescribing(line: Line, start: number): number {
  const describing = Role.Describing | Role.Determiner | Role.Adverb | Role.Qualifier | Role.Degree | Role.Standard
  let at = start
  while (at < start + mostWords) {
    const named = longestName(line, at, 'thing')
    // "a round sponge cake" is no round of anything.
    if (named !== null && (named.row.count !== 'joint' || line.at(named.end) === the.of || !line.is(at, Role.Describing))) return at
    const word = line.at(at)
    if ((word.roles & (Role.PartOf | Role.Describing)) !== 0 && line.at(at + 1) === the.of) at += 2
    else if (((word.roles & describing) !== 0 && word !== the.as && word !== the.so) || word === the.any) at++
    else if (
      at > start &&
      (word === mark.comma || word === the.and || word === the.or) &&
      line.is(at + 1, Role.Describing) &&
      line.is(at - 1, Role.Describing)
    )
      at++
    else break
  }
  return at
}

const flower: ThingWordRow = /* @__PURE__ */ things.find((row) => row.id === 'flower')!

/** *flower* is how flour was spelled, and *floures* how flowers were: there is no more than one flour. */
const flowersAt = (line: Line, { row, end }: Named<ThingWordRow>): ThingWordRow =>
  row.id === 'flour' && line.text[line.end(end - 1) - 1] === 's' ? flower : row

/** The longest name at a token; where its last word begins another, that one: *stale ale barm* is barm. */
function nameFrom(line: Line, at: number): Named<ThingWordRow> | null {
  const first = longestName(line, at, 'thing')
  const next = first === null || first.end === at + 1 ? null : longestName(line, first.end - 1, 'thing')
  return next !== null && next.end > first!.end ? next : first
}

/** *fig. 3* is a picture. */
const isNumbered = (line: Line, at: number): boolean => line.text[line.end(at)] === '.' && line.short(at) && line.is(at + 1, Role.Cardinal)

/** A noun and the nouns before it that say of what kind: *beef suet*, *almond macaroons*, *syrup of violets*. */
function nounAt(line: Line, at: number, start: number, depth: number): Thing | null {
  const first = nameFrom(line, at)
  if (first === null || isNumbered(line, at)) return null
  if (shapes.has(first.row.id) && depth < deepest) {
    const stuff = nounAt(line, first.end, start, depth + 1)
    if (stuff !== null) return stuff
  }
  let { end } = first
  let row = flowersAt(line, first)
  let name = row.label
  for (let more = longestName(line, end, 'thing'); more !== null && end < at + mostWords; more = longestName(line, end, 'thing')) {
    if (line.at(end).measure?.class === 'piece' || !(more.row.head || more.row.count === 'dish')) break
    const label = flowersAt(line, more).label
    name = name === label ? name : `${name} ${label}`
    row = more.row
    end = more.end
  }
  if (row.count === 'joint' && line.at(end) === the.of && depth < deepest) {
    const beast = thingAt(line, line.is(end + 1, Role.Article) ? end + 2 : end + 1, false, depth + 1)
    if (beast?.row?.meat) {
      name = `${name} of ${beast.name}`
      return { name, row, start, end: beast.end, names: [name] }
    }
  }
  if (row.head && line.at(end) === the.of && line.at(end + 1) !== the.a && depth < deepest) {
    const stuff = thingAt(line, end + 1, false, depth + 1)
    if (stuff !== null && stuff.row?.count !== 'dish') {
      name = nameOf(row.label, stuff.name)
      return { name, row: shapes.has(row.id) ? stuff.row : row, start, end: stuff.end, names: [name] }
    }
  }
  return { name, row, start, end, names: [name] }
}

function nameOf(head: string, stuff: string): string {
  if (shapes.has(head)) return stuff
  return turned.has(head) ? `${stuff} ${head}` : `${head} of ${stuff}`
}

const isNameless = (word: Word): boolean =>
  word.text !== '' && (word.roles & ~(Role.Named | Role.PartOf | Role.Heat | Role.Egg | Role.Degree)) === 0 && /^[^\d]{3,}$/.test(word.text)

/** Words that no table knows, in the place where a thing belongs: they are passed on as they stand. */
function unknownAt(line: Line, at: number, start: number): Thing | null {
  let end = at
  while (end < at + 3 && isNameless(line.at(end))) {
    end++
    const known = nounAt(line, end, end, deepest)
    if (known !== null) return { ...known, start, name: `${textOf(line, at, end)} ${known.name}` }
  }
  if (end === at) return null
  return unknownThing(line, at, end, start)
}

function unknownThing(line: Line, at: number, end: number, start: number): Thing {
  const name = textOf(line, at, end).replace(/(?<=[a-z]{2}[^s])s$/, '')
  return { name, row: null, start, end, names: [name] }
}

function textOf(line: Line, start: number, end: number): string {
  let text = line.at(start).text
  for (let at = start + 1; at < end; at++) text += ` ${line.at(at).text}`
  return text
}

/**
 * The thing that starts at a token, behind the words that describe it.
 *
 * @param open whether words that no table knows may be the thing: only where a thing must stand
 * @param depth how many things this one already is part of
 */
export function thingAt(line: Line, start: number, open: boolean, depth: number = 0): Thing | null {
  const at = pastDescribing(line, start)
  return nounAt(line, at, start, depth) ?? (open ? unknownAt(line, at, start) : null)
}

/** What is told by number, and shares no weight or measure. */
const ofEggs = new Set(['egg', 'yolk-of-egg', 'egg-white'])

/** Whether one of two things is poured and the other not: no pint is of *vinegar and ginger*. Honey goes with either. */
function pourApart(one: string, other: string): boolean {
  const [first, second] = [findGood(one)?.classes, findGood(other)?.classes]
  if (first === undefined || second === undefined || first.includes('sweet') || second.includes('sweet')) return false
  return first.includes('liquid') !== second.includes('liquid')
}

/**
 * Things that share an amount: *cloves and mace*.
 *
 * @param list whether commas may part them as well: *cloves, mace and nutmeg, of each an ounce*
 */
export function sharedThings(line: Line, first: Thing, list: boolean): Thing {
  const names = [first.name]
  let end = first.end
  while (names.length < 6) {
    let at = end
    if (list && line.at(at) === mark.comma) at++
    if (line.at(at) === the.and) at++
    const next = at === end ? null : thingAt(line, at, false)
    if (next === null || (!list && (pourApart(first.name, next.name) || ofEggs.has(next.row?.id ?? '')))) break
    names.push(next.name)
    end = next.end
  }
  if (names.length > 1) return { ...first, end, names }
  return withAlternatives(line, first)
}

/** *cream or milk*, *wine, or vinegar, or beer*. */
function withAlternatives(line: Line, first: Thing): Thing {
  const alternatives: string[] = []
  let { end } = first
  while (alternatives.length < 4) {
    const or = line.at(end) === mark.comma ? end + 1 : end
    const next =
      line.at(or) === the.or && !line.is(or + 1, Role.Article | Role.Cardinal | Role.Half | Role.Part | Role.Collective)
        ? thingAt(line, or + 1, false)
        : null
    if (next === null) break
    alternatives.push(next.name)
    end = next.end
  }
  return alternatives.length === 0 ? first : { ...first, end, alternatives }
}

/** The names of several things that share an amount; null where there is one. */
export const severalOf = (thing: Thing | null): readonly string[] | null => (thing !== null && thing.names.length > 1 ? thing.names : null)

/** Where the words of a thing begin that no table knows. */
export const unknownFrom = (line: Line, thing: Thing | null): number | undefined =>
  thing !== null && thing.row === null ? pastDescribing(line, thing.start) : undefined

const partsBehind = new Set(['leaf', 'top', 'sprig', 'stalk'])

/** The thing with the word behind it for the parts of it that are meant: *rose leaves, a peck*. */
export function withParts(line: Line, thing: Thing): Thing {
  const piece = line.at(thing.end).measure
  const named = piece !== null && partsBehind.has(piece.label) && line.at(thing.end + 1) !== the.of
  return named ? { ...thing, end: thing.end + 1 } : thing
}

/** Whether an entry of a list ends here. */
export const isEntryEnd = (line: Line, at: number): boolean => line.is(at, Role.Mark) || line.at(at) === the.and || line.at(at) === the.or

/** Words that no table knows, where an entry of a list begins with them: the squills of *squills, half an ounce*. */
export function unknownBefore(line: Line, end: number): Thing | null {
  let start = end
  while (start > end - 3 && start > 0 && isNameless(line.at(start - 1))) start--
  if (start === end) return null
  const before = line.at(start - 1)
  if (!isEntryEnd(line, start - 1) && before !== the.of && before.text !== 'take' && !line.is(start - 1, Role.Describing)) return null
  return unknownThing(line, start, end, start)
}
