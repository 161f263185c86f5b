/** Measures that the law or custom fixed: standards, the parts and multiples of them, and what cooks made of them. */

import type { Attested, Dated, Spread } from './attested.js'
import type { MeasureKind, Quantity } from './kinds.js'

/** A definition that senses rest on: the wine gallon of 231 cubic inches. */
export interface StandardRow extends Attested, Dated {
  readonly id: string
  readonly label: string
  /** What the standard is a kind of: `gallon`, `pound`. Usage rows choose among one family. */
  readonly family: string
  readonly quantity: Quantity
  /** An exact legal factor and its unit: `"231 in3"`, `"7000 gr"`. */
  readonly value: string
  /** Where the standard itself was not one figure: its ends in the same unit as `value`. */
  readonly ends?: readonly [string, string]
}

/** One meaning of a measure, as a part or multiple of a standard. */
export interface SenseRow extends Attested, Dated {
  readonly id: string
  readonly label: string
  /** A standard's id, or a family's: then the sense stands for one sense a standard of that family. */
  readonly of: string
  /** Standards of that family that the measure never went by: nobody sold a bushel by the wine gallon. */
  readonly except?: readonly string[]
  /** How many of the standard: an integer, a decimal or a fraction, as text. */
  readonly ratio: string
  /** Goods or classes of goods that the sense is confined to. */
  readonly things?: readonly string[]
  /** Weight beside the other senses in the same setting; 1 where nothing is said. */
  readonly likelihood?: number
}

/** A measure by its period name. */
export interface MeasureRow {
  readonly id: string
  readonly label: string
  readonly kind: MeasureKind
  /** Spellings and abbreviations that no rule of spelling reaches, all in lower case. */
  readonly names: readonly string[]
  readonly senses: readonly SenseRow[]
}

/** Which standard of a family a thing went by, where and when. Weights add up to 1. */
export interface UsageRow extends Attested, Dated {
  readonly id: string
  readonly family: string
  /** Goods or classes of goods; none means any thing. */
  readonly things?: readonly string[]
  /** Measures the row is confined to; none means any measure of the family. */
  readonly measures?: readonly string[]
  readonly weights: Readonly<Record<string, number>>
  readonly reason: string
}

/** How far a trader's or a kitchen's measure strays from its standard: a factor around 1. */
export interface ToleranceRow extends Attested, Dated {
  readonly id: string
  readonly kind: MeasureKind
  readonly factor: Spread
}
