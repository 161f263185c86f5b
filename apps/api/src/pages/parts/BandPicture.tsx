import { bare, between, inScale, type Scale, sayCoverage, sayShare } from './figures.js'
import { hill, type Peak, ticks } from './hill.js'

/** A meaning to mark: the letter that the text knows it by. */
export interface Mark extends Peak {
  readonly letter: string
  readonly label: string
}

interface BandProps {
  readonly id: string
  readonly title: string
  readonly value: { readonly low: number; readonly best: number; readonly high: number; readonly coverage: number }
  readonly marks: readonly Mark[]
  readonly scale: Scale
  /** Peaks of the hill; the marks where nothing is said. */
  readonly peaks?: readonly Peak[]
}

const room = 0.06
/** Heights in em, from the top. */
const level = { best: 1, crest: 1.6, ground: 6.4, figures: 7.8, whole: 9.4, firstMark: 11.1, between: 1.8 }

const percent = (share: number): string => `${(share * 100).toFixed(2)}%`
const em = (height: number): string => `${Number(height.toFixed(2))}em`

function rangeOf({ value, marks }: BandProps): { from: number; to: number } {
  const lows = [value.low, value.best, ...marks.map(({ low }) => low)]
  const highs = [value.high, value.best, ...marks.map(({ high }) => high)]
  const [low, high] = [Math.min(...lows), Math.max(...highs)]
  const margin = (high - low) * room || Math.abs(high) * room || 1
  return { from: low - margin, to: high + margin }
}

function describe({ value, marks, scale }: BandProps): string {
  const whole = `The best value is ${inScale(value.best, scale)}; ${sayCoverage(value.coverage)} the true one lies from ${between(value, scale)}.`
  const each = marks.map(
    ({ letter, label, share, best, ...ends }) =>
      `${letter}, ${label}${share < 1 && share > 0 ? `, ${sayShare(share)}` : ''}: ${inScale(best, scale)}, from ${between(ends, scale)}.`,
  )
  return [whole, ...each].join(' ')
}

/** The hill itself, stretched to the width there is; its lines keep their weight. */
function Hill({ peaks, from, to, id }: { peaks: readonly Peak[]; from: number; to: number; id: string }) {
  const heights = hill(peaks, from, to)
  const points = heights.map((height, i) => `${((i / (heights.length - 1)) * 1000).toFixed(1)} ${(100 - height * 100).toFixed(1)}`)
  return (
    <svg
      x="0"
      y={em(level.crest)}
      width="100%"
      height={em(level.ground - level.crest)}
      viewBox="0 0 1000 100"
      preserveAspectRatio="none"
      aria-hidden="true"
    >
      <defs>
        <pattern id={`${id}-hatch`} width="6" height="100" patternUnits="userSpaceOnUse">
          <line x1="1" y1="0" x2="1" y2="100" stroke="currentColor" stroke-width="1" opacity="0.45" />
        </pattern>
      </defs>
      <path d={`M0 100L${points.join('L')}L1000 100Z`} fill={`url(#${id}-hatch)`} />
      <path d={`M${points.join('L')}`} fill="none" stroke="currentColor" stroke-width="1.5" vector-effect="non-scaling-stroke" />
    </svg>
  )
}

/** A rule from low to high with its ends marked. */
function Rule({ low, high, y, weight, at }: { low: number; high: number; y: number; weight: number; at: (value: number) => string }) {
  const end = 0.35
  return (
    <g stroke="currentColor">
      <line x1={at(low)} x2={at(high)} y1={em(y)} y2={em(y)} stroke-width={weight} />
      <line x1={at(low)} x2={at(low)} y1={em(y - end)} y2={em(y + end)} stroke-width="1.5" />
      <line x1={at(high)} x2={at(high)} y1={em(y - end)} y2={em(y + end)} stroke-width="1.5" />
    </g>
  )
}

/** A word at a place, turned inwards near the edges so that it is not cut off. */
function Word({ x, y, children }: { x: number; y: number; children: string }) {
  const anchor = x < 0.2 ? 'start' : x > 0.8 ? 'end' : 'middle'
  return (
    <text x={percent(x)} y={em(y)} text-anchor={anchor}>
      {children}
    </text>
  )
}

/**
 * Where the true value probably lies: a hill over a measuring rule, the band under it, and each meaning as a lettered rule of its own. Heavier rules
 * are likelier, and all is said in words too.
 */
export function BandPicture(props: BandProps) {
  const { id, title, value, marks, scale, peaks = marks } = props
  const { from, to } = rangeOf(props)
  const share = (number: number): number => (number - from) / (to - from)
  const at = (number: number): string => percent(share(number))
  const lowest = level.firstMark + level.between * (marks.length - 1)
  const bottom = (marks.length > 0 ? lowest : level.whole) + 0.9
  const rule = ticks(from / scale.size, to / scale.size).map((tick) => tick * scale.size)
  const shown = rule.filter((tick) => share(tick) > 0.03 && share(tick) < 0.97)
  return (
    <div class="frame">
      <svg class="band" role="img" aria-labelledby={`${id}-title ${id}-story`} width="100%" height={em(bottom)}>
        <title id={`${id}-title`}>{title}</title>
        <desc id={`${id}-story`}>{describe(props)}</desc>
        {shown.map((tick) => (
          <line class="faintly" x1={at(tick)} x2={at(tick)} y1={em(level.ground)} y2={em(bottom)} stroke-width="1" />
        ))}
        <Hill peaks={peaks} from={from} to={to} id={id} />
        <line x1="0" x2="100%" y1={em(level.ground)} y2={em(level.ground)} stroke="currentColor" stroke-width="2" />
        {shown.map((tick) => (
          <line x1={at(tick)} x2={at(tick)} y1={em(level.ground)} y2={em(level.ground + 0.4)} stroke="currentColor" stroke-width="1.5" />
        ))}
        {shown.map((tick, i) => (
          <text x={at(tick)} y={em(level.figures)} text-anchor="middle">
            {i === shown.length - 1 ? inScale(tick, scale) : bare(tick, scale)}
          </text>
        ))}
        <line class="red" x1={at(value.best)} x2={at(value.best)} y1={em(level.best + 0.3)} y2={em(level.ground)} stroke-width="2" />
        <Word x={share(value.best)} y={level.best}>{`best ${inScale(value.best, scale)}`}</Word>
        <Rule low={value.low} high={value.high} y={level.whole} weight={5} at={at} />
        {marks.map((mark, i) => {
          const y = level.firstMark + level.between * i
          return (
            <>
              <Rule low={mark.low} high={mark.high} y={y} weight={1 + mark.share * 3} at={at} />
              <circle class="paper" cx={at(mark.best)} cy={em(y)} r="0.72em" stroke="currentColor" stroke-width="1.5" />
              <text x={at(mark.best)} y={em(y + 0.32)} text-anchor="middle">
                {mark.letter}
              </text>
            </>
          )
        })}
      </svg>
    </div>
  )
}
