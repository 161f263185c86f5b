import type { MeasureWordRow, ThingWordRow } from '../tables/index.js'
import type { Line } from './line.js'
import { type Branch, Leads } from './word.js'

/** A name found in the tables and the token after it. */
export interface Named<Row> {
  readonly row: Row
  readonly end: number
}

type Field = 'measure' | 'length' | 'object' | 'coin' | 'thing'

interface Rows {
  measure: MeasureWordRow
  length: MeasureWordRow
  object: MeasureWordRow
  coin: MeasureWordRow
  thing: ThingWordRow
}

const leads = { measure: Leads.Measure, length: Leads.Length, object: Leads.Object, coin: Leads.Coin, thing: Leads.Thing } as const

/** The longest name of a kind that starts at a token. */
export function longestName<F extends Field>(line: Line, at: number, field: F): Named<Rows[F]> | null {
  const first = line.at(at)
  if ((first.leads & leads[field]) === 0) return null
  let row: Rows[F] | null = first[field] as Rows[F] | null
  let end = at + 1
  let branch: Branch | undefined = first
  for (let next = at + 1; branch?.next; next++) {
    const word = line.at(next)
    if ((word.leads & Leads.Onward) === 0) break
    branch = branch.next.get(word)
    const longer = branch?.[field]
    if (longer) {
      row = longer as Rows[F]
      end = next + 1
    }
  }
  // *a comb of wheat* is a coomb, but a name that is known by its *of* ends before it.
  return row === null ? null : { row, end: end > at + 1 && line.at(end - 1).text === 'of' ? end - 1 : end }
}
