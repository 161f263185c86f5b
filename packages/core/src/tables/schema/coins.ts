/** Coins, as the kitchen used them. */

import type { Attested, Checked, Dated, Spread } from './attested.js'

/** One striking of a coin and the years in which it was the one in people's hands. `mass` is in g, as worn in use. */
export interface CoinIssueRow extends Attested, Dated {
  readonly id: string
  readonly label: string
  readonly metal: 'silver' | 'copper' | 'bronze' | 'gold'
  readonly struck: 'hammered' | 'milled'
  /** mm */
  readonly diameter: Spread
  /** How the diameter was come by, where it was otherwise than the weight. */
  readonly sized?: Checked
  readonly mass: Spread
  readonly likelihood?: number
}

/** A coin by its names, with every striking that people had in hand. */
export interface CoinRow {
  readonly id: string
  readonly label: string
  readonly names: readonly string[]
  /** What it passed for, in pence; absent where it had no fixed value in pence. */
  readonly pence?: number
  readonly issues: readonly CoinIssueRow[]
}

/** A figure that every coin's heap or thickness is reckoned with. */
export interface CoinConstantRow extends Attested, Spread {
  readonly id: string
  readonly label: string
}
