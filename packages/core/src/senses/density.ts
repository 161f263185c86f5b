import { power, spread, times, unknown } from '../bands/index.js'
import type { Step } from '../cite/index.js'
import type { GoodRow, Quantity } from '../tables/index.js'
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
