import type { Step } from '../cite/index.js'
import type { LoafUsageRow } from '../tables/index.js'
import { commonness, customMeant, kindsMeant, sizesMeant } from './choice.js'
import { fixedNamed } from './names.js'
import type { LoafYear } from './span.js'

/** What the words say of a loaf, wherever a reader put them. */
export interface LoafWords {
  readonly coin: string | undefined
  readonly kind: string | undefined
  readonly crumb: boolean
  /** A kind that is sold at a price of its own where none is named. */
  readonly single: boolean
}

function stepOf(row: LoafUsageRow, meant: string): Step {
  return { text: row.reason, factor: `${meant} ${row.weights[meant]}`, grade: row.grade, checked: row.checked, sources: row.source }
}

/** One way to fill in what the words leave open: a size and a kind, with the share it has in each year. */
export interface Filling {
  readonly coin: string | undefined
  readonly kind: string | undefined
  readonly share: (year: number) => number
  readonly reasons: (year: number) => Step[]
}

/** What may stand in for a size or a kind that the words leave open. */
interface Option extends Pick<Filling, 'share' | 'reasons'> {
  readonly id: string | undefined
}

/** What the words say outright. */
function said(id: string | undefined): Option {
  return { id, share: () => 1, reasons: () => [] }
}

/** Every option that a usage row of any of the years names, with its share by year; where no row speaks, what the words say. */
function options(years: readonly LoafYear[], rowIn: (year: number) => LoafUsageRow | undefined, otherwise?: string): Option[] {
  const ids = new Set(years.flatMap(({ year }) => Object.keys(rowIn(year)?.weights ?? (otherwise ? { [otherwise]: 1 } : {}))))
  return [...ids].map((id) => ({
    id,
    share: (year) => rowIn(year)?.weights[id] ?? (rowIn(year) || id !== otherwise ? 0 : 1),
    reasons: (year) => [rowIn(year)].flatMap((row) => (row ? [stepOf(row, id)] : [])),
  }))
}

function sizesOf({ coin, kind, single }: LoafWords, years: readonly LoafYear[]): Option[] {
  if (coin && kind) return options(years, (year) => customMeant(year, coin, kind), coin)
  if (coin || single) return [said(coin)]
  return options(years, (year) => sizesMeant(year, kind))
}

/** Every way to fill in what the words leave open, over the years of a date. */
export function fillings(words: LoafWords, years: readonly LoafYear[]): Filling[] {
  return sizesOf(words, years).flatMap((size) => {
    // A loaf of fixed weight weighs the same whatever the flour.
    const named = words.kind || fixedNamed(size.id ?? '')
    const kinds = named ? [said(words.kind)] : options(years, kindsMeant)
    return kinds.map((one) => ({
      coin: size.id,
      kind: one.id,
      share: (year: number) => commonness(size.id ?? 'penny', year) * size.share(year) * one.share(year),
      reasons: (year: number) => [...size.reasons(year), ...one.reasons(year)],
    }))
  })
}
