/** Measures that nobody fixed, and that have been weighed and measured since: spoons, hands, pieces, lengths, times. */

import type { Attested, Dated, Spread } from './attested.js'
import type { MeasureKind, Quantity } from './kinds.js'

/** What one of a measure came to over a span of years, in one place and for some things: low, best and high in the unit of its table. */
export interface SpellRow extends Attested, Dated, Spread {
  readonly id: string
  readonly label: string
  /** The quantity, where it is not the table's own. */
  readonly quantity?: Quantity
  /** Goods or classes of goods that the row is confined to; none means any. */
  readonly things?: readonly string[]
  /** Weight beside the other rows that fit as well; 1 where nothing is said. */
  readonly likelihood?: number
}

/** A measure by its names, with what it came to at one time and another. */
export interface SizedRow {
  readonly id: string
  readonly label: string
  readonly names: readonly string[]
  readonly spells: readonly SpellRow[]
}

/** A spoon, cup or hand: its spells are in ml, or in g where they say mass. */
export interface VesselRow extends SizedRow {
  /** Why it has no spells: a vessel that nobody sized. */
  readonly unsized?: Attested
  /** Its figures are for what it was filled with, heap and all, where nothing is said of how it stood. */
  readonly filled?: boolean
  /** How it stands when it is heaped. */
  readonly shape: 'spoon' | 'cup' | 'hand' | 'drop'
}

/** How high a dry measure stood: a factor on its level content. */
export interface HeapRow extends Attested, Dated {
  readonly id: string
  readonly label: string
  /** Words that ask for it; none where the row is for a measure with nothing said. */
  readonly names: readonly string[]
  readonly shape: VesselRow['shape']
  /** Goods or classes of goods that stand so high; none means any. */
  readonly things?: readonly string[]
  readonly factor: Spread
}

/** A piece that receipts count: its spells are in g, or in ml where they say volume. */
export interface PieceRow extends SizedRow {
  /** The word it is counted by: `blade`, `race`; absent for a whole thing. */
  readonly measure?: string
}

/** What a penny bought, in g, ml or each. */
export interface PennyworthRow extends SpellRow {
  readonly things: readonly string[]
}

/** A word that shifts an amount: *about*, *good*, *scant*, *large*. */
export interface QualifierRow extends Attested {
  readonly id: string
  readonly label: string
  /** The word as a reading has it; the id where nothing is said. */
  readonly word?: string
  /** Kinds of measure that the factor is meant for; none means any. */
  readonly kinds: readonly MeasureKind[]
  /** Vessels that the factor is meant for, before a row that names none. */
  readonly shapes?: readonly VesselRow['shape'][]
  readonly factor: Spread
}

/** One way to read *the bigness of*: an ellipsoid in mm, an egg of a bird, or a weight in grams. */
export interface ComparisonForm extends Attested, Dated {
  readonly id: string
  readonly label: string
  readonly things?: readonly string[]
  readonly likelihood?: number
  readonly length?: Spread
  readonly width?: Spread
  readonly bird?: string
  readonly mass?: Spread
}

/** A thing that others are compared with: a walnut, a nutmeg. */
export interface ComparisonRow {
  readonly id: string
  readonly label: string
  readonly names: readonly string[]
  readonly forms: readonly ComparisonForm[]
}
