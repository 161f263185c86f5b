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
  /** Standards of that family that the measure never went by: nobody sold a bushel by the wine gallon. */
  readonly except?: readonly string[]
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
  /** What cooks' own books make a measure of it weigh, where they print it. */
  readonly printed?: readonly PrintedDensity[]
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
  /** What stands behind a number up to 1, and behind a larger one. */
  readonly singular: string
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
  /** The word as a reading has it; the id where nothing is said. */
  readonly word?: string
  /** Kinds of measure that the factor is meant for; none means any. */
  readonly kinds: readonly MeasureKind[]
  /** Vessels that the factor is meant for, before a row that names none. */
  readonly shapes?: readonly VesselRow['shape'][]
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
  readonly printed: readonly {
    readonly low: number
    readonly high: number
    readonly year: number
    readonly source: Citation
    readonly note?: string
  }[]
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

export type MeasureWordClass =
  | 'weight'
  | 'capacity'
  | 'spoon'
  | 'cup'
  | 'hand'
  | 'piece'
  | 'vague'
  | 'money'
  | 'time'
  | 'length'
  | 'object'
  | 'coin'

/**
 * The words of a measure, for reading only: what it amounts to stands in the tables of senses.
 * The rows of vocabulary (measures, numbers, particles, spellings, things) claim nothing about a quantity, so they carry no source.
 */
export interface MeasureWordRow {
  readonly id: string
  /** The modern name in the singular, as a reading gives it. */
  readonly label: string
  readonly class: MeasureWordClass
  /** Spellings and abbreviations that no rule of spelling reaches, in lower case. */
  readonly names: readonly string[]
  /** What must follow before the word is a measure at all: a glass *of* something, a ladle *full*, a finger *thick*; `phrase`: too loose for running prose. */
  readonly needs?: 'of' | 'full' | 'dimension' | 'phrase'
  readonly minutes?: number
  /** Pence that a coin, or a worth of goods, stands for. */
  readonly worth?: number
  /** The next larger measure, and how many of this one it holds: what *a pound and two ounces* adds up by. */
  readonly within?: string
  readonly parts?: number
}

/** A word for a number or a part. */
export interface NumberWordRow {
  readonly id: string
  readonly role: 'cardinal' | 'collective' | 'half' | 'part'
  /** An integer, a decimal or a fraction, as text. */
  readonly value: string
  readonly names: readonly string[]
}

/** Words that play one part in a statement. A word may play several. */
export interface ParticleRow {
  readonly id: string
  readonly words: readonly string[]
}

/** Spellings of a common word that no rule reaches. */
export interface SpellingRow {
  readonly id: string
  readonly names: readonly string[]
}

/** The words for a thing of the kitchen. */
export interface ThingWordRow {
  readonly id: string
  /** The modern name in the singular, as a reading gives it. */
  readonly label: string
  readonly names: readonly string[]
  /** `each`: asked for by number (*four lemons*); `joint`: a cut that needs its beast (*a leg of pork*); `dish`: made by the receipt, not asked for. */
  readonly count?: 'each' | 'joint' | 'dish'
  /** Words of this kind close a compound: *cowslip wine*, *lemon peel*. */
  readonly head?: boolean
  /** A beast that joints are cut from. */
  readonly meat?: boolean
}

/** A run of yearly wheat prices, ten at most, as their source states them. */
export interface WheatPriceRow extends Attested {
  readonly id: string
  /** Who kept them: `rogers`, `windsor`, `eton`, `gazette`. */
  readonly series: string
  /** First and last year, by the source's own reckoning of a year. */
  readonly years: readonly [number, number]
  /** Shillings per quarter, one for each year. */
  readonly shillings: readonly number[]
}

/** Which prices rule in which calendar years, and how they come to shillings for a Winchester quarter of middle wheat. */
export interface WheatSeriesRow extends Attested {
  readonly id: string
  readonly label: string
  /** The `series` of the price rows. */
  readonly prices: string
  readonly years: readonly [number, number]
  /** Where the source's year begins at Michaelmas: the share of a calendar year that falls to the harvest of the year before. */
  readonly harvest?: string
  /** What middle wheat by the Winchester quarter costs, as a part of the price stated. */
  readonly ratio: string
  /** Standard deviation, in logarithms, of a week's market around the figure of the year. */
  readonly deviation: number
}

/** A time of the law of bread, and the ounce that bread was tried by. */
export interface AssizeRegimeRow extends Attested, Dated {
  readonly id: string
  readonly label: string
  readonly ounce: string
  /** Troy grains to the ounce. */
  readonly grains: string
  /** Grains of a lighter ounce that may still have been in use. */
  readonly grainsLow?: string
}

/** How much bread a penny must buy: ounces x shillings of wheat and allowance by the quarter. */
export interface AssizeRuleRow extends Attested {
  readonly id: string
  readonly regime: string
  readonly kind: string
  readonly ounces: string
  readonly ends?: readonly [string, string]
}

