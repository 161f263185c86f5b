import type { MeasureWordRow } from '../tables/index.js'
import type { Line } from './line.js'
import { longestName, type Named } from './lookup.js'
import { thingAt } from './thing.js'
import { the } from './vocabulary.js'
import { mark, Role } from './word.js'

const vessels = new Set(
  'mould pan basin bason bottle jar mug jug dish pot can bowl kettle saucepan stewpan tin cup glass ladle skillet pipkin saucer porringer vessel cask tub crock copper demijohn stewpot boiler'.split(
    ' ',
  ),
)

/** *man. ij* is short for manipulus, a handful; without its point, its numeral or its *of* it is a man. */
const isPerson = (line: Line, at: number): boolean =>
  line.at(at).text === 'man' &&
  !(line.text[line.end(at)] === '.' && (line.is(at + 1, Role.Cardinal | Role.Half) || line.at(at + 1) === the.of))

/** *vol. ii. p. 145* names a page. */
const isPage = (line: Line, at: number): boolean =>
  line.end(at) === line.start(at) + 1 &&
  line.at(at).measure?.class === 'hand' &&
  line.is(at - 1, Role.Cardinal) &&
  line.is(at + 1, Role.Cardinal)

/** The measure at a token, unless a longer name of a thing starts there: *a pound cake* is no pound. */
export function unitAt(line: Line, at: number): Named<MeasureWordRow> | null {
  const unit = longestName(line, at, 'measure')
  if (unit === null || isPerson(line, at) || isPage(line, at)) return null
  const thing = longestName(line, at, 'thing')
  if (thing === null) return unit
  // "a quarter of beef" is a joint, "a quarter of flour" eight bushels.
  const joint = thing.row.count === 'joint' && line.at(thing.end) === the.of && thingAt(line, thing.end + 1, false)?.row?.meat
  return thing.end > unit.end || joint ? null : unit
}

/** Whether a vessel stands here that holds nothing: a pint basin could hold a pint, but asks for none. */
export const isEmptyVessel = (line: Line, at: number): boolean =>
  vessels.has(line.at(at).text) && line.at(at + 1) !== the.of && line.at(at + 1) !== the.full

/** Whether a vessel stands here with what it holds: *one quart can of tomato*. */
export const isFullVessel = (line: Line, at: number): boolean =>
  vessels.has(line.at(at).text) && (line.at(at + 1) === the.of || line.at(at + 1) === the.full)

/** Words between an amount and its measure: *a good wine pint*, *two heaping tablespoonfuls*. */
export function pastQualifiers(line: Line, start: number): { end: number; qualifier: string | null; standard: string | null } {
  let qualifier: string | null = null
  let standard: string | null = null
  let end = start
  for (; end < start + 5; end++) {
    const word = line.at(end)
    const unit = longestName(line, end, 'measure')
    // "a wine pint" is a pint by the wine measure; "a wine glass" is a glass.
    if (unit !== null && (unit.end > end + 1 || !line.is(end, Role.Standard))) break
    const names = line.at(end + 1).measure !== null || line.is(end + 1, Role.Qualifier)
    if ((word.roles & Role.Qualifier) !== 0) qualifier = word.qualifier
    else if ((word.roles & Role.Standard) !== 0 && names) standard = word.text
    else if ((word.roles & (Role.Describing | Role.Degree)) === 0 || word.thing !== null) break
  }
  return { end, qualifier, standard }
}

/** Words that name a standard only before *measure* or *weight*: an old pint is any pint that is old. */
const sortsOfMeasure = new Set(['old', 'new', 'dry', 'liquid', 'dutch'])
/** Standards that are named without *measure* behind them: *a pound troy*. */
const alone = new Set(['troy', 'avoirdupois', 'imperial', 'winchester'])

/** Skips *by the*, *of*, *in*, *according to* before a standard. */
function pastBy(line: Line, start: number): number {
  let at = start
  if (line.at(at).text === 'according') at++
  if (line.at(at) === the.by || line.at(at) === the.of || line.at(at) === the.in || line.at(at) === the.to) at++
  return line.is(at, Role.Determiner) ? at + 1 : at
}

/** *a pint, wine measure*; *ten pints of wine measure*; *a quart by ale measure*; *a pound troy*; *a pint (Scots measure)*: the standard named behind a measure. */
export function standardBehind(line: Line, at: number): { standard: string; end: number } | null {
  const opened = line.at(at) === mark.open
  const first = pastBy(line, opened || line.at(at) === mark.comma ? at + 1 : at)
  // "old wine measure" is wine measure.
  const sort = sortsOfMeasure.has(line.at(first).text) && line.is(first + 1, Role.Standard) ? first + 1 : first
  const word = line.at(sort)
  if (!line.is(sort, Role.Standard) && !sortsOfMeasure.has(word.text)) return null
  const told = line.at(sort + 1).text === 'measure' || line.at(sort + 1).text === 'standard' || line.is(sort + 1, Role.Weight)
  if (!told && !alone.has(word.text)) return null
  const end = told ? sort + 2 : sort + 1
  // "a quart, ale measure, of yeast"
  const closed = line.at(at) === mark.comma && line.at(end) === mark.comma && line.at(end + 1) === the.of
  if (!opened) return { standard: word.text, end: closed ? end + 1 : end }
  return line.at(end) === mark.close ? { standard: word.text, end: end + 1 } : null
}
