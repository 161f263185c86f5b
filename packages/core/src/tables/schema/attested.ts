/** What every row says about itself: who says so, how well, where and when, within what ends. */

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
