import type { Band, Expression } from '../bands/index.js'
import type { Step } from '../cite/index.js'
import type { ModernValue } from '../modern/index.js'
import type { Reading } from '../reading/index.js'
import type { Setting } from '../setting.js'
import type { Dated, MeasureRow, Quantity, VesselRow } from '../tables/index.js'

/** One meaning of a phrase in its setting. */
export interface Sense {
  readonly id: string
  readonly label: string
  /** All senses of one phrase add up to 1. */
  readonly likelihood: number
  readonly quantity: Quantity
  /** In the base unit of the quantity (g, ml, each, mm, s, degC, 1), for **one** of the measure. */
  readonly value: Expression
  /** The same without any doubt, where the law was exact: digits as text, for one of the measure. */
  readonly exact?: string
  readonly steps: readonly Step[]
  /** True where `value` already counts the amount, as eggs and their parts do. */
  readonly whole?: boolean
  /** Names the choice that the sense depends on: senses of the same choice are taken together throughout a receipt. */
  readonly choice?: string
  /** The standard that the sense rests on, which is the option taken in that choice. */
  readonly standard?: string
  /** How many things each one that the words count stands for: 1.2 of a hundred that is six score. */
  readonly each?: number
  /** What kind of vessel it is: *large* says less of a spoon than of a hand. */
  readonly shape?: VesselRow['shape']
  /** The number word is a weight of this thing, which nobody then counts: a hundred of raisins. */
  readonly weighed?: true
  /** Words of the phrase that the kind could make nothing of. */
  readonly unread?: readonly string[]
  /** What a reader should know besides. */
  readonly remarks?: readonly string[]
  /** The words that shift an amount are in the value already. */
  readonly qualified?: boolean
}

/** What a kind of measure is asked: the words, the time and place, and what the caller insists on. */
export interface Question {
  readonly reading: Reading
  /** The table row of the measure; absent for a plain count or a comparison that has none. */
  readonly measure?: MeasureRow
  readonly setting: Setting
  /** A standard or sense that the caller insists on. */
  readonly standard?: string
}

/**
 * One kind of measure: weight, capacity, egg, loaf. A new kind is a new file that exports one of these, added to the list in `kinds.ts`.
 *
 * `answers` says whether the kind knows what to do with a question; `senses` gives every meaning that the setting allows, the likeliest first.
 */
export interface SenseKind {
  readonly name: string
  answers(question: Question): boolean
  senses(question: Question): readonly Sense[]
  /**
   * Every row that the senses may rest on in any year, where those rows are all that a year can change: between two ends of their years one
   * year is as another.
   */
  dated?(question: Question): readonly Dated[]
  /** Modern units of the kind's own beside those of its quantity: egg classes, gas marks. The band is for the whole amount, in the base unit. */
  modern?(question: Question, band: Band): readonly ModernValue[]
}
