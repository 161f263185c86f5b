import type { MeasureWordRow } from '../tables/index.js'
import type { Amount } from './amount.js'
import type { Line } from './line.js'
import type { Named } from './lookup.js'
import { type Context, type Statement, statement } from './statement.js'
import { thingAt } from './thing.js'
import { addedPart, rangeTail } from './value.js'
import { the } from './vocabulary.js'
import { mark, Role } from './word.js'

const spans = new Set(['day', 'night', 'week', 'month', 'year', 'hour'])

/** *twice a day* and *every hour* say how often, not how long; *eight weeks old* is an age. */
function tellsHowOften(line: Line, start: number, amount: Amount, end: number): boolean {
  if (amount.each || (line.at(end) === the.old && amount.low > 3)) return true
  const before = line.at(start - 1)
  if (before === the.in && line.at(start - 2) === the.time) return true
  return amount.article && (line.is(start - 1, Role.Twice) || before === the.once || before === the.time || before === the.per)
}

/** A stated time: *an hour and a half*, *two or three days*, *a quarter of an hour*. */
export function timeAt(context: Context, start: number, amount: Amount, unit: Named<MeasureWordRow>): Statement | null {
  const { line } = context
  if (unit.row.needs === 'phrase' && !context.phrase) return null
  if (tellsHowOften(line, start, amount, unit.end)) return null
  // "a second time" counts; "ten seconds" measures.
  if (amount.article && unit.row.id === 'second') return null
  // "every third day", "the sixth hour"
  if (line.is(amount.end - 1, Role.Part) && line.at(amount.end - 1) !== the.quarter && !line.is(amount.end - 2, Role.Cardinal)) return null
  let { low, high } = amount
  let { end } = unit
  const added = addedPart(line, end)
  if (added !== null) {
    low += added.value
    high += added.value
    end = added.end
  }
  const joint = line.at(end) === mark.comma && line.at(end + 1) === the.or ? end + 1 : end
  const tail = rangeTail(line, joint)
  const bare = tail !== null && line.at(tail.end).measure === null && thingAt(line, tail.end, false) === null
  if (tail !== null && bare && line.at(joint) === the.or) {
    high = Math.max(high, tail.value)
    end = tail.end
  } else if (tail !== null && joint === end && line.at(tail.end).measure === unit.row) {
    high = Math.max(high, tail.value)
    end = tail.end + 1
  }
  const each = unit.row.minutes
  return statement('time', start, end, {
    amount: { low, high },
    measure: unit.row.label,
    qualifier: amount.qualifier,
    minutes: each === undefined ? null : { low: low * each, high: high * each },
  })
}

/** Times without a number: *all night*, *overnight*, *a Paternoster while*. */
export function looseTimeAt(line: Line, start: number): Statement | null {
  const word = line.at(start)
  if (word.text === 'overnight') return statement('time', start, start + 1, { measure: 'night', minutes: null })
  const whole = word === the.all || word === the.over || word.text === 'whole'
  if (!whole || !spans.has(line.at(start + 1).text) || line.at(start + 1).measure?.class !== 'time') return null
  if (word === the.over && line.at(start + 1) !== the.night) return null
  if (line.at(start + 2) === mark.hyphen) return null
  return statement('time', start, start + 2, { measure: line.at(start + 1).text, minutes: null })
}
