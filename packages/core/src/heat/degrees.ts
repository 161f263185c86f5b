import type { Band } from '../bands/index.js'
import { badOption, show } from '../error.js'
import type { Spread } from '../tables/index.js'

/** Celsius, Fahrenheit, Reaumur (80 from ice to steam) and kelvin. */
export type DegreeScale = 'degC' | 'degF' | 'degR' | 'K'

/** Where each scale has the freezing of water, and how many of its degrees go to one of Celsius. By definition of the scales. */
const scales: Readonly<Record<DegreeScale, { readonly ice: number; readonly perCelsius: number }>> = {
  degC: { ice: 0, perCelsius: 1 },
  degF: { ice: 32, perCelsius: 9 / 5 },
  degR: { ice: 0, perCelsius: 4 / 5 },
  K: { ice: 273.15, perCelsius: 1 },
}

/** Nothing is colder (definition of the kelvin). */
const absoluteZero = -273.15
/** A brick floor just after the fire is drawn; no oven that bakes is hotter. Judgement. */
const hottestOven = 600

/**
 * A temperature of one scale in another.
 *
 * @throws PottleError `bad-option` when it is not a number or lies below absolute zero
 * @example convertDegrees(350, 'degF', 'degC')   // 176.66…
 */
export function convertDegrees(value: number, from: DegreeScale, to: DegreeScale): number {
  const celsius = (value - scales[from].ice) / scales[from].perCelsius
  requireNumber('temperature', value)
  // The last bits of a scale's own zero are not a breach of physics.
  if (celsius < absoluteZero - 1e-9) throw badOption('temperature', `${value} ${from} is below absolute zero, ${absoluteZero} degC`)
  return celsius * scales[to].perCelsius + scales[to].ice
}

export const toCelsius = (degF: number): number => convertDegrees(degF, 'degF', 'degC')
export const toFahrenheit = (degC: number): number => convertDegrees(degC, 'degC', 'degF')

/** Differences, as a step of a scale is one. */
export const celsiusSteps = (degFSteps: number): number => degFSteps / scales.degF.perCelsius

export function requireNumber(parameter: string, value: unknown): number {
  if (typeof value !== 'number' || !Number.isFinite(value)) throw badOption(parameter, 'give a number')
  return value
}

export function requirePositive(parameter: string, value: unknown, unit: string): number {
  if (requireNumber(parameter, value) <= 0)
    throw badOption(parameter, `${show(value)} ${unit} is not a size; give a number of ${unit} above zero`)
  return value as number
}

/**
 * Passes on a temperature that an oven can have.
 *
 * @throws PottleError `bad-option` below absolute zero and above 600 degC
 */
export function requireOvenHeat(parameter: string, celsius: unknown): number {
  const value = requireNumber(parameter, celsius)
  if (value < absoluteZero) throw badOption(parameter, `${value} degC is below absolute zero, ${absoluteZero} degC`)
  if (value > hottestOven) throw badOption(parameter, `${value} degC is hotter than any oven; give at most ${hottestOven} degC`)
  return value
}

/** Six significant digits, as bands have: enough for any kitchen and the same on every engine. */
export const tidy = (value: number): number => Number(value.toPrecision(6))

/** The share of the doubt inside the bands of this room: nine times in ten, by the method of the scale. */
export const coverage = 0.9

/** Ends and middle in degF as a band in degC. */
export function bandInCelsius({ low, best, high }: Spread): Band {
  return { low: tidy(toCelsius(low)), best: tidy(toCelsius(best)), high: tidy(toCelsius(high)), coverage }
}
