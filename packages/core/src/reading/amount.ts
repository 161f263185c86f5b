import type { Line } from './line.js'
import type { Range } from './reading.js'
import { rangeTail, type Value, valueAt } from './value.js'
import { the } from './vocabulary.js'
import { mark, Role } from './word.js'

/** An amount as stated before a measure: *about two or three*, *every*, *half a*. */
export interface Amount extends Range {
  readonly start: number
  readonly end: number
  readonly article: boolean
  readonly each: boolean
  readonly qualifier: string | null
}

/** *good*, *large* and *small* stand behind their number; before it they belong to what went before: *shred small, a pound of*. */
function shifts(line: Line, at: number): boolean {
  if (line.at(at) === the.full || line.at(at + 1) === the.than) return line.is(at, Role.Qualifier)
  return line.is(at, Role.Qualifier) && !line.is(at, Role.Describing)
}

/** Words that shift an amount stand before it: *about*, *better than*, *not quite*, *rather more than*. */
function leadingQualifier(line: Line, at: number): { qualifier: string | null; end: number } {
  let qualifier: string | null = null
  let end = at
  while (end < at + 4) {
    const word = line.at(end)
    if (shifts(line, end)) qualifier = word.qualifier
    else if (word !== the.than && word !== the.of && !(end > at && word === the.to) && !line.is(end, Role.Degree)) break
    else if (qualifier === null && (word === the.than || word === the.of || word === the.to)) break
    end++
  }
  return { qualifier, end }
}

const unarticled = new Set(['scant', 'heaped', 'level'])

/** The amount that starts at a token, with its range and the words that shift it. */
export function amountAt(line: Line, at: number): Amount | null {
  const lead = leadAt(line, at)
  if (lead === null) return null
  const { each, qualifier } = lead
  if (lead.bare) return { low: 1, high: 1, start: at, end: lead.end, article: true, each, qualifier }
  const between = line.at(lead.end) === the.between || line.at(lead.end) === the.from
  const first = valueAt(line, between ? lead.end + 1 : lead.end)
  if (first === null) return each ? { low: 1, high: 1, start: at, end: lead.end, article: false, each, qualifier } : null
  const second = first.article ? null : (listTail(line, first.end) ?? rangeEnd(line, first.end, between))
  // "from a fowl" is no range.
  if (second === null && between) return null
  if (second === null) {
    const { value, end, article } = first
    return { low: value, high: value, start: at, end, article, each, qualifier }
  }
  const low = first.value * sharedScore(line, first.value, second)
  const high = second.value
  return { low: Math.min(low, high), high: Math.max(low, high), start: at, end: second.end, article: false, each, qualifier }
}

/** The words before a number: *about*, *every*, *a good* (half). `bare` where they stand for the number, as in *scant pint*. */
function leadAt(line: Line, at: number): { end: number; qualifier: string | null; each: boolean; bare: boolean } | null {
  const first = line.at(at)
  if (line.is(at, numeric) || first === the.between || first === the.from) return { ...pastGood(line, at), each: false, bare: false }
  if (line.is(at, Role.Each)) {
    // "ana, one ounce"
    const comma = line.at(at + 1) === mark.comma && valueAt(line, at + 2) !== null
    return { end: comma ? at + 2 : at + 1, qualifier: null, each: true, bare: false }
  }
  if (unarticled.has(first.qualifier ?? '') && line.at(at + 1).measure !== null) {
    return { end: at + 1, qualifier: first.qualifier, each: false, bare: true }
  }
  const { qualifier, end } = leadingQualifier(line, at)
  if (qualifier === null) return null
  const each = line.is(end, Role.Each)
  return { end: each ? end + 1 : end, qualifier, each, bare: false }
}

const numeric = Role.Cardinal | Role.Article | Role.Half | Role.Part | Role.Collective

/** *a good half pint*: the word between shifts the half. */
function pastGood(line: Line, at: number): { end: number; qualifier: string | null } {
  const shifted = line.is(at, Role.Article) && line.is(at + 1, Role.Qualifier) && line.is(at + 2, Role.Half)
  return shifted ? { end: at + 2, qualifier: line.at(at + 1).qualifier } : { end: at, qualifier: null }
}

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
