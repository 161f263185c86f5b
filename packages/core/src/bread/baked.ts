import type { Unknown } from '../bands/index.js'
import type { Step } from '../cite/index.js'

/** One loaf of one year, with the doubt about its price kept apart from the rest, so that loaves of several years can be taken together. */
export interface Baked {
  readonly coin: string
  readonly kind: string
  readonly label: string
  /** The regime, or the row of a fixed weight: what loaves must share to be taken together. */
  readonly group: string
  readonly groupLabel: string
  /** Grams x shillings: the weight is this over `shillings`. */
  readonly constant: number
  /** Wheat and allowance a quarter; 1 for a loaf of fixed weight. */
  readonly shillings: number
  /** Standard deviation, in logarithms, of everything but `doubts`. */
  readonly deviation: number
  /** Names that deviation: loaves of one bench in one year rise and fall together, whatever their coin and kind. */
  readonly id: string
  /** The rule, the ounce, the share of crumb. */
  readonly doubts: readonly Unknown[]
  readonly steps: readonly Step[]
  /** Grams, where the law was exact. */
  readonly exact?: string
}
