import type { Quantity } from './schema/index.js'

/** The base unit that values of a quantity are stated in. */
export const baseUnits: Readonly<Record<Quantity, string>> = {
  mass: 'g',
  volume: 'ml',
  count: 'each',
  length: 'mm',
  time: 's',
  temperature: 'degC',
  ratio: '1',
}
