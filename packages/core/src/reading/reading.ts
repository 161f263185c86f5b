/** What kind of statement a phrase makes. */
export type ReadingKind = 'measured' | 'counted' | 'eggparts' | 'priced' | 'comparison' | 'vague' | 'heat' | 'time' | 'length' | 'consistency'

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

/** What a phrase says, before anyone asks what it meant. */
export interface Reading {
  readonly kind: ReadingKind
  /** In the stated measure: *three quarters of a pound* is 0.75. Null where the words give no number. */
  readonly amount: Range | null
  /** The measure by its modern name: `pottle`, `penny loaf`, `bigness of a walnut`; `none` for a plain count. */
  readonly measure: string | null
  /** The thing by its modern name, in the singular. */
  readonly thing: string | null
  /** `about`, `large`, `small`, `good`, `heaped`, `scant`: a word that shifts the amount. */
  readonly qualifier: string | null
  readonly eggs: EggParts | null
  /** What an *equal weight* or an *as much* points at, where the words say it. */
  readonly reference?: Reading
  /** The words that gave the reading. */
  readonly understood: readonly Span[]
  /** The words that gave nothing. */
  readonly unread: readonly Span[]
}
