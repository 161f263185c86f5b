import type { BakeFoodRow } from '../tables/index.js'
import { toCelsius } from './degrees.js'
import { coreTemperature } from './safety.js'

/** Temperatures closer than this are the same. */
export const sameHeat = 1e-9

/** What an authority says against an oven as cool as this. */
export function warningsFor(food: BakeFoodRow, celsius: number): readonly string[] {
  const floors = food.core.map(coreTemperature).filter(({ of }) => of === 'oven')
  return floors
    .filter(({ degF }) => celsius < toCelsius(degF[0]) - sameHeat)
    .map(
      ({ degF, source, year }) =>
        `An oven below ${degF[0]} °F (${Math.round(toCelsius(degF[0]))} °C) is not safe for roasting meat or poultry (${source}, ${year}).`,
    )
}

/** What the plan takes for granted. */
export function assumptionsOf(
  food: BakeFoodRow,
  { lowered, moved, fan }: { readonly lowered: boolean; readonly moved: boolean; readonly fan: boolean },
): readonly string[] {
  return [
    `Time goes as the thickness to the power ${food.exponent.low} to ${food.exponent.high}, ${food.exponent.best} the likeliest; the square would need a surface at oven heat at once.`,
    'Heat goes in by conduction from all sides; crust, steam, rising and the colour of the tin are left out.',
    ...(lowered ? ['More than twice as deep: the oven is set one step lower, and the time is for that oven.'] : []),
    ...(moved ? [`The middle is taken to be done at ${food.done} °C.`] : []),
    ...(fan ? ['A fan oven is looked at sooner by its rule.'] : []),
  ]
}
