import { power, spread, times, unknown } from '../bands/index.js'
import { citeShort, type Step } from '../cite/index.js'
import type { Setting } from '../setting.js'
import { type GoodRow, holds, type PrintedDensity, type Quantity } from '../tables/index.js'
import type { Sense } from './sense.js'

function stepFor(good: GoodRow, quantity: Quantity): Step {
  const { low, best, high } = good.density!
  const way = quantity === 'mass' ? 'volume to weight' : 'weight to volume'
  return {
    text: `${good.label}, ${way}`,
    factor: `${best} g/ml (${low} to ${high})`,
    grade: good.grade,
    checked: good.checked,
    sources: good.source,
  }
}

/** So many books must print a density before it stands for the kitchens of their time. Judgement: one book may err alone. */
const witnesses = 2

/** What books of the setting's time and place print of a thing's density. */
function printedIn(good: GoodRow, { from, to, places }: Setting): readonly PrintedDensity[] {
  const middle = Math.round((from + to) / 2)
  return good.printed?.filter((row) => holds(row, middle, places)) ?? []
}

/**
 * A thing as the kitchens of a setting measured it: with the density that books of the time print, where two of them agree on one that can be
 * right (a quart of brown sugar was eighteen ounces to the American cook of 1857), else with the density it has today. What one book prints
 * alone (Acton's half gallon of flour of three pounds and a half) makes the band wider and moves nothing else.
 */
export function goodIn(good: GoodRow, setting: Setting): GoodRow {
  const said = printedIn(good, setting).filter(({ fault }) => !fault)
  if (said.length === 0 || !good.density) return good
  const agreed = said.find(({ source }) => source.length >= witnesses)
  const all = [good.density.low, good.density.high, ...said.map(({ density }) => density)]
  const density = { low: Math.min(...all), best: agreed?.density ?? good.density.best, high: Math.max(...all) }
  if (!agreed) return { ...good, density }
  const { source, grade, checked } = agreed
  return { ...good, label: `${good.label}, as books of the time print it`, density, source, grade, checked }
}

/** What books of the time print and can't be right, in words for a reader who has one of them open. */
export function misprintsOf(good: GoodRow, setting: Setting): readonly string[] {
  return printedIn(good, setting).flatMap(({ density, fault, source }) =>
    fault
      ? [`Books of the time print ${density} g/ml for ${good.label} (${source.map(citeShort).join('; ')}), which can't be right: ${fault}.`]
      : [],
  )
}

/** Whether a sense can be had in a quantity: as it is, or from volume to mass and back by the thing's density. */
export function reaches(sense: Sense, quantity: Quantity, good: GoodRow | undefined): boolean {
  if (sense.quantity === quantity) return true
  const pair = [sense.quantity, quantity].sort().join()
  return pair === 'mass,volume' && good?.density !== undefined
}

/** The same sense in another quantity, by the thing's density. Call only where `reaches` says that it can be had. */
export function inQuantity(sense: Sense, quantity: Quantity, good: GoodRow | undefined): Sense {
  if (sense.quantity === quantity) return sense
  const density = unknown(`density:${good!.id}`, spread(good!.density!))
  const value = times(sense.value, quantity === 'mass' ? density : power(density, -1))
  const { exact: _, ...rest } = sense
  return { ...rest, quantity, value, steps: [...sense.steps, stepFor(good!, quantity)] }
}
