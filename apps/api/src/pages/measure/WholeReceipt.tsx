import { readReceipt } from '@pottle/core'
import type { Asked } from '../parts/asked.js'
import { Press } from '../parts/fields.js'

/** Whether the words state more than one measure: a receipt, or a part of one. */
export function holdsMore(phrase: string): boolean {
  const { measures, heats } = readReceipt(phrase)
  return measures.length + heats.length > 1
}

/** What was typed, to be sent on as a receipt. A form, since it may be too long for a link. */
export function WholeReceipt({ asked: { phrase, year, place } }: { asked: Asked }) {
  return (
    <form action="/sheet" method="post" data-ask>
      <p>There is more than one measure in these words.</p>
      <input type="hidden" name="text" value={phrase} />
      {year && <input type="hidden" name="year" value={year} />}
      {place && <input type="hidden" name="place" value={place} />}
      <Press>Make a working sheet of them</Press>
    </form>
  )
}
