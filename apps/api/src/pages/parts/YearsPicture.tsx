import { ticks } from './hill.js'

/** A meaning and the years in which it held. */
export interface Reign {
  readonly letter: string
  readonly label: string
  readonly from: number
  readonly to: number
}

/** The years that the tables cover. */
const first = 1266
const last = 1914

const at = (year: number): string => `${(((Math.min(Math.max(year, first), last) - first) / (last - first)) * 100).toFixed(2)}%`
const em = (height: number): string => `${Number(height.toFixed(2))}em`

/** When each meaning held: a rule for each along the years, lettered at its beginning. */
export function YearsPicture({ id, title, reigns }: { id: string; title: string; reigns: readonly Reign[] }) {
  const head = 1.6
  const step = 1.7
  const bottom = head + step * reigns.length + 0.4
  const years = ticks(first, last, 6)
  return (
    <div class="frame">
      <svg class="band" role="img" aria-labelledby={`${id}-title ${id}-story`} width="100%" height={em(bottom)}>
        <title id={`${id}-title`}>{title}</title>
        <desc id={`${id}-story`}>{reigns.map(({ letter, label, from, to }) => `${letter}, ${label}: ${from} to ${to}.`).join(' ')}</desc>
        {years.map((year) => (
          <>
            <text x={at(year)} y="1em" text-anchor="middle">
              {String(year)}
            </text>
            <line class="faintly" x1={at(year)} x2={at(year)} y1={em(head - 0.2)} y2={em(bottom)} stroke-width="1" />
          </>
        ))}
        {reigns.map(({ letter, from, to }, i) => {
          const y = head + step * (i + 0.5)
          return (
            <g stroke="currentColor">
              <line x1={at(from)} x2={at(to)} y1={em(y)} y2={em(y)} stroke-width="3" />
              <line x1={at(to)} x2={at(to)} y1={em(y - 0.35)} y2={em(y + 0.35)} stroke-width="1.5" />
              <circle class="paper" cx={at(from)} cy={em(y)} r="0.72em" stroke-width="1.5" />
              <text x={at(from)} y={em(y + 0.32)} text-anchor="middle" stroke="none">
                {letter}
              </text>
            </g>
          )
        })}
      </svg>
    </div>
  )
}
