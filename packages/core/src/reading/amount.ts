import type { Line } from './line.js'
import type { Range } from './reading.js'
import { rangeTail, type Value, valueAt } from './value.js'
import { the } from './vocabulary.js'
import { mark, Role, type Word } from './word.js'

/** An amount as stated before a measure: *about two or three*, *every*, *half a*. */
export interface Amount extends Range {
  readonly start: number
  readonly end: number
  readonly article: boolean
  readonly each: boolean
  readonly qualifier: string | null
  /** The number word that things are told by, which may have meant more than it says. */
  readonly tale: string | null
}

/** *good*, *large* and *small* stand behind their number; before it they belong to what went before: *shred small, a pound of*. */
function shifts(line: Line, at: number): boolean {
  if (line.at(at) === the.full || line.at(at + 1) === the.than) return line.is(at, Role.Qualifier)
  return line.is(at, Role.Qualifier) && !line.is(at, Role.Describing)
}

/** What joins such a word to its amount: *better than*, *upwards of*, *near to*, *near upon*. */
const joints: ReadonlySet<Word> = new Set([the.than, the.of, the.to, the.upon, the.on])

/** Words that shift an amount stand before it: *about*, *better than*, *not quite*, *rather more than*. */
function leadingQualifier(line: Line, at: number): { qualifier: string | null; end: number } {
  let qualifier: string | null = null
  let end = at
  while (end < at + 4) {
    const word = line.at(end)
    if (shifts(line, end)) qualifier = word.qualifier
    else if (!(joints.has(word) && end > at) && !line.is(end, Role.Degree)) break
    else if (qualifier === null && joints.has(word)) break
    end++
  }
  return { qualifier, end }
}

const unarticled = new Set(['scant', 'heaped', 'rounded', 'level'])

/** Words before an amount that say which side of it is meant: *not quite*, *at least*; *not* turns *above* and *less than* about. */
function sideBefore(line: Line, start: number, qualifier: string | null): { start: number; qualifier: string | null } {
  const [word, before] = [line.at(start - 1), line.at(start - 2)]
  if (before === the.not && word.text === 'quite') return { start: start - 2, qualifier: 'scant' }
  if (before === the.at && (word.text === 'least' || word === the.most)) return { start: start - 2, qualifier: sideOf(word) }
  if ((word === the.not || word === the.no) && (qualifier === 'good' || qualifier === 'scant'))
    return { start: start - 1, qualifier: qualifier === 'good' ? 'scant' : 'good' }
  return { start, qualifier }
}

/** The low end behind *between* or *from*: *between one and twenty* is not one-and-twenty. */
function lowEndAt(line: Line, between: number): Value | null {
  const at = between + 1
  const parted = line.at(between) === the.between && line.at(at + 1) === the.and && line.is(at + 2, Role.Cardinal)
  return parted && line.is(at, Role.Cardinal) ? { value: line.value(at), end: at + 1, article: false, tale: null } : valueAt(line, at)
}

/** *At least* a pint is a good one, *at most* a pint a scant one. */
export const sideOf = (word: Word): string => (word === the.most ? 'scant' : 'good')

/** The amount that starts at a token, with its range and the words that shift it. */
export function amountAt(line: Line, at: number): Amount | null {
  const before = leadAt(line, at)
  if (before === null) return null
  const { each } = before
  const { start, qualifier } = sideBefore(line, at, before.qualifier)
  if (before.bare) return { low: 1, high: 1, start, end: before.end, article: true, each, qualifier, tale: null }
  const between = line.at(before.end) === the.between || line.at(before.end) === the.from
  const first = between ? lowEndAt(line, before.end) : valueAt(line, before.end)
  if (first === null) return each ? { low: 1, high: 1, start, end: before.end, article: false, each, qualifier, tale: null } : null
  const second = first.article ? null : (listTail(line, first.end) ?? rangeEnd(line, first.end, between))
  // "from a fowl" is no range.
  if (second === null && between) return null
  if (second === null) {
    const { value, end, article, tale } = first
    return { low: value, high: value, start, end, article, each, qualifier, tale }
  }
  const low = first.value * sharedScore(line, first.value, second)
  const high = second.value
  const { end, tale } = second
  return { low: Math.min(low, high), high: Math.max(low, high), start, end, article: false, each, qualifier, tale }
}

interface Lead {
  readonly end: number
  readonly qualifier: string | null
  readonly each: boolean
  /** The words stand for the number, as in *scant pint*. */
  readonly bare: boolean
}

/** The words before a number: *about*, *every*, *a good* (half). */
function leadAt(line: Line, at: number): Lead | null {
  const first = line.at(at)
  if (line.is(at, numeric) || first === the.between || first === the.from) {
    // "a good half pint": the word between shifts the half.
    const shifted = line.is(at + 1, Role.Qualifier) && line.is(at + 2, Role.Half) && line.is(at, Role.Article)
    return shifted ? lead(at + 2, line.at(at + 1).qualifier, false, false) : lead(at, null, false, false)
  }
  if (line.is(at, Role.Each)) {
    // "ana, one ounce"
    const comma = line.at(at + 1) === mark.comma && valueAt(line, at + 2) !== null
    return lead(comma ? at + 2 : at + 1, null, true, false)
  }
  if (!line.is(at, Role.Qualifier | Role.Degree)) return null
  if (unarticled.has(first.qualifier ?? '') && line.at(at + 1).measure !== null) return lead(at + 1, first.qualifier, false, true)
  const { qualifier, end } = leadingQualifier(line, at)
  if (qualifier === null) return null
  const each = line.is(end, Role.Each)
  return lead(each ? end + 1 : end, qualifier, each, false)
}

const lead = (end: number, qualifier: string | null, each: boolean, bare: boolean): Lead => ({ end, qualifier, each, bare })

const numeric = Role.Cardinal | Role.Article | Role.Half | Role.Part | Role.Collective

const rangeEnd = (line: Line, at: number, between: boolean): Value | null =>
  between && line.at(at) === the.and ? valueAt(line, at + 1) : rangeTail(line, at)

/** *two or three dozen* counts dozens at both ends; *ten or a dozen* does not. */
function sharedScore(line: Line, low: number, high: Value): number {
  const last = line.at(high.end - 1) === the.of ? high.end - 2 : high.end - 1
  const score = line.is(last, Role.Collective) ? line.value(last) : 1
  return low < high.value / score ? score : 1
}

/** *four, five, or six*: the last of a list of numbers. */
function listTail(line: Line, at: number): Value | null {
  if (line.at(at) !== mark.comma) return null
  const second = valueAt(line, at + 1)
  if (second === null || second.article) return null
  return rangeTail(line, line.at(second.end) === mark.comma ? second.end + 1 : second.end)
}
