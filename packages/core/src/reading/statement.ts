import type { AmountPart, EggParts, HeatClass, Range, ReadingKind } from './reading.js'
import type { Thing } from './thing.js'
import type { Line } from './tokens.js'

/** A reading while it is still a stretch of tokens. */
export interface Statement {
  readonly kind: ReadingKind
  readonly start: number
  readonly end: number
  readonly amount: Range | null
  readonly measure: string | null
  readonly thing: string | null
  readonly qualifier: string | null
  readonly eggs: EggParts | null
  readonly things?: readonly string[]
  readonly each?: boolean
  readonly implied?: boolean
  readonly standard?: string
  readonly part?: string
  readonly parts?: readonly AmountPart[]
  readonly minutes?: Range | null
  readonly heat?: string
  readonly heatClass?: HeatClass
  /** The thing is in words that no table knows: those from here on gave nothing. */
  readonly unknown?: number
  /** A thing that the words compare with: *as much sugar as butter*. */
  readonly beside?: string
  /** It points at an earlier statement. */
  readonly refers?: boolean
}

/** What has been read so far, as far as later words may lean on it. */
export interface Context {
  readonly line: Line
  /** The last measured statement of the sentence: *six pounds of fruit, three of sugar*. */
  measured: Statement | null
  /** The last statement that told of a thing. */
  last: Statement | null
  /** Things named since the last statement, for amounts that stand behind their thing. */
  loose: Thing[]
  /** A short phrase rather than running prose: bolder readings are wanted. */
  readonly phrase: boolean
}

/** A statement with nothing in it but its kind and place; the rest is added by the reader that knows. */
export function statement(kind: ReadingKind, start: number, end: number, known: Partial<Statement>): Statement {
  return { kind, start, end, amount: null, measure: null, thing: null, qualifier: null, eggs: null, ...known }
}

export const once: Range = { low: 1, high: 1 }
