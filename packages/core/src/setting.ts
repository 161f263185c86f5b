/** A year and how much of the doubt about the date falls on it. */
export interface Moment {
  readonly year: number
  readonly weight: number
}

/** When and where words were used. */
export interface Setting {
  /** The year as the caller wrote it, in EDTF level 1: `1690`, `1690~`, `169X`, `1650/1700`; null where no year was given. */
  readonly year: string | null
  /** First and last year that the words may belong to. */
  readonly from: number
  readonly to: number
  /** At most forty years that stand for the span; their weights add up to 1. One year gives one moment. */
  readonly moments: readonly Moment[]
  /** A place, and the wider places that it lies in, the nearest first: `['london', 'england', 'britain']`. */
  readonly places: readonly string[]
}
