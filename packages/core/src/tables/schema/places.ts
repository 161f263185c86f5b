/** Where. */

/** A place and what it lies in. */
export interface PlaceRow {
  readonly id: string
  readonly label: string
  /** The next wider place; a row for it holds here too, unless a nearer one speaks. */
  readonly within?: string
}
