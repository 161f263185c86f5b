import type { BakeGoodRow, HeatRelationRow } from '../tables/index.js'
import type { Ends } from './consensus.js'
import type { Meaning } from './names.js'
import { coreOfHeat } from './scale.js'
import type { Word } from './words.js'

/** What a phrase came to, before the year widens it. */
export interface Found {
  readonly heat: string
  /** In degF. */
  readonly core: Ends & { readonly best?: number }
  /** Which way the phrase names its heat. */
  readonly via: 'words' | 'relation' | 'comparison' | 'goods' | 'degrees' | 'test'
  readonly relation?: HeatRelationRow
  readonly goods?: BakeGoodRow
  /** Of the heat itself, where the words had several meanings. */
  readonly likelihood: number
  readonly others: readonly Meaning[]
  readonly notes: readonly string[]
  /** Places of the words that were used. */
  readonly used: readonly number[]
}

/** The places, in the whole phrase, of a run of its words. */
export const places = (words: readonly Word[], from: number, to: number): number[] => words.slice(from, to).map(({ at }) => at)

/** A heat as it stands in the scale. */
export function plainly(heat: string, via: Found['via'], used: readonly number[], notes: readonly string[] = []): Found {
  const { low, high } = coreOfHeat(heat)
  return { heat, core: { low, high }, via, likelihood: 1, others: [], notes, used }
}
