import type { Line } from './line.js'
import type { AmountPart, EggParts, HeatClass, HeatOf, Range, ReadingKind } from './reading.js'
import type { Thing } from './thing.js'

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
  readonly things: readonly string[] | null
  readonly alternatives: readonly string[] | null
  readonly each: boolean
  readonly implied: boolean
  readonly standard: string | null
  /** The number word that things are told by. */
  readonly tale: string | null
  readonly part: string | null
  /** Every part where the words name more than one. */
  readonly portions: readonly string[] | null
  readonly parts: readonly AmountPart[] | null
  readonly minutes: Range | null
  readonly heat: string | null
  readonly heatClass: HeatClass | null
  readonly heatOf: HeatOf | null
  /** Where words begin that no table knows and that are passed on as the thing; the end of the statement where there are none. */
  readonly unknown: number
  /** A thing that the words compare with: *as much sugar as butter*. */
  readonly beside: string | null
  /** It points at an earlier statement. */
  readonly refers: boolean
  /** It points past other weighings at what was weighed: *their weight*. */
  readonly theirs: boolean
  /** The measure that an *as many* counts by. */
  readonly unit: string | null
  /** Why its words can't all be true. */
  readonly contradiction: string | null
}

/** What has been read so far, as far as later words may lean on it. */
export interface Context {
  readonly line: Line
  /** The last measured statement of the sentence: *six pounds of fruit, three of sugar*. */
  measured: Statement | null
  /** The last statement that told of a thing. */
  last: Statement | null
  /** The last eggs that were spoken of. */
  eggs: Statement | null
  /** The thing that was last told by each measure. */
  readonly by: Map<string, string>
  /** The last *to every* of a thing: *to every gallon of water*, by which a later *to every gallon* is meant. */
  every: Statement | null
  /** Things named since the last statement, for amounts that stand behind their thing. */
  loose: Thing[]
  /** A short phrase rather than running prose: bolder readings are wanted. */
  readonly phrase: boolean
}

type Known = { -readonly [K in keyof Statement]?: Statement[K] | undefined }

/** A statement with nothing in it but its kind, its place and what is known. Every one has the same fields in the same order, which engines reward. */
export function statement(kind: ReadingKind, start: number, end: number, known: Known): Statement {
  return {
    kind,
    start,
    end,
    amount: known.amount ?? null,
    measure: known.measure ?? null,
    thing: known.thing ?? null,
    qualifier: known.qualifier ?? null,
    eggs: known.eggs ?? null,
    things: known.things ?? null,
    alternatives: known.alternatives ?? null,
    each: known.each ?? false,
    implied: known.implied ?? false,
    standard: known.standard ?? null,
    tale: known.tale ?? null,
    part: known.part ?? null,
    portions: known.portions ?? null,
    parts: known.parts ?? null,
    minutes: known.minutes ?? null,
    heat: known.heat ?? null,
    heatClass: known.heatClass ?? null,
    heatOf: known.heatOf ?? null,
    unknown: known.unknown ?? end,
    beside: known.beside ?? null,
    refers: known.refers ?? false,
    theirs: known.theirs ?? false,
    unit: known.unit ?? null,
    contradiction: known.contradiction ?? null,
  }
}

export const once: Range = { low: 1, high: 1 }
