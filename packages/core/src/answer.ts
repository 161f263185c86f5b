import type { AnswerStep } from './cite/index.js'
import type { ModernValue } from './modern/index.js'
import type { EggParts, Range, ReadingKind } from './reading/index.js'
import type { Quantity } from './tables/index.js'

/** Low, best and high in a base unit, at a coverage: nine times in ten, unless the caller asked otherwise. */
export interface Value {
  readonly quantity: Quantity
  /** The SI or metric base: g, ml, each, mm, s, degC, 1. */
  readonly unit: string
  readonly low: number
  readonly best: number
  readonly high: number
  readonly coverage: number
}

/** One meaning of the phrase in its setting, for the whole amount. */
export interface AnswerSense {
  readonly id: string
  readonly label: string
  readonly likelihood: number
  readonly unit: string
  readonly low: number
  readonly best: number
  readonly high: number
  /** All the digits, where the law was exact and the amount is one number; else null. */
  readonly exact: string | null
  readonly steps: readonly AnswerStep[]
}

/** A source that a step rests on. */
export interface AnswerSource {
  readonly id: string
  readonly citation: string
}

/** A warning that belongs beside the answer. */
export interface AnswerCaution {
  readonly id: string
  readonly title: string
  readonly text: string
  readonly sources: readonly string[]
}

/** Everything that Pottle has to say about a phrase, as plain data. */
export interface AnswerData {
  readonly phrase: string
  readonly setting: { readonly year: number | string | null; readonly place: string }
  readonly reading: {
    readonly kind: ReadingKind
    readonly amount: Range | null
    readonly measure: string | null
    readonly thing: string | null
    readonly qualifier: string | null
    readonly eggs: EggParts | null
    /** Words of the phrase that gave nothing. */
    readonly unread: readonly string[]
  }
  readonly value: Value
  readonly modern: readonly ModernValue[]
  readonly senses: readonly AnswerSense[]
  /** The answer in a line of kitchen language. */
  readonly text: string
  /** What the reader should know before using the figure: a choice between senses, a year left out, words not understood. */
  readonly notes: readonly string[]
  readonly cautions: readonly AnswerCaution[]
  readonly sources: readonly AnswerSource[]
  /** The version of the tables that the answer was computed from. */
  readonly dataset: string
}

/** An answer whose longer parts are made when they are first read. Take `toJSON()` before spreading or comparing it. */
export interface Answer extends AnswerData {
  /** All parts of the answer, as a plain object. */
  toJSON(): AnswerData
}