/** A sort of place with a bread market of its own. */
export interface BreadMarketRow extends Attested {
  readonly id: string
  readonly label: string
  readonly places: readonly string[]
  readonly years?: readonly [number, number]
  /** Standard deviation, in logarithms, of its wheat around the series. */
  readonly deviation: number
}

/** Shillings a quarter that a baker may add to the price of wheat. */
export interface AllowanceRow extends Attested {
  readonly id: string
  readonly years: readonly [number, number]
  readonly markets: readonly string[]
  readonly shillings: Spread
}

/** A cause that makes a loaf stray from its rule. */
export interface LoafDoubtRow extends Attested {
  readonly id: string
  readonly label: string
  readonly years?: readonly [number, number]
  /** Wheat prices, in shillings, that it is confined to. */
  readonly wheat?: readonly [number, number]
  /** Standard deviation in logarithms. */
  readonly deviation: number
}

/** A kind of bread by its period names. */
export interface LoafKindRow extends Attested {
  readonly id: string
  readonly label: string
  readonly names: readonly string[]
  /** The kind whose rule it goes by, where it has none of its own. */
  readonly as?: string
  readonly years?: readonly [number, number]
  /** What one loaf of it costs where no price is named, in pence; a penny where nothing is said. */
  readonly pence?: string
  /** The loaf of fixed weight that a penny buys in the years when such a row holds. */
  readonly piece?: string
}

/** A price that loaves were named by. */
export interface LoafCoinRow extends Attested {
  readonly id: string
  readonly label: string
  readonly pence: string
  readonly names: readonly string[]
  /** From the first year in which a loaf could be had for it. */
  readonly years: readonly [number, number]
  /** When it was a common loaf, and how likely one of another time is beside it. Bears on dates that leave the time open. */
  readonly common?: readonly [number, number]
  readonly rare?: number
}

/** A loaf of fixed weight. */
export interface FixedLoafRow extends Attested, Dated {
  readonly id: string
  readonly loaf: string
  readonly label: string
  readonly names: readonly string[]
  /** Avoirdupois ounces. */
  readonly ounces: string
  readonly ends?: readonly [string, string]
  /** Weight beside other rows of the same loaf; 1 where nothing is said. */
  readonly likelihood?: number
}

/** What a loaf was that is not fully named, its kind or its size; or, as a custom, what may stand behind a loaf that is. */
export interface LoafUsageRow extends Attested {
  readonly id: string
  readonly years: readonly [number, number]
  readonly about: 'kind' | 'size' | 'custom'
  /** The kind that a row about size or custom is confined to. */
  readonly of?: string
  /** The coin that a custom is confined to. */
  readonly coin?: string
  readonly weights: Readonly<Record<string, number>>
  readonly reason: string
}

/** What part of a loaf its crumb is. */
export interface CrumbShareRow extends Attested {
  readonly id: string
  readonly label: string
  readonly kind?: string
  readonly share: Spread
}

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

/** A number that eggs were counted by: the hundred of six score. */
export interface EggTaleRow extends Attested, Dated {
  readonly id: string
  readonly label: string
  readonly names: readonly string[]
  readonly eggs: number
  readonly likelihood?: number
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

/** A piece that receipts count: its spells are in g, or in ml where they say volume. */
export interface PieceRow extends SizedRow {
  /** The word it is counted by: `blade`, `race`; absent for a whole thing. */
  readonly measure?: string
}

/** What a penny bought, in g, ml or each. */
export interface PennyworthRow extends SpellRow {
  readonly things: readonly string[]
}

/** A dish or tin by what a kitchen calls it: millimetres inside the rim. */
export interface DishRow extends Attested {
  readonly id: string
  readonly label: string
  readonly plural: string
  readonly names: readonly string[]
  readonly shape: 'round' | 'square' | 'rectangle' | 'oval' | 'loaf'
  /** The pair that a fit is told in: so many small or so many large. */
  readonly size?: 'small' | 'large'
  /** The diameter, or the longer side. */
  readonly length: number
  readonly width?: number
  readonly depth: number
  /** How much less across it is at the bottom than at the rim; 0 where nothing is said. */
  readonly taper?: number
  /** How thick the paste is that it is lined with. */
  readonly lining?: number
  /** ml to the brim, where a book or chart says so. */
  readonly holds?: number
}

/** How dense a dry thing is once it lies in a batch without air between its grains, in g/ml. */
export interface DisplacementRow extends Attested {
  readonly id: string
  readonly label: string
  /** Goods or classes of goods, the narrowest row first. */
  readonly things: readonly string[]
  readonly density: Spread
}

/** What one person is helped to, in the base unit of the quantity. */
export interface PortionRow extends Attested, Spread {
  readonly id: string
  readonly label: string
  readonly quantity: Quantity
}

/** A receipt of our own in period style, for examples and tests. */
export interface DemoReceiptRow extends Attested {
  readonly id: string
  readonly title: string
  readonly year: number
  readonly place: string
  readonly text: string
}

/** A density in g/ml that a period book prints by saying what a measure of the thing weighs. */
export interface PrintedDensity extends Attested, Dated {
  readonly density: number
  /** Why the printed figure can't be right, where it can't. */
  readonly fault?: string
}

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
