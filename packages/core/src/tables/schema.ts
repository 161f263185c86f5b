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

/** Words that name a heat, the years in which they did, and how likely that meaning is beside the others of the same words. */
export interface HeatName {
  readonly words: string
  readonly years?: readonly [number, number]
  /** 1 where nothing is said. */
  readonly likelihood?: number
  readonly note?: string
}

/** One step of the scale of oven heats. */
export interface HeatRow extends Attested {
  readonly id: string
  /** Orders all heats from drying to scorching. */
  readonly rank: number
  readonly label: string
  readonly names: readonly HeatName[]
  /** Ends in degF, used where too few books print degrees to find a middle of them. */
  readonly ends: readonly [number, number]
}

/** What one dated source says of a heat, or of the oven for one kind of goods, in degrees. */
export interface HeatClaimRow extends Attested {
  readonly id: string
  /** The heat it speaks of; absent where the source names only what is baked. */
  readonly heat?: string
  /** The source's case in our words. */
  readonly duty: string
  readonly low: number
  /** Absent where the source gives only a lower end. */
  readonly high?: number
  readonly unit: 'degC' | 'degF'
  readonly year: number
  /** Books that copy one another, or share authors, are one family and have one vote. */
  readonly family: string
  /** Was the text itself seen, or a quotation of it, or is it recalled? */
  readonly access: 'text' | 'quoted' | 'memory'
  /** `dial` figures are what a dial in the oven door showed, which is not the heat of the air. */
  readonly instrument: 'stated' | 'dial'
}

/** A heat phrase without degrees in a dated book, and the goods that place it. */
export interface HeatWitnessRow extends Attested {
  readonly id: string
  readonly phrase: string
  /** The heat or the relation (`HeatRelationRow`) that the phrase comes to. */
  readonly heat: string
  readonly goods: string
  readonly year: number
}

/** A heat told by what else is baked: as hot as for manchet, after the bread is drawn. */
export interface HeatRelationRow extends Attested {
  readonly id: string
  readonly label: string
  readonly kind: 'as-for' | 'after' | 'overnight'
  /** What is or was baked. */
  readonly goods: readonly string[]
  /** Wordings that the grammar of the kind does not reach. */
  readonly names: readonly string[]
  /** The step of the scale nearest to it. */
  readonly heat: string
  readonly degF: Spread
  /** The oven is cooling while the food is in it. */
  readonly falling: boolean
}

/** How far an undivided opinion of dated books is widened for the years before them. */
export interface HeatEraRow extends Attested {
  readonly id: string
  readonly years?: readonly [number, number]
  /** To either side, in degF. */
  readonly widen: number
}

/** A cook's test of an oven without a thermometer. */
export interface OvenTestRow extends Attested {
  readonly id: string
  readonly kind: 'paper' | 'flour' | 'hand' | 'sight'
  readonly observation: string
  readonly meaning: string
  /** 0 unchanged, 1 light yellow, 2 dark yellow, 3 light brown, 4 golden brown, 5 dark brown, 6 black. */
  readonly colour?: number
  /** When the colour shows, or how long the hand is borne. */
  readonly seconds?: number
  /** The heat that the test stands for. */
  readonly heat: string
  /** Degrees where the source itself prints them. */
  readonly degF?: readonly [number, number]
  readonly year: number
}

/** A mark of the British gas-oven regulator. */
export interface GasMarkRow extends Attested {
  readonly id: string
  readonly mark: string
  readonly value: number
  readonly degF: number
  /** What British books print beside the mark, in degC. */
  readonly printed: readonly [number, number]
  readonly words: string
}

/** A published rule for setting a fan oven. */
export interface FanRuleRow extends Attested {
  readonly id: string
  readonly label: string
  /** Taken off the setting of an oven without a fan, in degC. */
  readonly less?: number
  /** Pairs of settings, without and with a fan, in degC. */
  readonly pairs?: readonly (readonly [number, number])[]
  /** Minutes taken off each hour. */
  readonly minutesAnHour: number
}

/** Words of a dated book for a sugar height or the warmth of a liquid. */
export interface PeriodName {
  readonly words: string
  readonly years?: readonly [number, number]
  readonly source?: string
}

/** A height to which sugar is boiled. */
export interface SugarHeightRow extends Attested {
  readonly id: string
  readonly rank: number
  readonly label: string
  readonly names: readonly PeriodName[]
  readonly degF: Spread
  /** The degree that a book prints for this height, and no other: books before it print none. */
  readonly printed?: { readonly degF: number; readonly source: Citation; readonly year: number }
  readonly test: string
}

/** The warmth of a liquid by its kitchen name. */
export interface LiquidHeatRow extends Attested {
  readonly id: string
  readonly rank: number
  readonly label: string
  readonly names: readonly PeriodName[]
  readonly degF: Spread
  /** What dated books print. */
  readonly printed: readonly { readonly low: number; readonly high: number; readonly year: number; readonly source: Citation; readonly note?: string }[]
}

/** A published record of a cooling oven, and the time constant that fits it. */
export interface BrickOvenRow extends Attested {
  readonly id: string
  readonly label: string
  readonly state: 'loaded' | 'soaking' | 'open' | 'shut'
  readonly unit: 'degC' | 'degF'
  readonly ambient: number
  readonly readings: readonly { readonly hours: number; readonly value: number }[]
  /** Hours; fitted to the first and last reading by Newton's law of cooling. */
  readonly fitted: number
}

/** A time constant to use, in hours. */
export interface TimeConstantRow extends Attested {
  readonly id: string
  readonly label: string
  readonly hours: Spread
}

/** What an early 20th-century table says of one kind of goods. */
export interface BakeGoodRow extends Attested {
  readonly id: string
  readonly label: string
  readonly names: readonly string[]
  readonly degF: readonly [number, number]
  readonly minutes: readonly [number, number]
}

/** How a kind of food takes the heat. */
export interface BakeFoodRow extends Attested {
  readonly id: string
  readonly label: string
  readonly names: readonly string[]
  /** The power of the thickness that the baking time goes by. */
  readonly exponent: Spread
  /** W/(m K), and m2/s. */
  readonly conductivity: number
  readonly diffusivity: number
  /** degC at the centre when it goes in and when it is done. */
  readonly start: number
  readonly done: number
  /** Core temperatures (`CoreTemperatureRow`) that it must reach. */
  readonly core: readonly string[]
  readonly signs: readonly string[]
}

/** A sign by which the trade knows that a thing is done. */
export interface DonenessRow extends Attested {
  readonly id: string
  readonly sign: string
}

/** A temperature at the centre, or of the oven, that a food-safety authority states; or one that an old book printed. */
export interface CoreTemperatureRow extends Attested {
  readonly id: string
  readonly label: string
  readonly of: 'centre' | 'oven' | 'air'
  readonly degF: readonly [number, number]
  readonly restMinutes?: number
  /** False for a figure of an old book that is no longer held safe. */
  readonly safe: boolean
  readonly year: number
}

/** A rule of so many minutes a pound. */
export interface RoastRuleRow extends Attested {
  readonly id: string
  readonly way: 'roast' | 'boil' | 'bake' | 'braise'
  readonly goods: string
  readonly minutes: readonly [number, number]
  readonly over: number
  readonly year: number
}
