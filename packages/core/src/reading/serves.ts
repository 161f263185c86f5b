/** How many a receipt says that it feeds: *sufficient for 6 or 7 persons*. */
import { amountAt } from './amount.js'
import type { Line } from './line.js'
import type { Range } from './reading.js'

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
  for (let at = 2; at < line.length; at++) {
    const found = fed.has(line.at(at).text) ? countBefore(line, at) : null
    if (found !== null) return found
  }
  return null
}

/** The longest number that stands between *for* and the persons. */
function countBefore(line: Line, persons: number): Serves | null {
  for (let start = Math.max(1, persons - longestNumber); start < persons; start++) {
    if (!feeding.has(line.at(start - 1).text)) continue
    const amount = amountAt(line, start)
    if (amount === null || amount.end !== persons || amount.article || amount.each || amount.low < 1) continue
    return { start, end: persons + 1, amount: { low: amount.low, high: amount.high } }
  }
  return null
}
