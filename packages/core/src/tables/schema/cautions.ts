/** What can hurt someone. */

import type { Attested } from './attested.js'

/**
 * What a caution is about. Each field that is given must be met, `things` and `classes` counting as one; within a field any one of the
 * words meets it.
 */
export interface CautionTouch {
  /** Goods by their id, and nouns that no good has: `bitter-almonds`, `pewter dish`. */
  readonly things?: readonly string[]
  /** Classes of goods. */
  readonly classes?: readonly string[]
  /** Eggs or their parts. */
  readonly eggs?: boolean
  /** Ids of heats and of the oven's states: `slow`, `overnight`. */
  readonly heats?: readonly string[]
  /** What is done, in the words of receipts. */
  readonly methods?: readonly string[]
}

/** A danger in a period receipt, what to do about it, and who says so. */
export interface CautionRow extends Attested {
  readonly id: string
  readonly title: string
  /** `stop`: leave it out. `change`: do it the modern way. `note`: know it. */
  readonly voice: 'stop' | 'change' | 'note'
  readonly text: string
  readonly touches: CautionTouch
}
