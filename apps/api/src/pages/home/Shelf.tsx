import { describeMeasure } from '@pottle/core'
import { markShape } from '../assets/mark.js'
import { inScale, scaleFor } from '../parts/figures.js'

/** From the smallest: each but the first holds twice the one before it, and stands as much higher as the cube root of two. */
const measures = ['gill', 'pint', 'quart', 'pottle', 'gallon'] as const

/** What a measure holds by the wine gallon. */
function held(id: string): string {
  const wine = describeMeasure(id)!.senses.find((sense) => sense.standard === 'gallon.wine')!
  return inScale(wine.value, scaleFor('volume', wine.value))
}

/** The wine measures on their shelf, drawn to scale. */
export function Shelf() {
  return (
    <figure class="shelf">
      <ul>
        {measures.map((id) => (
          <li>
            <svg class={id} viewBox="0 0 44 47" aria-hidden="true">
              <path class="measure-mark" d={markShape} vector-effect="non-scaling-stroke" />
            </svg>
            <a href={`/measures/${id}`}>{id}</a>
            <span>{held(id)}</span>
          </li>
        ))}
      </ul>
      <figcaption>The wine measures, drawn to scale.</figcaption>
    </figure>
  )
}
