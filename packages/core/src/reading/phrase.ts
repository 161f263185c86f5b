import { badOption, PottleError } from '../error.js'
import { nearestTo } from '../nearest.js'
import { Slots } from '../slots.js'
import { words as measureWords } from '../tables/index.js'
import { heatPhrase, isTestPhrase } from './heat-phrase.js'
import type { Line } from './line.js'
import { readLine } from './reader.js'
import type { Reading } from './reading.js'
import { readingOf } from './report.js'
import { type Statement, statement } from './statement.js'
import type { Thing } from './thing.js'
import { scan } from './tokens.js'
import { lexicon } from './vocabulary.js'
import { type Boldness, leadOf, tellsAlone, warmthsIn } from './warmth.js'
import { Role } from './word.js'

const longestPhrase = 1000

/** Readings never change, and kitchens ask for *a pint of cream* again and again. */
const lately = new Slots<Reading>(4096)

/** Words that carry no meaning of their own: leaving them unread hides nothing. */
const silent = new Set(['of', 'the', 'a', 'and', 'in', 'to', 'into', 'with', 'take', 'some', 'your', 'put', 'add', 'it'])

/**
 * Reads one phrase: a measure, a count, eggs by their parts, a comparison, a heat, a time, a length or a consistency.
 *
 * @param text up to 1000 characters in any spelling since about 1400
 * @throws PottleError `bad-option` for an empty or overlong phrase; `unreadable` when the words state none of these
 * @example readPhrase('a pottle of creme').measure   // 'pottle'
 */
export function readPhrase(text: string): Reading {
  if (typeof text !== 'string' || text.length > longestPhrase)
    throw badOption('phrase', `must be text of at most ${longestPhrase} characters`)
  const known = lately.get(text)
  if (known !== undefined) return known
  const line = scan(text, lexicon)
  const { statements, unmeasured } = readLine(line, true)
  const told = likeliest(statements)
  const best = (isOpen(line, told) ? heatIn(line) : null) ?? told ?? nameAlone(line, unmeasured)
  if (best === undefined) throw unreadable(line)
  const reading = readingOf(line, isBelowNothing(line, best) ? { ...best, contradiction: belowNothing } : best, statements)
  lately.set(text, reading)
  return reading
}

/** Whether the words may be a heat after all: nothing else is told, a test of an oven tells a time, or a height of sugar was read as a count. */
function isOpen(line: Line, told: Statement | undefined): boolean {
  if (told === undefined || told.kind === 'vague') return true
  return (told.kind === 'time' && isTestPhrase(line)) || isHeight(line, told)
}

/** A heat that the phrase as a whole tells; what is surely a height or a warmth before an oven, and any bare name after. */
const heatIn = (line: Line): Statement | null => warmthOf(line, 'likely') ?? heatPhrase(line) ?? warmthOf(line, 'any')

/** *Boil it to a plume height*: what was read as a plum is no plum. */
function isHeight(line: Line, { kind, start, end }: Statement): boolean {
  return kind === 'counted' && warmthsIn(line, 'likely').some((one) => one.of === 'sugar' && one.start < end && start < one.end)
}

/** *cream*, *a little salt and eggs*: things that the words name and say nothing more of. */
function nameAlone(line: Line, [first]: readonly Thing[]): Statement | undefined {
  for (let at = 0; at < line.length; at++) if (line.at(at).roles === 0) return undefined
  return first && statement('vague', first.start, first.end, { thing: first.name })
}

const belowNothing = 'an amount below nothing has no measure; give a number above zero'

/** *-3 pints*, *minus two pints*. */
function isBelowNothing(line: Line, { start, amount }: Statement): boolean {
  if (amount === null) return false
  return line.at(start - 1).text === 'minus' || (start === 0 && /^\s*[-−]\s?$/.test(line.text.slice(0, line.start(0))))
}

/** The height of sugar or the warmth of a liquid that the words tell. */
function warmthOf(line: Line, boldness: Boldness): Statement | null {
  const [one] = warmthsIn(line, boldness)
  return one === undefined || (boldness === 'any' && !tellsAlone(line, one))
    ? null
    : statement('heat', leadOf(line, one), one.end, { heat: one.words, heatOf: one.of })
}

/** The first statement that gives a number, or else the first. */
function likeliest(statements: readonly Statement[]): Statement | undefined {
  return statements.find((one) => one.kind !== 'vague') ?? statements[0]
}

function unreadable(line: Line): PottleError {
  const understood: string[] = []
  const unread: string[] = []
  for (let at = 0; at < line.length; at++) {
    const word = line.at(at)
    if ((word.roles & Role.Mark) !== 0) continue
    const text = line.text.slice(line.start(at), line.end(at))
    if (word.roles !== 0 || word.value > 0 || silent.has(word.text)) understood.push(text)
    else unread.push(text)
  }
  const sought = unread[0] ?? understood[0]
  const nearest = sought === undefined ? [] : nearestTo(sought, [...new Set(measureWords.map((row) => row.label))], 3)
  const detail =
    line.length === 0 ? 'is empty: it should state a measure, a count or a heat' : 'states no measure, count or heat that can be read'
  return new PottleError('unreadable', [{ parameter: 'phrase', detail }], { understood, unread, nearest })
}
