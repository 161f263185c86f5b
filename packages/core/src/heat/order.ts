import { badOption, noAnswer, requireFields } from '../error.js'
import { type BrickOven, type BrickOvenOptions, brickOven } from './brick.js'
import { requireOvenHeat, requirePositive, tidy } from './degrees.js'
import { findHeat } from './find-heat.js'
import { type HeatName, heatNearest, nameOf } from './scale.js'

/** A receipt to be baked in the falling oven. */
export interface Bake {
  readonly name: string
  /** A heat phrase, or degC. */
  readonly heat: string | number
  /** How long it bakes; without it only the time to put it in is answered. */
  readonly minutes?: number
}

/** When one receipt goes in and comes out, in hours from the start. */
export interface BakeWindow {
  readonly name: string
  readonly heat: HeatName
  /** The oven that it wants, in degC. */
  readonly wants: { readonly low: number; readonly best: number; readonly high: number }
  /** When the oven is no longer too hot, and when it becomes too cool. */
  readonly opens: number
  readonly closes: number
  readonly goesIn: number
  readonly comesOut: number
  /** The oven when it goes in, in degC. */
  readonly oven: number
}

export interface Firing extends BrickOvenOptions {
  /** True where the oven holds one thing at a time: each then waits for the one before it. */
  readonly oneAtATime?: boolean
  /** Hours after which nobody waits any longer; 24 where nothing is said. */
  readonly hours?: number
}

/** Degrees given as a number are hit within this, in degC: the disagreement of printed dials. Judgement. */
const numberSlack = 14
const mostBakes = 50

interface Wanted {
  readonly heat: HeatName
  readonly low: number
  readonly best: number
  readonly high: number
}

function wantsOf(bake: Bake, year: number | undefined): Wanted {
  const { heat, name } = requireFields('bakes', bake)
  if (typeof name !== 'string' || name.trim() === '') throw badOption('name', 'every receipt needs a name')
  if (typeof heat === 'number') {
    const best = requireOvenHeat('heat', heat)
    return { heat: nameOf(heatNearest(best)), low: best - numberSlack, best, high: best + numberSlack }
  }
  const { heat: named, value } = findHeat(heat, year === undefined ? {} : { year })
  // Degrees in words are hit no better than degrees in figures.
  const slack = value.low === value.high ? numberSlack : 0
  return { heat: named, low: value.low - slack, best: value.best, high: value.high + slack }
}

/** On the likeliest curve: between the time when the oven has fallen to the upper end and the time when it passes the lower. */
function windowOf(oven: BrickOven, bake: Bake, year: number | undefined): BakeWindow & { readonly minutes: number } {
  const { heat, low, best, high } = wantsOf(bake, year)
  if (oven.start.best < low) {
    const detail = `${bake.name} wants at least ${Math.round(low)} degC and the oven begins at ${Math.round(oven.start.best)}; fire it hotter or leave it out`
    throw noAnswer('bakes', detail)
  }
  const opens = oven.reaches(high)?.best
  const closes = oven.reaches(low)?.best
  if (opens === undefined || closes === undefined) throw noAnswer('bakes', `${bake.name} wants an oven no warmer than the room`)
  const minutes = bake.minutes === undefined ? 0 : requirePositive('minutes', bake.minutes, 'minutes')
  return { name: bake.name, heat, wants: { low, best, high }, opens, closes, goesIn: opens, comesOut: opens, oven: 0, minutes }
}

/** The receipts one after another as the oven falls to each: not before its window opens, nor before the one that it waits for. */
function lay(
  windows: readonly ReturnType<typeof windowOf>[],
  oven: BrickOven,
  { oneAtATime = false, hours = 24 }: Firing,
): readonly BakeWindow[] {
  let free = 0
  return windows.map(({ minutes, ...window }) => {
    const goesIn = Math.max(window.opens, free)
    const comesOut = goesIn + minutes / 60
    if (goesIn > window.closes) {
      const detail = `${window.name} cannot go in: by ${goesIn.toFixed(1)} h, when the oven is free, it has fallen below ${Math.round(window.wants.low)} degC`
      throw noAnswer('bakes', detail)
    }
    if (comesOut > hours)
      throw noAnswer('bakes', `${window.name} would come out ${comesOut.toFixed(1)} h after the start; the firing ends at ${hours} h`)
    if (oneAtATime) free = comesOut
    return { ...window, goesIn: tidy(goesIn), comesOut: tidy(comesOut), oven: oven.at(goesIn).value.best }
  })
}

/**
 * The order in which receipts bake in one firing of a brick oven: the hottest first, each when the oven has fallen to its heat.
 *
 * @param bakes at most 50, each with a heat phrase or degC
 * @param firing the oven as for `brickOven`; the hottest heat wanted is its start where none is given
 * @throws PottleError `no-answer` names the receipt that cannot be baked in this firing; `bad-option` for a receipt without name or heat
 * @example bakingOrder([{ name: 'tarts', heat: 'moderate oven' }, { name: 'bread', heat: 'as hot as for bread' }]).map(({ name }) => name)   // ['bread', 'tarts']
 */
export function bakingOrder(bakes: readonly Bake[], firing: Firing = {}): readonly BakeWindow[] {
  if (!Array.isArray(bakes) || bakes.length === 0 || bakes.length > mostBakes)
    throw badOption('bakes', `give from 1 to ${mostBakes} receipts`)
  const hottest = Math.max(...bakes.map((bake) => wantsOf(bake, firing.year).best))
  const oven = brickOven({ start: hottest, ...firing })
  const windows = bakes.map((bake) => windowOf(oven, bake, firing.year)).sort((a, b) => b.wants.best - a.wants.best || a.closes - b.closes)
  return lay(windows, oven, firing)
}
