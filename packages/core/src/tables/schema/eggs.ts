/** Eggs. */

import type { Attested, Dated, Spread } from './attested.js'

/** How white and yolk share an egg: parts of its weight in the shell. */
export interface EggPartsRow extends Attested {
  readonly id: string
  readonly label: string
  /** Birds of the table of eggs that it holds for. */
  readonly birds: readonly string[]
  readonly white: Spread
  readonly yolk: Spread
  /** Of the whole fresh egg in its shell, in g/ml. */
  readonly density: Spread
}

/** A weight class that eggs are sold by: grams in the shell; `best` is the egg to plan with. */
export interface EggClassRow extends Attested, Spread {
  readonly id: string
  readonly label: string
  readonly plural: string
  readonly system: string
  /** Whether each egg lies in the range, or the average of a dozen. */
  readonly basis: 'each' | 'dozen'
  /** The last year of a class no longer sold by. */
  readonly until?: number
}

/** What cooks did with eggs that a receipt does not say. */
export interface EggCustomRow extends Attested, Dated {
  readonly id: string
  readonly label: string
  readonly use: 'weighed-in-shell' | 'weighed-broken' | 'yolks'
  readonly likelihood?: number
  /** From how many eggs on. */
  readonly from?: number
}

/** A word for the size of eggs, as a factor on the common egg. */
export interface EggSizeRow extends Attested {
  readonly id: string
  readonly label: string
  readonly names: readonly string[]
  readonly factor: Spread
}
