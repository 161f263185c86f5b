import type { Line } from './line.js'
import { longestName } from './lookup.js'
import { withArticle } from './size.js'
import { type Context, once, type Statement, statement } from './statement.js'
import { the } from './vocabulary.js'
import { Role } from './word.js'

const lying = new Set(['lie', 'lye', 'ly', 'lay', 'stand', 'go', 'cover', 'heap', 'hold', 'rest', 'take'])

/** *as will lie on a shilling*, *to lie on the point of a knife*, *as would cover a sixpence*. */
export function heapAt(line: Line, start: number): { on: string; end: number } | null {
  let verb = false
  for (let at = start; at < start + 11 && !line.is(at, Role.Mark); at++) {
    if (lying.has(line.at(at).text)) verb = true
    else if (verb) {
      const knife = knifeAt(line, at)
      if (knife > 0) return { on: 'the point of a knife', end: knife }
      const coin = longestName(line, at, 'coin')
      if (coin !== null) return { on: withArticle(coin.row.label), end: coin.end }
    } else if (!line.is(at, Role.Plain)) return null
  }
  return null
}

/** The end of *point of a knife* or *knife's point*, or 0. */
function knifeAt(line: Line, at: number): number {
  const row = longestName(line, at, 'measure')
  return row?.row.id === 'knife-point' ? row.end : 0
}

export function heaped(on: string, thing: string | null, start: number, end: number): Statement {
  return statement('comparison', start, end, { amount: once, measure: `as much as will lie on ${on}`, thing })
}

/** *soda to lie on a shilling*. */
export function heapBehind(context: Context, start: number): Statement | null {
  const { line, loose } = context
  const last = loose.at(-1)
  if (last === undefined || last.end !== start || line.at(start) !== the.to) return null
  const heap = heapAt(line, start + 1)
  return heap === null ? null : heaped(heap.on, last.name, last.start, heap.end)
}
