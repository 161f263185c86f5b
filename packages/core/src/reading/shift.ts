import { sideOf } from './amount.js'
import type { Line } from './line.js'
import { the } from './vocabulary.js'
import { mark, Role } from './word.js'

/** A word that shifts an amount from behind, and the token after it. */
export interface Shift {
  /** Null where the words say that it is not shifted: *and no more*. */
  readonly qualifier: string | null
  readonly end: number
}

const behindOr: Readonly<Record<string, string>> = {
  more: 'good',
  upwards: 'good',
  upward: 'good',
  better: 'good',
  above: 'good',
  over: 'good',
  less: 'scant',
  under: 'scant',
  so: 'about',
  thereabouts: 'about',
  thereabout: 'about',
}

/** *or so*, *or rather more*, *and upwards*. */
function behindOrAt(line: Line, at: number): Shift | null {
  let word = at + 1
  while (
    word < at + 4 &&
    (line.is(word, Role.Degree | Role.Describing | Role.Article) || line.at(word).text === 'something') &&
    !behindOr[line.at(word).text]
  )
    word++
  const qualifier = line.at(at) === the.and && line.at(at + 1) === the.no ? null : behindOr[line.at(word).text]
  return qualifier === undefined ? null : { qualifier, end: word + 1 }
}

/** *more or less*, with the comma before an *of*. */
function moreOrLessAt(line: Line, at: number): Shift | null {
  if (line.at(at).text !== 'more' || line.at(at + 1) !== the.or || line.at(at + 2).text !== 'less') return null
  const of = line.at(at + 3) === mark.comma && line.at(at + 4) === the.of
  return { qualifier: 'about', end: of ? at + 4 : at + 3 }
}

/** *at least*, *at the most*. */
function sideAt(line: Line, at: number): Shift | null {
  const side = line.at(at + 1) === the.the ? at + 2 : at + 1
  const word = line.at(side)
  if (line.at(at) !== the.at || (word.text !== 'least' && word !== the.most)) return null
  return { qualifier: sideOf(word), end: side + 1 }
}

/** Whether the thing of the measure follows, or nothing more of it. */
const isClosed = (line: Line, at: number): boolean => line.at(at) === the.of || line.is(at, Role.Mark)

/** Words that say of any measure how it was filled; *small* and *large* behind it may speak of something else. */
const filled = new Set(['heaped', 'rounded', 'level', 'scant'])

/**
 * What shifts an amount from behind its measure: *a pint or rather more*, *a teaspoonful, heaped, of soda*, *a pint, good measure*.
 *
 * Without *or* it must be closed by *of* or by a mark, for *two pounds, scant pastry* says nothing of the pounds.
 */
export function shiftBehind(line: Line, at: number): Shift | null {
  const about = moreOrLessAt(line, line.at(at) === mark.comma ? at + 1 : at)
  if (about !== null) return about
  if (line.at(at) === the.or) return behindOrAt(line, at)
  const told = line.at(at) === the.and ? behindOrAt(line, at) : sideAt(line, at)
  if (told !== null) return isClosed(line, told.end) ? told : null
  const parted = line.at(at) === mark.comma
  // "half a pint, rather more"
  const more = parted ? behindOrAt(line, line.at(at + 1) === the.or ? at + 1 : at) : null
  if (more !== null && isClosed(line, more.end)) {
    const of = line.at(more.end) === mark.comma && line.at(more.end + 1) === the.of
    return of ? { ...more, end: more.end + 1 } : more
  }
  const first = parted ? at + 1 : at
  const { qualifier } = line.at(first)
  if (qualifier === null) return null
  const measured = line.at(first + 1).text === 'measure' || line.is(first + 1, Role.Weight)
  if (!measured && !filled.has(qualifier)) return null
  const end = measured ? first + 2 : first + 1
  const of = line.at(end) === mark.comma ? end + 1 : end
  if (line.at(of) === the.of) return { qualifier, end: of }
  return isClosed(line, end) ? { qualifier, end } : null
}
