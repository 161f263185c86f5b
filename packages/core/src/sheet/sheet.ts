import type { AnswerCaution, AnswerSense, Value } from '../answer.js'
import type { EggParts, HeatOf, Range, ReadingKind } from '../reading/index.js'

/** What a cook measures off for one line. */
export interface Working {
  /** In `unit`; of eggs, how many are cracked. */
  readonly amount: number
  /** A modern unit's id: `g`, `cup-us`, `egg-uk-m`. */
  readonly unit: string
  /** What a cook reads: `1 cup and 2 tbsp`. */
  readonly text: string
  /** The same in metric where the kitchen's own units are not; null where `text` is metric. */
  readonly metric: string | null
  /** What the words come to for this plan, as a scale or jug shows it. */
  readonly value: Value
  /** How much larger (or smaller, below zero) the amount is than the best value, as a part of it. */
  readonly moved: number
}

/** The sense that a line was worked with, and why. */
export interface Chosen {
  readonly id: string
  readonly label: string
  readonly likelihood: number
  readonly reason: string
}

/** One measured thing. */
export interface SheetLine {
  /** From 1, in the order of the text; the number that the measure is marked with in the text. */
  readonly number: number
  readonly start: number
  readonly end: number
  readonly phrase: string
  readonly kind: ReadingKind
  readonly thing: string | null
  /** Which part of the thing: `juice`, `crumb`. */
  readonly part: string | null
  readonly amount: Range | null
  readonly measure: string | null
  readonly eggs: EggParts | null
  readonly chosen: Chosen | null
  readonly senses: readonly AnswerSense[]
  /** What the words come to as they stand; null where they can't be turned into a figure. */
  readonly value: Value | null
  /** What to measure off for this plan. */
  readonly working: Working | null
  /** True where the receipt leaves the quantity open and it was worked out from the rest. */
  readonly estimate: boolean
  /** What the reader must choose or know. */
  readonly note: string | null
  /** Numbers of footnotes. */
  readonly sources: readonly number[]
}

/** A thing that the text names without an amount. */
export interface SheetThing {
  readonly start: number
  readonly end: number
  readonly phrase: string
  readonly thing: string
}

/** How the plan scales the receipt. */
export interface SheetScale {
  readonly factor: number
  readonly by: 'nothing' | 'factor' | 'guests' | 'dish' | 'limit'
  readonly text: string
}

/** A sum over the lines, and the lines that could not be counted in. */
export interface Total extends Value {
  readonly without: readonly number[]
  /** Footnotes to the densities that it rests on beside the lines. */
  readonly sources: readonly number[]
}

/** How many of one dish the batch fills. */
export interface DishFit {
  readonly id: string | null
  readonly label: string
  /** ml that one is filled with. */
  readonly volume: number
  /** How many the batch fills, unrounded. */
  readonly fills: number
  /** How many to set out. */
  readonly count: number
  /** How full each stands when the batch is shared among `count`, as a part of what it is filled with. */
  readonly full: number
  /** How deep in mm the batch then stands in each; null for a mould of unknown form. */
  readonly deep: number | null
  readonly text: string
  /** Footnotes to the size of a dish of the tables; none for a dish that the plan measures. */
  readonly sources: readonly number[]
}

/** Eggs to crack for the whole sheet. */
export interface SheetEggs {
  readonly unit: string
  readonly label: string
  /** Whole eggs, yolks alone and whites alone that go in. */
  readonly whole: number
  readonly yolks: number
  readonly whites: number
  readonly cracked: number
  readonly left: { readonly yolks: number; readonly whites: number }
  readonly text: string
}

/** The heat that the text asks for, on a modern oven. */
export interface SheetOven {
  /** Where the text says so; null where the user fixed a heat that the text does not name. */
  readonly start: number | null
  readonly end: number | null
  readonly phrase: string
  readonly heat: string
  readonly label: string
  readonly value: Value
  /** The setting for the cook's own oven. */
  readonly set: string
  /** Every setting. */
  readonly text: string
  readonly note: string | null
  readonly sources: readonly number[]
}

/** A height of boiled sugar or the warmth of a liquid that the text asks for, as a thermometer shows it. */
export interface SheetWarmth {
  readonly start: number
  readonly end: number
  readonly phrase: string
  readonly of: HeatOf
  readonly heat: string
  readonly label: string
  readonly value: Value
  readonly text: string
  /** How a cook tells it without a thermometer; null where the tables have no such sign. */
  readonly test: string | null
  readonly sources: readonly number[]
}

/** How long to bake one dish of the plan. */
export interface SheetBake {
  readonly dish: string
  readonly minutes: { readonly early: number; readonly best: number; readonly late: number }
  readonly text: string
  /** How hot the middle must be, where what is in it calls for that. */
  readonly core: string | null
  readonly signs: readonly string[]
  readonly note: string | null
  readonly sources: readonly number[]
}

/** A stretch of the text that tells one thing to do. */
export interface SheetStep {
  readonly number: number
  readonly start: number
  readonly end: number
  readonly text: string
  /** Numbers of the lines that it uses. */
  readonly lines: readonly number[]
  readonly minutes: Range | null
}

/** One choice that the user took out of the tables' hands. */
export interface SheetFix {
  readonly what: string
  readonly value: string
  /** Numbers of the lines that it bears on. */
  readonly lines: readonly number[]
}

/** A numbered footnote. */
export interface SheetSource {
  readonly number: number
  readonly id: string
  /** The source as a footnote has it, with the places in it. */
  readonly short: string
  readonly citation: string
}

/** A whole receipt as a kitchen can cook it and a scholar can check it. */
export interface Sheet {
  readonly title: string
  readonly setting: { readonly year: number | string | null; readonly place: string }
  readonly units: 'metric' | 'us' | 'uk'
  readonly scale: SheetScale
  readonly lines: readonly SheetLine[]
  readonly unmeasured: readonly SheetThing[]
  readonly totals: { readonly mass: Total | null; readonly volume: Total | null }
  readonly dishes: { readonly fits: readonly DishFit[]; readonly text: string | null }
  readonly eggs: SheetEggs | null
  readonly oven: readonly SheetOven[]
  readonly warmths: readonly SheetWarmth[]
  readonly bake: readonly SheetBake[]
  readonly order: readonly SheetStep[]
  /** How far rounding moved the lines from one another. */
  readonly rounding: string | null
  readonly notes: readonly string[]
  readonly cautions: readonly AnswerCaution[]
  readonly sources: readonly SheetSource[]
  readonly fixed: readonly SheetFix[]
  /** The text as it was given, to the last character. */
  readonly text: string
  readonly dataset: string
}
