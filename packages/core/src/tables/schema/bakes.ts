/** What goes on in the oven, and when a thing is done. */

import type { Attested, Spread } from './attested.js'

/** A published record of a cooling oven, and the time constant that fits it. */
export interface BrickOvenRow extends Attested {
  readonly id: string
  readonly label: string
  readonly state: 'loaded' | 'soaking' | 'open' | 'shut'
  readonly unit: 'degC' | 'degF'
  readonly ambient: number
  readonly readings: readonly { readonly hours: number; readonly value: number }[]
  /** Hours; fitted to the first and last reading by Newton's law of cooling. */
  readonly fitted: number
}

/** A time constant to use, in hours. */
export interface TimeConstantRow extends Attested {
  readonly id: string
  readonly label: string
  readonly hours: Spread
}

/** What an early 20th-century table says of one kind of goods. */
export interface BakeGoodRow extends Attested {
  readonly id: string
  readonly label: string
  readonly names: readonly string[]
  readonly degF: readonly [number, number]
  readonly minutes: readonly [number, number]
}

/** How a kind of food takes the heat. */
export interface BakeFoodRow extends Attested {
  readonly id: string
  readonly label: string
  readonly names: readonly string[]
  /** The power of the thickness that the baking time goes by. */
  readonly exponent: Spread
  /** W/(m K), and m2/s. */
  readonly conductivity: number
  readonly diffusivity: number
  /** degC at the centre when it goes in and when it is done. */
  readonly start: number
  readonly done: number
  /** Core temperatures (`CoreTemperatureRow`) that it must reach. */
  readonly core: readonly string[]
  readonly signs: readonly string[]
}

/** A sign by which the trade knows that a thing is done. */
export interface DonenessRow extends Attested {
  readonly id: string
  readonly sign: string
}

/** A temperature at the centre, or of the oven, that a food-safety authority states; or one that an old book printed. */
export interface CoreTemperatureRow extends Attested {
  readonly id: string
  readonly label: string
  readonly of: 'centre' | 'oven' | 'air'
  readonly degF: readonly [number, number]
  readonly restMinutes?: number
  /** False for a figure of an old book that is no longer held safe. */
  readonly safe: boolean
  readonly year: number
}

/** A rule of so many minutes a pound. */
export interface RoastRuleRow extends Attested {
  readonly id: string
  readonly way: 'roast' | 'boil' | 'bake' | 'braise'
  readonly goods: string
  readonly minutes: readonly [number, number]
  readonly over: number
  readonly year: number
}
