import type { Figures } from './figures.js'

/** What an entry takes from the answers of the API; the library's answers have the same form. */
export interface AnswerStep {
  readonly text: string
  readonly factor: string
  readonly grade: string
  readonly checked: string
  readonly sources: readonly string[]
}

/** A figure in one modern unit. */
export interface AnswerUnit extends Figures {
  readonly unit: string
  readonly text: string
}

/** The band of an answer in its base unit. */
export interface AnswerValue extends Figures {
  readonly quantity: string
  readonly unit: string
  readonly coverage: number
}

/** `GET /v1/convert` */
export interface MeasureAnswer {
  readonly phrase: string
  readonly setting: { readonly year: number | string | null; readonly place: string }
  readonly value: AnswerValue
  readonly modern: readonly AnswerUnit[]
  readonly senses: readonly (Figures & {
    readonly label: string
    readonly likelihood: number
    readonly unit: string
    readonly exact: string | null
    readonly steps: readonly AnswerStep[]
  })[]
  readonly text: string
  readonly notes: readonly string[]
  readonly cautions: readonly { readonly text: string }[]
  readonly dataset: string
}

/** `GET /v1/oven-heats?phrase=` */
export interface HeatAnswer {
  readonly phrase: string
  readonly setting: { readonly year: number | string | null }
  readonly heat: { readonly label: string }
  readonly value: AnswerValue
  readonly modern: readonly AnswerUnit[]
  readonly likelihood: number
  readonly others: readonly { readonly label: string; readonly likelihood: number; readonly value: Figures }[]
  readonly steps: readonly AnswerStep[]
  readonly notes: readonly string[]
  readonly dataset: string
}

/** `GET /v1/loaves` */
export interface LoafAnswer {
  readonly setting: { readonly year: number | string | null; readonly place: string }
  readonly loaf: { readonly label: string }
  readonly value: AnswerValue
  readonly exact: string | null
  readonly modern: readonly AnswerUnit[]
  readonly steps: readonly AnswerStep[]
  readonly dataset: string
}
