import { type Band, bandOf, product, type Shape, sum, triangle, unknown } from '../bands/index.js'
import { badOption, requireFields, show } from '../error.js'
import type { Spread } from '../tables/index.js'
import { constantOf, hoursTo, leftAfter } from './cooling.js'
import { coverage, requireNumber, requireOvenHeat, requirePositive, tidy, toCelsius } from './degrees.js'
import { findHeat } from './find-heat.js'
import { type HeatName, heatNearest, nameOf } from './scale.js'
import { type OvenSettings, ovenSettings } from './settings.js'
import { shapeOf } from './shape.js'

/** A cooling oven. */
export interface BrickOvenOptions {
  /** Where the clock starts: degC, a band in degC, or a heat phrase (*as hot as for bread*); after the bread is drawn where nothing is said. */
  readonly start?: number | Spread | string
  /** When the phrase of `start` was written. */
  readonly year?: number
  /** Of the room, in degC. */
  readonly ambient?: number
  /** Hours in which the difference from the room falls to 37 %: a number or a band; that of an oven shut after the batch is out where nothing is said. */
  readonly timeConstant?: number | Spread
  /** Minutes that a full batch of dough is in the oven from the start; it takes most of the heat away. */
  readonly batchMinutes?: number
  /** Minutes after the start at which `moment` is wanted. */
  readonly minutesAfter?: number
}

/** The oven at one time. */
export interface OvenMoment {
  readonly hours: number
  /** In degC. */
  readonly value: Band
  /** The nearest step of the scale. */
  readonly heat: HeatName
  readonly modern: OvenSettings
}

/** A brick oven as it cools, to be asked for any time or temperature. */
export interface BrickOven {
  readonly start: Band
  readonly ambient: number
  readonly timeConstant: Spread
  readonly batchMinutes: number
  /** The oven so many hours after the start, from 0 to 72. */
  readonly at: (hours: number) => OvenMoment
  /** Hours until the oven has fallen to a temperature in degC; null where it never does. */
  readonly reaches: (celsius: number) => Band | null
  /** Evenly spaced moments from the start. */
  readonly curve: (hours: number, points?: number) => readonly OvenMoment[]
  /** The oven at `minutesAfter`, where it was asked for. */
  readonly moment: OvenMoment | null
  readonly notes: readonly string[]
}

/** A bakehouse of 65 degF (as the fits of data/brick-ovens.json take it). */
const bakehouse = toCelsius(65)
const longest = 72

function readSpread(parameter: string, value: number | Spread): Spread {
  if (typeof value === 'number') return { low: requireNumber(parameter, value), best: value, high: value }
  const { low, best, high } = value ?? {}
  for (const end of [low, best, high]) requireNumber(parameter, end)
  if (!(low <= best && best <= high)) throw badOption(parameter, 'low, best and high must rise in that order')
  return { low, best, high }
}

function readStart(options: BrickOvenOptions): { readonly band: Band; readonly shape: Shape } {
  const { start = 'after the bread is drawn', year } = options
  const spread = typeof start === 'string' ? findHeat(start, year === undefined ? {} : { year }).value : readSpread('start', start)
  for (const end of [spread.low, spread.best, spread.high]) requireOvenHeat('start', end)
  const band = { low: tidy(spread.low), best: tidy(spread.best), high: tidy(spread.high), coverage }
  return { band, shape: shapeOf(band) }
}

function readConstant(value: number | Spread | undefined): Spread {
  const spread = value === undefined ? constantOf('shut') : readSpread('timeConstant', value)
  requirePositive('timeConstant', spread.low, 'hours')
  return spread
}

/** The part left, as a shape: a monotone function of the time constants, so that its ends and peak are those of the constants. */
function leftShape(hours: number, batchHours: number, shut: Spread): Shape {
  const loaded = constantOf('loaded')
  const [low, best, high] = (['low', 'best', 'high'] as const).map((end) => leftAfter(hours, batchHours, loaded[end], shut[end]))
  return low === high ? { shape: 'exact', value: best! } : triangle(low!, best!, high!)
}

function momentAt(hours: number, start: Shape, room: number, left: Shape): OvenMoment {
  const remaining = unknown('oven.left', left)
  // T = room + (start - room) × left: Newton's law of cooling.
  const value = bandOf(sum(product(room), product(1, unknown('oven.start', start), remaining), product(-room, remaining)), coverage)
  return { hours: tidy(hours), value, heat: nameOf(heatNearest(value.best)), modern: ovenSettings(value) }
}

function checkHours(hours: number): number {
  if (requireNumber('hours', hours) < 0 || hours > longest) throw badOption('hours', `${hours} hours is not between 0 and ${longest}`)
  return hours
}

const mostPoints = 1000

function checkPoints(points: number): number {
  if (Number.isInteger(points) && points >= 2 && points <= mostPoints) return points
  throw badOption('points', `${show(points)} is not a number of moments; give a whole number from 2 to ${mostPoints}`)
}

/**
 * A brick oven as it cools, in degC and hours: T = room + (start - room) e^(-t/τ), with τ a band.
 *
 * The band of τ, 6 to 16 hours with 10 the likeliest, lies between the logs of three modern builders; no period oven was measured. While a full
 * batch is in, τ is about an hour. Ask for a small batch by leaving `batchMinutes` out: it hardly cools the brick.
 *
 * @throws PottleError `bad-option` for a temperature that no oven has, a time constant or a batch that is not above zero
 * @example brickOven({ start: 232.2, minutesAfter: 240 }).moment?.value.best   // 161.69…
 */
export function brickOven(options: BrickOvenOptions = {}): BrickOven {
  requireFields('options', options)
  const ambient = options.ambient === undefined ? bakehouse : requireOvenHeat('ambient', options.ambient)
  const { band: start, shape } = readStart(options)
  if (start.low <= ambient) throw badOption('start', `an oven of ${start.low} degC does not cool in a room of ${tidy(ambient)} degC`)
  const shut = readConstant(options.timeConstant)
  const batchMinutes = options.batchMinutes === undefined ? 0 : requirePositive('batchMinutes', options.batchMinutes, 'minutes')
  const batchHours = batchMinutes / 60
  const at = (hours: number): OvenMoment => momentAt(checkHours(hours), shape, ambient, leftShape(hours, batchHours, shut))
  const loaded = constantOf('loaded')
  const reaches = (celsius: number): Band | null => {
    if (requireOvenHeat('celsius', celsius) <= ambient) return null
    const ends = (['low', 'best', 'high'] as const).map((end) =>
      tidy(Math.max(0, hoursTo(Math.min(celsius, start[end]), start[end], ambient, batchHours, loaded[end], shut[end]))),
    )
    return { low: ends[0]!, best: ends[1]!, high: ends[2]!, coverage }
  }
  const curve = (hours: number, points = 25): readonly OvenMoment[] =>
    Array.from({ length: checkPoints(points) }, (_, i) => at((checkHours(hours) * i) / (points - 1)))
  const minutes = options.minutesAfter === undefined ? null : requireNumber('minutesAfter', options.minutesAfter)
  return {
    start,
    ambient: tidy(ambient),
    timeConstant: shut,
    batchMinutes,
    at,
    reaches,
    curve,
    moment: minutes === null ? null : at(minutes / 60),
    notes: [
      batchMinutes > 0
        ? 'A full batch is taken to be in the oven from the start.'
        : 'The oven is taken to be empty or nearly so, and its door shut.',
    ],
  }
}
