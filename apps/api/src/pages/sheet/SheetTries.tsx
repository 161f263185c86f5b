import { demoReceipts } from '@pottle/core'
import { addressOf } from '../parts/asked.js'

/** Receipts to try, as links that make their sheets. */
export function SheetTries() {
  return (
    <ul class="tries small" aria-label="Receipts to try">
      {demoReceipts.map(({ title, year, place, text }) => (
        <li>
          <a href={addressOf('/sheet', { title, year, place, text })}>{title}</a> <span class="quiet">{year}</span>
        </li>
      ))}
    </ul>
  )
}
