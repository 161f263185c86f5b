import type { Line } from './line.js'
import { the } from './vocabulary.js'
import { digits, mark, Role } from './word.js'

/** A number in words or digits, and the token after it. */
export interface Value {
  readonly value: number
  readonly end: number
  /** It was a bare *a* or *an*, which counts only before a word that can be counted. */
  readonly article: boolean
  /** The number word that things are told by, which may have meant more than it says: `hundred`, `long hundred`. */
  readonly tale: string | null
}

const isHalfA = (line: Line, half: number): boolean => line.is(half + 1, Role.Article) && line.at(half + 2).measure !== null

const counted = (value: number, end: number, tale: string | null = null): Value => ({ value, end, article: false, tale })

/** Skips *of a* and *of an* behind a part: *three quarters of a*. */
function pastOfArticle(line: Line, at: number): number {
  if (line.at(at) !== the.of) return line.is(at, Role.Article) ? at + 1 : at
  if (line.is(at + 1, Role.Article) || line.at(at + 1) === the.one) return at + 2
  return at
}

/** *three quarters*, *½*: a part that stands right behind its measure, and before what it is of. */
function partBehind(line: Line, at: number): Value | null {
  if (line.at(at).text === digits && line.value(at) < 1) return counted(line.value(at), at + 1)
  if (line.is(at, Role.Cardinal) && line.value(at) < 10 && line.is(at + 1, Role.Part) && line.at(at + 2) === the.of)
    return counted(line.value(at) * line.value(at + 1), at + 2)
  return null
}

/** Behind the ordinal of a part: *a third*, *the third part*. */
const pastPartWord = (line: Line, at: number): number => (line.at(at).text === 'part' ? at + 1 : at)

/** *and a half*, *and three quarters*, *and half*: what is added behind a number or a measure. */
export function addedPart(line: Line, at: number): Value | null {
  const behind = partBehind(line, line.at(at) === the.and ? at + 1 : at)
  if (behind !== null && !line.is(behind.end, Role.Cardinal)) return behind
  if (line.is(at, Role.Half)) return isHalfCoin(line, at) || line.at(at + 1) === the.full ? null : counted(line.value(at), at + 1)
  if (line.at(at) !== the.and) return null
  let next = at + 1
  if (line.is(next, Role.Article)) next++
  // "an ounce and half a quarter of saffron"
  if (line.is(next, Role.Half) && line.is(next + 1, Role.Article) && line.is(next + 2, Role.Part))
    return counted(line.value(next) * line.value(next + 2), next + 3)
  // "eggs xx and half a pound of sugar": the half begins the next entry.
  if (line.is(next, Role.Half)) return line.at(next + 1) === the.crown || isHalfA(line, next) ? null : counted(line.value(next), next + 1)
  if (line.is(next, Role.Part)) return counted(line.value(next), pastPartWord(line, next + 1))
  if (next === at + 1 && line.is(next, Role.Cardinal) && line.is(next + 1, Role.Part | Role.Half))
    return counted(line.value(next) * line.value(next + 1), pastPartWord(line, next + 2))
  return null
}

/** *half a*, *half a dozen*, *half a quarter of a*. */
function halfAt(line: Line, at: number): Value {
  const half = line.value(at)
  let next = at + 1
  if (line.is(next, Role.Article)) next++
  // "half a 100 of walnuts"
  if (next > at + 1 && line.is(next, Role.Cardinal) && line.value(next) % 100 === 0)
    return counted(half * line.value(next), pastOf(line, next + 1))
  if (line.is(next, Role.Collective) && line.at(next + 1) !== the.weight)
    return counted(half * line.value(next), pastOf(line, next + 1), taleAt(line, next))
  if (line.is(next, Role.Part) && !isQuarterOf(line, next)) return counted(half * line.value(next), pastOfArticle(line, next + 1))
  if (next > at + 1) return counted(half, next)
  return counted(half, pastOfArticle(line, next))
}

