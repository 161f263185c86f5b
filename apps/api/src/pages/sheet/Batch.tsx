import type { Sheet, Value } from '@pottle/core'
import { Entry } from '../frame/index.js'
import { inScale, sayEnds, scaleFor, unbroken } from '../parts/figures.js'

/** A sum with its ends. */
function sayTotal(total: Value): string {
  return `About ${inScale(total.best, scaleFor(total.quantity, total.best))}; ${sayEnds(total)}.`
}

/** What all of it comes to: weight, room, dishes, eggs, and what the reader fixed. */
export function Batch({ sheet }: { sheet: Sheet }) {
  const { totals, dishes, eggs, rounding, fixed } = sheet
  const { mass, volume } = totals
  const without = mass && mass.without.length > 0 ? ` Without line ${mass.without.join(', ')}.` : ''
  return (
    <Entry title="The batch">
      <dl class="totals">
        {mass && (
          <>
            <dt>Weight</dt>
            <dd>
              {sayTotal(mass)}
              {without}
            </dd>
          </>
        )}
        {volume && (
          <>
            <dt>Room it takes</dt>
            <dd>{sayTotal(volume)} The air in dry things is left out.</dd>
          </>
        )}
        {dishes.text && (
          <>
            <dt>Fills</dt>
            <dd>{dishes.text}</dd>
          </>
        )}
        {eggs && (
          <>
            <dt>Eggs</dt>
            <dd>{eggs.text}</dd>
          </>
        )}
        {rounding && (
          <>
            <dt>Rounding</dt>
            <dd>{unbroken(rounding)}</dd>
          </>
        )}
        {fixed.map(({ what, value }) => (
          <>
            <dt>Fixed by you</dt>
            <dd>
              {what}: {value}
            </dd>
          </>
        ))}
      </dl>
    </Entry>
  )
}
