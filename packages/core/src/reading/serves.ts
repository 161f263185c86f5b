/** How many a receipt says that it feeds: *sufficient for 6 or 7 persons*. */
import { amountAt } from './amount.js'
import type { Line } from './line.js'
import type { Range } from './reading.js'
import { the } from './vocabulary.js'
import { Role } from './word.js'

/** So many tokens before its persons a number may begin. */
const longestNumber = 8

const fed = new Set(['person', 'persons', 'people', 'guest', 'guests', 'cover', 'covers'])
const feeding = new Set(['for', 'serve', 'serves', 'feed', 'fed', 'feeds', 'dine', 'suffice', 'suffices'])

/** A number of persons, and the stretch of tokens that states it. */
export interface Serves {
  readonly start: number
  readonly end: number
  readonly amount: Range
}

/** The first number of persons that the text says it is enough for; null where it says none. */
export function servesIn(line: Line): Serves | null {
  for (let at = 0; at < line.length; at++) {
    const found = fed.has(line.at(at).text) ? countBefore(line, at) : servedAt(line, at)
    if (found !== null) return found
  }
  return null
}

const companies = new Set(['table', 'family', 'party', 'company', 'household', 'number', 'mess', 'messe'])

/** Whether the words before a number say that it is fed: *for eight*, *for a family of eight*. */
function isFed(line: Line, start: number): boolean {
  const before = line.at(start - 1)
  return feeding.has(before.text) || (before === the.of && companies.has(line.at(start - 2).text))
}

/** *Serves six.* */
function servedAt(line: Line, start: number): Serves | null {
  const inS = feeding.has(line.at(start).text) && /s$/i.test(line.text.slice(line.start(start), line.end(start)))
  const amount = inS ? amountAt(line, start + 1) : null
  if (amount === null || amount.article || amount.each || amount.low < 1 || !line.is(amount.end, Role.Mark)) return null
  return { start: start + 1, end: amount.end, amount: { low: amount.low, high: amount.high } }
}

/** The longest number that stands between *for* and the persons. */
function countBefore(line: Line, persons: number): Serves | null {
  for (let start = Math.max(1, persons - longestNumber); start < persons; start++) {
    if (!isFed(line, start)) continue
    const amount = amountAt(line, start)
    if (amount === null || amount.end !== persons || amount.article || amount.each || amount.low < 1) continue
    return { start, end: persons + 1, amount: { low: amount.low, high: amount.high } }
  }
  return null
}