/** *half a quarter of cloves*: a quarter of a thing is a measure of it. */
const isQuarterOf = (line: Line, at: number): boolean =>
  line.at(at) === the.quarter &&
  line.at(at + 1) === the.of &&
  pastOfArticle(line, at + 1) === at + 1 &&
  line.at(at + 2).measure?.class !== 'weight'

const pastOf = (line: Line, at: number): number => (line.at(at) === the.of ? at + 1 : at)

/** A part takes a whole: *a quarter of a pound*, *a quarter pound*. Else *a quarter of beef* would be a fourth. */
function partAt(line: Line, at: number, share: number): Value | null {
  const value = share * line.value(at)
  if (line.at(at + 1).text === 'part') {
    // "the third part of an ounce": of anything but a measure it tells what becomes of it.
    const end = pastOfArticle(line, at + 2)
    return end > at + 2 && line.at(end).measure !== null ? counted(value, end) : null
  }
  const end = pastOfArticle(line, at + 1)
  if (line.is(end, Role.Collective) && line.at(end + 1) !== the.weight)
    return counted(value * line.value(end), pastOf(line, end + 1), taleAt(line, end))
  // "a quarter or half a pound", "a quarter and half of a pound"
  if (end === at + 1 && (line.at(end) === the.or || line.at(end) === the.to) && line.is(end + 1, Role.Half | Role.Part | Role.Cardinal))
    return counted(value, end)
  if (end === at + 1 && line.at(end) === the.and && line.is(end + 1, Role.Half) && line.at(end + 2) === the.of)
    return counted(value * (1 + line.value(end + 1)), pastOfArticle(line, end + 2))
  // "quarter the apples" is done to them, unless a number stands before.
  const ofThe = line.at(at + 1) === the.the && line.is(at - 1, Role.Article | Role.Cardinal | Role.Half)
  const likens = line.at(at + 1) === the.the && line.is(at + 2, Role.Quantity | Role.Weight | Role.Size)
  if (end > at + 1 || line.at(at + 1).measure !== null || ofThe || likens) return counted(value, end)
  const { measure } = line.at(at + 2)
  const ofWhole = line.at(at + 1) === the.of && (line.is(at + 2, Role.Determiner) || (measure !== null && measure.class !== 'piece'))
  return ofWhole ? counted(value, at + 2) : null
}

/** A hundred *of* things may be more than a hundred things. */
const taleAt = (line: Line, at: number): string | null =>
  line.at(at) === the.hundred || line.at(at) === the.thousand ? line.at(at).text : null

/** Words before *hundred* that settle how many it is. */
const hundreds: Readonly<Record<string, string>> = {
  long: 'long hundred',
  great: 'long hundred',
  short: 'short hundred',
  small: 'short hundred',
}

/** *a long hundred*, *two great hundreds*; null where the words are others. */
function settledHundredAt(line: Line, at: number, times: number): Value | null {
  const tale = line.at(at + 1) === the.hundred && line.at(at + 2) !== the.weight ? hundreds[line.at(at).text] : undefined
  return tale === undefined ? null : counted(times * line.value(at + 1), pastOf(line, at + 2), tale)
}

function collectiveAt(line: Line, at: number, times: number): Value {
  let value = times * line.value(at)
  let end = at + 1
  if (line.at(end) === the.of) return counted(value, end + 1, taleAt(line, at))
  const more = addedPart(line, end)
  if (more !== null && line.at(more.end).measure === null) {
    value += more.value * line.value(at)
    end = more.end
    if (line.at(end) === the.of) return counted(value, end + 1, taleAt(line, at))
  } else if (line.at(end) === the.and && line.is(end + 1, Role.Cardinal)) {
    const rest = tensAt(line, end + 1)
    value += rest.value
    end = rest.end
  } else if (line.is(end, Role.Collective)) {
    value *= line.value(end)
    end++
  }
  return counted(value, pastOf(line, end))
}

