/** What may be asked: one measure, one oven heat, one priced loaf. */
export type Kind = 'measure' | 'heat' | 'loaf'

/** A band in the unit that the answer is read in. */
export interface EntryBand {
  readonly low: number
  readonly best: number
  readonly high: number
  /** Written after a figure: `litres`, `°C`. */
  readonly unit: string
  /** *nine times in ten between 1.87 and 2.32 litres* */
  readonly text: string
}

/** One meaning, with the letter that marks it in the picture. */
export interface EntrySense {
  readonly mark: string
  readonly label: string
  /** *78 in 100* */
  readonly share: string
  readonly best: number
  /** *1.89 litres* */
  readonly text: string
}

/** One factor of the derivation of the likeliest meaning. */
export interface EntryStep {
  readonly text: string
  readonly factor: string
  /** *statute*; *statute, from memory*: a figure that nobody looked up says so wherever it is shown. */
  readonly grade: string
  readonly sources: readonly string[]
}

/** An answer as a reader meets it: every word is ready to be set. */
export interface Entry {
  readonly kind: Kind
  /** The words that were asked for. */
  readonly words: string
  /** *England, 1690* */
  readonly setting: string
  /** *about 1.9 litres* */
  readonly short: string
  /** The same in the other units that a kitchen wants: *8 US cups*. */
  readonly also: readonly string[]
  /** Absent where the answer is exact. */
  readonly band: EntryBand | undefined
  readonly senses: readonly EntrySense[]
  /** All the digits of the likeliest meaning where a law fixed them: *1892.705892 ml*. */
  readonly exact: string | undefined
  readonly steps: readonly EntryStep[]
  readonly notes: readonly string[]
  /** The version of the tables. */
  readonly dataset: string
}
