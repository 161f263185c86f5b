/** What is measured. */

import type { Attested, Dated, Spread } from './attested.js'

/** A density in g/ml that a period book prints by saying what a measure of the thing weighs. */
export interface PrintedDensity extends Attested, Dated {
  readonly density: number
  /** Why the printed figure can't be right, where it can't. */
  readonly fault?: string
}

/** A thing that is measured. */
export interface GoodRow extends Attested {
  readonly id: string
  readonly label: string
  /** Period and modern spellings that no rule of spelling reaches, in lower case. */
  readonly names: readonly string[]
  /** What kind of thing it is, from the widest: `["dry", "meal"]`, `["liquid", "dairy"]`. */
  readonly classes: readonly string[]
  /** Bulk density in g/ml as a kitchen would fill the measure. */
  readonly density?: Spread
  /** Angle of repose of the powder in degrees. */
  readonly repose?: Spread & Attested
  /** What cooks' own books make a measure of it weigh, where they print it. */
  readonly printed?: readonly PrintedDensity[]
}
