import { badOption } from '../error.js'
import { type BrickOvenRow, brickOvens, type Spread, timeConstants } from '../tables/index.js'
import { requireNumber, requirePositive } from './degrees.js'

/** The time constant to use for an oven that is shut, or loaded with a batch, in hours. */
export function constantOf(id: 'shut' | 'loaded'): Spread {
  return timeConstants.find((row) => row.id === id)!.hours
}

/**
 * The published records that the time constants rest on, each with its readings and the hours that were fitted to them.
 *
 * @example brickOvenRecords().find(({ id }) => id === 'brick-log-2008')?.fitted   // 9.05
 */
export function brickOvenRecords(): readonly BrickOvenRow[] {
  return brickOvens
}

/**
 * The time constant of an oven that cools from one temperature to another, by Newton's law: t / ln((start - room) / (end - room)).
 *
 * @param start in degrees of any scale, as long as all three temperatures are of the same
 * @param hours between the two
 * @param ambient of the room
 * @returns hours
 * @throws PottleError `bad-option` unless start > end > room
 * @example timeConstantFrom(300, 200, 4, 20)   // 9.05…
 */
export function timeConstantFrom(start: number, end: number, hours: number, ambient: number): number {
  requirePositive('hours', hours, 'hours')
  for (const [name, value] of [
    ['start', start],
    ['end', end],
    ['ambient', ambient],
  ] as const)
    requireNumber(name, value)
  if (!(start > end && end > ambient)) throw badOption('end', `an oven in a room of ${ambient} does not cool from ${start} to ${end}`)
  return hours / Math.log((start - ambient) / (end - ambient))
}

/** What is left of the difference from the room, for one time constant through a batch and one after it. */
export function leftAfter(hours: number, batchHours: number, loaded: number, shut: number): number {
  const inside = Math.min(hours, batchHours)
  return Math.exp(-inside / loaded - (hours - inside) / shut)
}

/** Hours to fall from a start to a temperature, through a batch and after it. */
export function hoursTo(celsius: number, start: number, room: number, batchHours: number, loaded: number, shut: number): number {
  const needed = Math.log((start - room) / (celsius - room))
  const inBatch = batchHours / loaded
  return needed <= inBatch ? needed * loaded : batchHours + (needed - inBatch) * shut
}
