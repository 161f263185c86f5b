/**
 * The shapes of the rows in `data/`. The tables themselves are JSON; `data/tools/bundle.mjs` turns each into a module under `rows/`
 * that the compiler checks against these types.
 */

/** How well a datum is attested, from the best to the weakest. */
export type Grade = 'statute' | 'standard' | 'measured' | 'handbook' | 'scholarship' | 'practice' | 'judgement'

/** `read`: seen in that source or a transcription of it. `memory`: recalled, not looked up. `none`: practice and judgement have nothing to look up. */
export type Checked = 'read' | 'memory' | 'none'

/** A source and the place in it: a page, a section, a chapter. */
export interface Citation {
  readonly id: string
  readonly at?: string
}

/** Every row says who says so, how well, and whether anyone looked. */
export interface Attested {
  readonly source: readonly Citation[]
  readonly grade: Grade
  readonly checked: Checked
  readonly note?: string
}

/** Where and when a row holds; both ends included. A row without them holds always and everywhere. */
export interface Dated {
  readonly years?: readonly [number, number]
  readonly place?: string
}

/** Low, best, high. In a density or a weight these are the ends beyond which a careful cook would be surprised. */
export interface Spread {
  readonly low: number
  readonly best: number
  readonly high: number
}

export interface PlaceRow {
  readonly id: string
  readonly label: string
  /** The next wider place; a row for it holds here too, unless a nearer one speaks. */
  readonly within?: string
}

export type Quantity = 'mass' | 'volume' | 'count' | 'length' | 'time' | 'temperature' | 'ratio'

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
  /** How many of the standard: an integer, a decimal or a fraction, as text. */
  readonly ratio: string
  /** Goods or classes of goods that the sense is confined to. */
  readonly things?: readonly string[]
  /** Weight beside the other senses in the same setting; 1 where nothing is said. */
  readonly likelihood?: number
}

export type MeasureKind =
  | 'weight'
  | 'capacity'
  | 'count'
  | 'egg'
  | 'loaf'
  | 'vessel'
  | 'comparison'
  | 'coin'
  | 'piece'
  | 'pennyworth'
  | 'time'
  | 'length'
  | 'consistency'
  | 'temperature'

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
}

/** How far a trader's or a kitchen's measure strays from its standard: a factor around 1. */
export interface ToleranceRow extends Attested, Dated {
  readonly id: string
  readonly kind: MeasureKind
  readonly factor: Spread
}

/** A source as CSL-JSON, the open form that reference managers read and write. */
export interface SourceRow {
  readonly id: string
  readonly type: string
  readonly title: string
  readonly author?: readonly { readonly family?: string; readonly given?: string; readonly literal?: string }[]
  readonly editor?: readonly { readonly family?: string; readonly given?: string; readonly literal?: string }[]
  readonly issued?: { readonly 'date-parts': readonly (readonly number[])[] }
  readonly publisher?: string
  readonly 'publisher-place'?: string
  readonly 'container-title'?: string
  readonly volume?: string
  readonly number?: string
  readonly page?: string
  readonly edition?: string
  readonly URL?: string
  readonly DOI?: string
  readonly language?: string
  readonly note?: string
  readonly custom: {
    /** One line as a footnote gives it after the first mention. */
    readonly short: string
    /** Where its text was seen, or that it was not. */
    readonly seen: string
  }
}

/** A unit that a modern kitchen measures in. */
export interface ModernUnitRow extends Attested {
  readonly id: string
  readonly label: string
  readonly plural: string
  readonly quantity: Quantity
  /** How much one is, as an exact value: `"236.5882365 ml"`. Temperatures have none: their scales are not multiples. */
  readonly value?: string
  /** The unit's code in the Unified Code for Units of Measure, where it has one. */
  readonly ucum?: string
  /** What a cook can measure off with it: the smallest fraction of one that kitchens use, as text (`"1/4"`). */
  readonly step: string
}

/** A word that shifts an amount: *about*, *good*, *scant*, *large*. */
export interface QualifierRow extends Attested {
  readonly id: string
  readonly label: string
  /** Kinds of measure that the factor is meant for; none means any. */
  readonly kinds: readonly MeasureKind[]
  readonly factor: Spread
}
