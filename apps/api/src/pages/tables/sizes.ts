import type { CatalogueMeasure, CatalogueSense, MeasureKind } from '@pottle/core'
import { between, inScale, type Scale, scaleFor } from '../parts/figures.js'

const names: Readonly<Partial<Record<MeasureKind, string>>> = {
  weight: 'Weights',
  capacity: 'Measures of capacity',
  count: 'Counts',
  length: 'Lengths',
  time: 'Times',
}

/** What a kind of measure is headed by. */
export const kindName = (kind: MeasureKind): string => names[kind] ?? kind

const quantities = { g: 'mass', ml: 'volume', each: 'count', mm: 'length', s: 'time', degC: 'temperature', '1': 'ratio' } as const

/** A meaning's size in a unit that suits it. */
export function sized({ unit, value }: CatalogueSense): string {
  const quantity = quantities[unit as keyof typeof quantities]
  return inScale(value, scaleFor(quantity, value))
}

/** The smallest and the largest meaning of one unit; each end in the unit that suits it. */
function rangeIn(unit: keyof typeof quantities, senses: readonly CatalogueSense[]): string {
  const values = senses.filter((sense) => sense.unit === unit).map(({ value }) => value)
  const [low, high] = [Math.min(...values), Math.max(...values)]
  const [from, to] = [low, high].map((end) => scaleFor(quantities[unit], end)) as [Scale, Scale]
  return from.name === to.name ? between({ low, high }, from) : `${inScale(low, from)} to ${inScale(high, to)}`
}

/** From the smallest to the largest meaning. Some measures were a weight of one thing and a volume of another. */
export function range({ senses }: CatalogueMeasure): string {
  const units = [...new Set(senses.map(({ unit }) => unit as keyof typeof quantities))]
  return units.map((unit) => rangeIn(unit, senses)).join('; ')
}