/** *twenty*, *twenty four*, *four and twenty*: a number of one or two words. */
function tensAt(line: Line, at: number): Value {
  const value = line.value(at)
  const next = at + 1
  if (value < 10 && line.at(next) === the.and && line.is(next + 1, Role.Cardinal) && isTens(line.value(next + 1))) {
    return counted(value + line.value(next + 1), next + 2)
  }
  const ones = isTens(value) && line.is(next, Role.Cardinal) && line.value(next) < 10 && line.at(at).text !== digits
  return ones ? counted(value + line.value(next), next + 1) : counted(value, next)
}

function cardinalAt(line: Line, at: number): Value {
  const value = line.value(at)
  const next = at + 1
  if (line.is(next, Role.Collective) && line.at(next + 1) !== the.weight) return collectiveAt(line, next, value)
  const settled = settledHundredAt(line, next, value)
  if (settled !== null) return settled
  // "100 of oysters"
  if (value >= 100 && value % 100 === 0 && line.at(next) === the.of) return counted(value, next + 1)
  if (value < 1) return counted(value, Math.max(pastOfArticle(line, next), pastOf(line, next)))
  if (line.at(next) === the.half && !isHalfCoin(line, next)) {
    const half = halfAt(line, next)
    return counted(value * half.value, half.end)
  }
  if (line.is(next, Role.Part)) {
    const part = partAt(line, next, value)
    if (part !== null) return part
    // "two quarters of malt" are a corn measure; "three quarters of sugar" are three fourths of what was measured before.
    const parts = value > 1 && (value === 3 || line.at(next + 1) !== the.of)
    if (parts) return counted(value * line.value(next), next + 1)
  }
  const more = addedPart(line, next)
  if (more !== null) return counted(value + more.value, more.end)
  return tensAt(line, at)
}

const isTens = (value: number): boolean => value >= 20 && value < 100 && value % 10 === 0

/** *half-penny* and *half-crown* are coins of their own. */
const isHalfCoin = (line: Line, at: number): boolean => line.at(at + 1).coin !== null

/** *a quartern of an ounce* is a quarter of one; a quartern of anything else is a measure. */
function quarternAt(line: Line, at: number): Value | null {
  const end = line.at(at).text === 'quartern' ? pastOfArticle(line, at + 1) : at
  return end > at + 1 && line.at(end).measure !== null ? counted(0.25, end) : null
}

/** One number, without ranges. */
export function valueAt(line: Line, at: number): Value | null {
  const word = line.at(at)
  if ((word.roles & Role.Cardinal) !== 0) return cardinalAt(line, at)
  if ((word.roles & Role.Half) !== 0) return isHalfCoin(line, at) ? null : halfAt(line, at)
  if ((word.roles & Role.Collective) !== 0) return line.at(at + 1) === the.weight ? null : collectiveAt(line, at, 1)
  if ((word.roles & Role.Part) !== 0) return partAt(line, at, 1)
  if ((word.roles & Role.Article) === 0) return quarternAt(line, at)
  const next = at + 1
  const quartern = quarternAt(line, next)
  if (quartern !== null) return quartern
  if (line.is(next, Role.Half) && !isHalfCoin(line, next)) return halfAt(line, next)
  if (line.is(next, Role.Collective) && line.at(next + 1) !== the.weight) return collectiveAt(line, next, 1)
  const settled = settledHundredAt(line, next, 1)
  if (settled !== null) return settled
  // "a baker's dozen"
  if (/^bakers?$/.test(line.at(next).text) && line.at(next + 1).text === 'dozen')
    return counted(line.value(next + 1) + 1, pastOf(line, next + 2))
  if (line.is(next, Role.Part)) {
    const part = partAt(line, next, 1)
    if (part !== null) return part
  }
  return { value: 1, end: next, article: true, tale: null }
}

/** *or two*, *to eight*, *- 8*: the high end of a range, or null. */
export function rangeTail(line: Line, at: number): Value | null {
  const joint = line.at(at)
  if (joint !== the.or && joint !== the.to && joint !== mark.hyphen && joint !== mark.dash) return null
  const high = valueAt(line, at + 1)
  return high === null || high.article ? null : high
}
