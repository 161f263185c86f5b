import { requireFields } from '../error.js'
import type { BrickOven, OvenMoment } from './brick.js'
import { allHeats } from './catalogue.js'
import { requirePositive, toFahrenheit } from './degrees.js'
import type { BakeWindow } from './order.js'
import { accent, circle, faint, ink, label, line, type PlateOptions, path, plate, rectangle } from './plate.js'
import { bestOfHeat } from './scale.js'

/** How a cooling oven is drawn. */
export interface CoolingCurveOptions extends PlateOptions {
  /** How long a stretch is drawn; 12 hours where nothing is said. */
  readonly hours?: number
  /** Receipts laid out by `bakingOrder`, drawn under the curve. */
  readonly bakes?: readonly BakeWindow[]
}

const width = 820
const left = 96
const right = 530
const top = 76
const bottom = 436
const laneHeight = 24

interface Frame {
  readonly hours: number
  readonly hottest: number
  readonly x: (hours: number) => number
  readonly y: (celsius: number) => number
}

function frameOf(hours: number, start: number): Frame {
  const hottest = Math.ceil((start + 10) / 50) * 50
  const x = (at: number): number => left + (at / hours) * (right - left)
  const y = (celsius: number): number => bottom - (celsius / hottest) * (bottom - top)
  return { hours, hottest, x, y }
}

/** A clock as a baker says it: `3 h 10`. */
function clock(hours: number): string {
  const minutes = Math.round((hours * 60) / 5) * 5
  const [whole, rest] = [Math.floor(minutes / 60), minutes % 60]
  if (minutes === 0) return '0 h'
  return whole === 0 ? `${rest} min` : rest === 0 ? `${whole} h` : `${whole} h ${String(rest).padStart(2, '0')}`
}

function axes({ hours, hottest, x, y }: Frame): readonly string[] {
  const every = hours <= 6 ? 1 : hours <= 14 ? 2 : 4
  const ticks = Array.from({ length: Math.floor(hours / every) + 1 }, (_, i) => i * every)
  const levels = Array.from({ length: hottest / 50 + 1 }, (_, i) => i * 50)
  return [
    line(left, top - 10, left, bottom),
    line(left, bottom, right, bottom),
    ...ticks.flatMap((at) => [line(x(at), bottom, x(at), bottom + 5), label(x(at), bottom + 20, String(at), { 'text-anchor': 'middle' })]),
    label(right + 20, bottom + 20, 'hours'),
    ...levels.flatMap((at) => [
      line(left - 5, y(at), left, y(at)),
      label(left - 10, y(at) + 3, `${at} °C`, { 'text-anchor': 'end' }),
      ...(at > 0 ? [label(left - 10, y(at) + 17, `${Math.round(toFahrenheit(at))} °F`, { 'text-anchor': 'end', 'font-size': 10 })] : []),
    ]),
  ]
}

function band(moments: readonly OvenMoment[], { x, y }: Frame, id: string): readonly string[] {
  const along = (end: 'low' | 'best' | 'high') => moments.map(({ hours, value }) => [x(hours), y(value[end])] as const)
  return [
    path([...along('high'), ...along('low').reverse()], { fill: `url(#${id}-hatch)`, stroke: 'none', opacity: '0.55' }),
    path(along('high'), { 'stroke-width': 0.8, 'stroke-dasharray': '5 3' }),
    path(along('low'), { 'stroke-width': 0.8, 'stroke-dasharray': '5 3' }),
    path(along('best'), { 'stroke-width': 2.4 }),
  ]
}

interface Crossing {
  readonly label: string
  readonly celsius: number
  readonly hours: number
  readonly text: string
}

/** The heats that the oven falls through while the picture lasts. */
function crossings(oven: BrickOven, hours: number): readonly Crossing[] {
  return [...allHeats()].reverse().flatMap((heat) => {
    const celsius = bestOfHeat(heat.id)
    const at = oven.reaches(celsius)
    if (!at || celsius > oven.start.best || at.best > hours) return []
    return [
      { label: heat.label, celsius, hours: at.best, text: `${heat.label}, ${clock(at.best)} (${clock(at.low)} to ${clock(at.high)})` },
    ]
  })
}

function crossingMarks(list: readonly Crossing[], { x, y }: Frame): readonly string[] {
  return list.flatMap(({ celsius, hours, text }) => [
    line(x(hours), y(celsius), right + 8, y(celsius), { stroke: faint, 'stroke-width': 0.7, 'stroke-dasharray': '1 3' }),
    circle(x(hours), y(celsius), 3.4, { fill: accent, stroke: ink, 'stroke-width': 0.8 }),
    label(right + 14, y(celsius) + 4, text, { 'font-size': 11.5 }),
  ])
}

/** As much of a name as there is room for. */
const short = (name: string): string => (name.length > 26 ? `${name.slice(0, 25)}…` : name)

/** Each receipt as a bar from going in to coming out, with its window as a thin rule. */
function lanes(bakes: readonly BakeWindow[], { x, hours }: Frame): readonly string[] {
  return bakes.flatMap(({ name, opens, closes, goesIn, comesOut }, i) => {
    const at = bottom + 44 + laneHeight * i
    const end = (time: number): number => x(Math.min(time, hours))
    return [
      line(end(opens), at, end(closes), at, { 'stroke-width': 1 }),
      line(end(opens), at - 4, end(opens), at + 4),
      line(end(closes), at - 4, end(closes), at + 4),
      rectangle(end(goesIn), at - 5, Math.max(4, end(comesOut) - end(goesIn)), 10, { fill: ink }),
      label(right + 14, at + 4, `${short(name)}: ${clock(goesIn)} to ${clock(comesOut)}`, { 'font-size': 11.5 }),
    ]
  })
}

/**
 * A cooling oven as a picture: the likeliest curve, its band, and the heats that it falls through.
 *
 * @returns a standalone SVG document
 * @throws PottleError `bad-option` for a number of hours that is not above zero
 * @example drawCoolingCurve(brickOven({ start: 232 })).includes('<title')   // true
 */
export function drawCoolingCurve(
  oven: BrickOven,
  { hours = 12, bakes = [], title = 'A brick oven as it cools', id = 'cooling' }: CoolingCurveOptions = {},
): string {
  requireFields('oven', requireFields('oven', oven).start)
  requirePositive('hours', hours, 'hours')
  const frame = frameOf(hours, oven.start.high)
  const moments = oven.curve(hours, 49)
  const crossed = crossings(oven, hours)
  const end = moments.at(-1)!.value
  const spoken = [
    `It begins at ${Math.round(oven.start.best)} degrees Celsius and after ${hours} hours stands at ${Math.round(end.best)}, between ${Math.round(end.low)} and ${Math.round(end.high)}.`,
    ...crossed.map(({ text }) => `${text}.`),
    ...bakes.map(({ name, goesIn, comesOut }) => `${name} goes in at ${clock(goesIn)} and comes out at ${clock(comesOut)}.`),
  ]
  const lower = bakes.length > 0 ? laneHeight * bakes.length + 28 : 0
  return plate(
    { width, height: bottom + 78 + lower },
    {
      id,
      title,
      description: spoken.join(' '),
      caption: [
        'Heavy line: the likeliest oven. Hatched: nine times in ten. Dots: the middle of each heat, with its time.',
        ...(bakes.length > 0 ? ['Rules below: when a receipt may go in. Bars: in the oven.'] : []),
      ],
    },
    [...axes(frame), ...band(moments, frame, id), ...crossingMarks(crossed, frame), ...lanes(bakes, frame)],
  )
}
