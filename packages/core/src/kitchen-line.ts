import type { Band } from './bands/index.js'
import type { Other } from './resolved.js'
import type { Quantity } from './tables/index.js'

/** The units that the line names, by quantity and size: metric first. */
function unitsFor(quantity: Quantity, best: number): readonly string[] {
  if (quantity === 'mass') return best >= 1000 ? ['kg', 'lb'] : ['g', 'oz']
  if (quantity === 'volume') return best >= 1000 ? ['l', 'cup-us'] : ['ml', best >= 100 ? 'cup-us' : best >= 15 ? 'tbsp-us' : 'tsp-us']
  if (quantity === 'length') return best >= 10 ? ['cm', 'in'] : ['mm']
  if (quantity === 'time') return [best >= 3600 ? 'h' : best >= 60 ? 'min' : 's']
  if (quantity === 'temperature') return ['degC', 'degF', 'gas-mark']
  return [quantity === 'count' ? 'each' : 'ratio']
}

/** The eggs of two large markets, where the answer is in eggs. */
const shopEggs = ['egg-us-large', 'egg-eu-m']

/** What the line says in a unit; undefined where the answer has none of it. */
export type TextIn = (unit: string) => string | undefined

/**
 * The answer in a line of kitchen language: *about 1.9 litres, 8 US cups*. The other quantity follows where a density gives it, *about
 * 950 ml, 4 US cups; 960 g*, and the eggs to crack where there are eggs.
 */
export function kitchenLine(quantity: Quantity, band: Band, other: Other | null, textIn: TextIn): string {
  const own = unitsFor(quantity, band.best).map(textIn).filter(Boolean).join(', ')
  const eggs = shopEggs.map(textIn).filter((text) => text !== undefined)
  const beside = eggs.length > 0 ? eggs.join(' or ') : other && textIn(unitsFor(other.quantity, other.band.best)[0]!)
  return `${aboutIn(band)}${own}${beside ? `; ${beside}` : ''}`
}

/** A figure that is sure is not *about* what it is. */
export const aboutIn = ({ low, high }: Band): string => (high > low ? 'about ' : '')
