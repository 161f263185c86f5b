/** What a working sheet needs besides: the units, dishes and helpings of a modern kitchen, and receipts to show it by. */

import type { Attested, Spread } from './attested.js'
import type { Quantity } from './kinds.js'

/** A unit that a modern kitchen measures in. */
export interface ModernUnitRow extends Attested {
  readonly id: string
  readonly label: string
  /** What stands behind a number up to 1, and behind a larger one. */
  readonly singular: string
  readonly plural: string
  readonly quantity: Quantity
  /** How much one is, as an exact value: `"236.5882365 ml"`. Temperatures have none: their scales are not multiples. */
  readonly value?: string
  /** The unit's code in the Unified Code for Units of Measure, where it has one. */
  readonly ucum?: string
  /** What a cook can measure off with it: the smallest fraction of one that kitchens use, as text (`"1/4"`). */
  readonly step: string
}

/** A dish or tin by what a kitchen calls it: millimetres inside the rim. */
export interface DishRow extends Attested {
  readonly id: string
  readonly label: string
  readonly plural: string
  readonly names: readonly string[]
  readonly shape: 'round' | 'square' | 'rectangle' | 'oval' | 'loaf'
  /** The pair that a fit is told in: so many small or so many large. */
  readonly size?: 'small' | 'large'
  /** The diameter, or the longer side. */
  readonly length: number
  readonly width?: number
  readonly depth: number
  /** How much less across it is at the bottom than at the rim; 0 where nothing is said. */
  readonly taper?: number
  /** How thick the paste is that it is lined with. */
  readonly lining?: number
  /** ml to the brim, where a book or chart says so. */
  readonly holds?: number
}

/** How dense a dry thing is once it lies in a batch without air between its grains, in g/ml. */
export interface DisplacementRow extends Attested {
  readonly id: string
  readonly label: string
  /** Goods or classes of goods, the narrowest row first. */
  readonly things: readonly string[]
  readonly density: Spread
}

/** What one person is helped to, in the base unit of the quantity. */
export interface PortionRow extends Attested, Spread {
  readonly id: string
  readonly label: string
  readonly quantity: Quantity
}

/** A receipt of our own in period style, for examples and tests. */
export interface DemoReceiptRow extends Attested {
  readonly id: string
  readonly title: string
  readonly year: number
  readonly place: string
  readonly text: string
}
