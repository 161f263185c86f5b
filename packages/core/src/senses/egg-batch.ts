import { exact, rectangle, type Shape, type Unknown, unknown } from '../bands/index.js'
import { noAnswer } from '../error.js'
import type { EggParts, Range, Reading } from '../reading/index.js'

/** Eggs in their parts, and how many times those parts are meant: a range of eggs is one unknown count. */
export interface Batch {
  readonly parts: EggParts
  readonly times: Unknown
}

function timesOf(parts: EggParts, amount: Range | null): Shape {
  const said = parts.whole + Math.max(parts.yolks, parts.whites)
  if (said === 0) throw noAnswer('phrase', 'no egg is left of these; say how many eggs go in')
  const ranged = amount && amount.low !== amount.high && amount.low <= said && said <= amount.high
  return ranged ? rectangle(amount.low / said, amount.high / said) : exact(1)
}

/**
 * The eggs of a reading. Two ranges in one receipt are two counts: the place of the words tells them apart.
 *
 * @throws PottleError `no-answer` where no number is given, or no egg is left
 */
export function batchOf({ amount, eggs: parts, understood }: Reading): Batch {
  const count = `eggs:${understood[0]?.start ?? 0}`
  if (parts) return { parts, times: unknown(count, timesOf(parts, amount)) }
  if (!amount) throw noAnswer('phrase', 'these words name eggs but no number of them; say how many')
  return { parts: { whole: 1, yolks: 0, whites: 0 }, times: unknown(count, rectangle(amount.low, amount.high)) }
}
