import { type Checked, citeShort, type Grade } from '@pottle/core'
import type { Attested, Dated, Quantity, Spread } from '@pottle/core/tables'
import { between, inScale, scaleFor } from '../parts/figures.js'

/** What a measure came to at one time, in one place and for some things; and who says so. */
export interface Finding {
  readonly id?: string
  readonly label: string
  /** `14.8 ml`, or in words what there is in place of a figure. */
  readonly best: string
  /** `12 to 20 ml`; absent where the figure is exact or is none. */
  readonly ends?: string | undefined
  /** A page that computes what a table can't hold. */
  readonly computed?: string
  readonly years: readonly [number, number] | null
  readonly place: string | null
  readonly things: readonly string[] | null
  readonly grade: Grade
  readonly checked: Checked
  /** Footnote forms. */
  readonly sources: readonly string[]
  readonly note?: string | undefined
}

/** A measure, a heat or a thing of the tables, with a page of its own. */
export interface Article {
  readonly id: string
  readonly address: string
  readonly label: string
  /** Other words for it. */
  readonly names: readonly string[]
  /** What it comes to over all its findings, as short as a list can hold. */
  readonly comes: string
  /** Words of a book that use it, to ask with: the first that has an answer is proposed. */
  readonly asks?: readonly string[]
  /** What it stands under in a long list. */
  readonly group?: string
  readonly findings: readonly Finding[]
}

/** Articles of one kind, with a page that lists them. */
export interface Shelf {
  readonly address: string
  readonly title: string
  /** One sentence on what they are. */
  readonly about: string
  /** What a page says of one of them; what it meant, where nothing is said. */
  readonly says?: string
  /** What heads the column of what they come to. */
  readonly column?: string
  readonly articles: readonly Article[]
}

/** A shelf whose articles are made when they are first looked at: a server that only answers programs never makes them. */
export function shelf(head: Omit<Shelf, 'articles'>, make: () => readonly Article[]): Shelf {
  let made: readonly Article[] | undefined
  return {
    ...head,
    get articles() {
      made ??= make()
      return made
    },
  }
}

/** Everything that a row says of its own standing. */
export function attestation({ source, grade, checked, note, years, place }: Attested & Dated) {
  return { years: years ?? null, place: place ?? null, grade, checked, sources: source.map(citeShort), note } as const
}

/** A spread in a unit that suits it. */
export function sizeOf(spread: Spread, quantity: Quantity): Pick<Finding, 'best' | 'ends'> {
  const scale = scaleFor(quantity, spread.best)
  return { best: inScale(spread.best, scale), ends: spread.low === spread.high ? undefined : between(spread, scale) }
}

/** From the smallest to the largest best value, each in the unit that suits it. */
export function rangeOf(values: readonly number[], quantity: Quantity): string {
  const [low, high] = [Math.min(...values), Math.max(...values)]
  const [from, to] = [scaleFor(quantity, low), scaleFor(quantity, high)]
  return from.name === to.name ? between({ low, high }, from) : `${inScale(low, from)} to ${inScale(high, to)}`
}
