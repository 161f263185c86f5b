/** What kind of statement a phrase makes. */
export type ReadingKind =
  | 'measured'
  | 'counted'
  | 'eggparts'
  | 'priced'
  | 'comparison'
  | 'vague'
  | 'heat'
  | 'time'
  | 'length'
  | 'consistency'

/** Both ends are the same where the words give one number. */
export interface Range {
  readonly low: number
  readonly high: number
}

/** Eggs as a cook counts them: whole ones, yolks without their white, whites without their yolk. */
export interface EggParts {
  readonly whole: number
  readonly yolks: number
  readonly whites: number
}

/** A stretch of the text by UTF-16 offsets, the end not included. */
export interface Span {
  readonly start: number
  readonly end: number
}

/** One term of a compound statement: *two pounds and three ounces*. */
export interface AmountPart {
  readonly amount: Range
  readonly measure: string
}

/** What a phrase says, before anyone asks what it meant. */
export interface Reading {
  readonly kind: ReadingKind
  /** In the stated measure: *three quarters of a pound* is 0.75. Null where the words give no number. */
  readonly amount: Range | null
  /** The measure by its modern name: `pottle`, `penny loaf`, `bigness of a walnut`; `none` for a plain count. */
  readonly measure: string | null
  /** The thing by its modern name, in the singular. */
  readonly thing: string | null
  /** `about`, `large`, `small`, `good`, `heaped`, `rounded`, `level`, `scant`: a word that shifts the amount. */
  readonly qualifier: string | null
  readonly eggs: EggParts | null
  /** What an *equal weight* or an *as much* points at, where the words say it. */
  readonly reference?: Reading
  /** The measure that an *as many* counts by: `blade` of *as many blades of mace*. */
  readonly unit?: string
  /** Every thing that the amount is shared by or stated of: *cloves and mace*. */
  readonly things?: readonly string[]
  /** What may stand in the thing's place: *butter or lard*. */
  readonly alternatives?: readonly string[]
  /** The amount holds for each of the things, not for all of them together. */
  readonly each?: boolean
  /** The standard that the words name: `wine`, `ale`, `troy`. */
  readonly standard?: string
  /** The words name no thing: it is the one that the sentence spoke of last. */
  readonly implied?: boolean
  /** Words that say of what kind the thing is, in modern spelling: `brown`, `white`. */
  readonly describing?: readonly string[]
  /** The number word that the things are told by: `hundred`. The amount is in ones all the same. */
  readonly tale?: string
  /** Which part of the thing: `juice`, `rind`, `crumb`. */
  readonly part?: string
  /** Every part where the words name more than one: *the rind and juice of two lemons*. */
  readonly portions?: readonly string[]
  /** The terms of a compound; `amount` is their sum in the first measure, or the first term alone where their ratio was never fixed. */
  readonly parts?: readonly AmountPart[]
  /** The words of a heat in modern spelling: `quick`, `as hot as for manchet`. */
  readonly heat?: string
  /** What is so hot; an oven or a fire where nothing is said. */
  readonly heatOf?: HeatOf
  /** The class of a heat: `moderate`, `as-for-bread`, `falling`. */
  readonly heatClass?: HeatClass
  /** The length of a stated time. */
  readonly minutes?: Range
  /** Why the words can't all be true; no figure is then given for them. */
  readonly contradiction?: string
  /** The words that gave the reading. */
  readonly understood: readonly Span[]
  /** The words that gave nothing. */
  readonly unread: readonly Span[]
}

/** What a heat is told of, beside ovens and fires. */
export type HeatOf = 'sugar' | 'liquid'

/** A family of oven heats. */
export type HeatClass =
  | 'cool'
  | 'very-slow'
  | 'slow'
  | 'moderate'
  | 'moderate-quick'
  | 'quick'
  | 'hot'
  | 'very-hot'
  | 'as-for-manchet'
  | 'as-for-bread'
  | 'after-bread'
  | 'falling'
  | 'test-paper'
  | 'test-flour'
  | 'other'

/** A reading and where in the text it stands. */
export interface Found extends Reading, Span {
  /** The exact words of the text. */
  readonly phrase: string
}

export interface FoundHeat extends Span {
  readonly phrase: string
  readonly heat: HeatClass
  /** The heat's own words in modern spelling. */
  readonly words: string
}

/** A height of boiled sugar, or the warmth of a liquid. */
export interface FoundWarmth extends Span {
  readonly phrase: string
  readonly of: HeatOf
  /** Its name in modern spelling, with what shifts it: `candy height`, `a little more than blood warm`. */
  readonly words: string
}

export interface FoundTime extends Span {
  readonly phrase: string
  /** Null for a time that no clock measures: *all night*. */
  readonly minutes: Range | null
}

/** A thing that the text names without an amount. */
export interface FoundThing extends Span {
  readonly phrase: string
  readonly thing: string
}

/** How many persons a receipt says that it is enough for. */
export interface FoundServes extends Span {
  readonly phrase: string
  readonly amount: Range
}

/** Everything that a receipt states, each list in the order of the text. */
export interface ReceiptReading {
  readonly measures: readonly Found[]
  readonly heats: readonly FoundHeat[]
  readonly warmths: readonly FoundWarmth[]
  readonly times: readonly FoundTime[]
  readonly lengths: readonly Found[]
  readonly consistencies: readonly Found[]
  readonly unmeasured: readonly FoundThing[]
  /** Null where it says nothing of them. */
  readonly serves: FoundServes | null
}
