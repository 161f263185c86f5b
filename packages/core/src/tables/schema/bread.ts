/** The Assize of Bread. */

import type { Attested, Dated, Spread } from './attested.js'

/** A run of yearly wheat prices, ten at most, as their source states them. */
export interface WheatPriceRow extends Attested {
  readonly id: string
  /** Who kept them: `rogers`, `windsor`, `eton`, `gazette`. */
  readonly series: string
  /** First and last year, by the source's own reckoning of a year. */
  readonly years: readonly [number, number]
  /** Shillings per quarter, one for each year. */
  readonly shillings: readonly number[]
}

/** Which prices rule in which calendar years, and how they come to shillings for a Winchester quarter of middle wheat. */
export interface WheatSeriesRow extends Attested {
  readonly id: string
  readonly label: string
  /** The `series` of the price rows. */
  readonly prices: string
  readonly years: readonly [number, number]
  /** Where the source's year begins at Michaelmas: the share of a calendar year that falls to the harvest of the year before. */
  readonly harvest?: string
  /** What middle wheat by the Winchester quarter costs, as a part of the price stated. */
  readonly ratio: string
  /** Standard deviation, in logarithms, of a week's market around the figure of the year. */
  readonly deviation: number
}

/** A time of the law of bread, and the ounce that bread was tried by. */
export interface AssizeRegimeRow extends Attested, Dated {
  readonly id: string
  readonly label: string
  readonly ounce: string
  /** Troy grains to the ounce. */
  readonly grains: string
  /** Grains of a lighter ounce that may still have been in use. */
  readonly grainsLow?: string
}

/** How much bread a penny must buy: ounces x shillings of wheat and allowance by the quarter. */
export interface AssizeRuleRow extends Attested {
  readonly id: string
  readonly regime: string
  readonly kind: string
  readonly ounces: string
  readonly ends?: readonly [string, string]
}

/** A sort of place with a bread market of its own. */
export interface BreadMarketRow extends Attested {
  readonly id: string
  readonly label: string
  readonly places: readonly string[]
  readonly years?: readonly [number, number]
  /** Standard deviation, in logarithms, of its wheat around the series. */
  readonly deviation: number
}

/** Shillings a quarter that a baker may add to the price of wheat. */
export interface AllowanceRow extends Attested {
  readonly id: string
  readonly years: readonly [number, number]
  readonly markets: readonly string[]
  readonly shillings: Spread
}

/** A cause that makes a loaf stray from its rule. */
export interface LoafDoubtRow extends Attested {
  readonly id: string
  readonly label: string
  readonly years?: readonly [number, number]
  /** Wheat prices, in shillings, that it is confined to. */
  readonly wheat?: readonly [number, number]
  /** Standard deviation in logarithms. */
  readonly deviation: number
}

/** A kind of bread by its period names. */
export interface LoafKindRow extends Attested {
  readonly id: string
  readonly label: string
  readonly names: readonly string[]
  /** The kind whose rule it goes by, where it has none of its own. */
  readonly as?: string
  readonly years?: readonly [number, number]
  /** What one loaf of it costs where no price is named, in pence; a penny where nothing is said. */
  readonly pence?: string
  /** The loaf of fixed weight that a penny buys in the years when such a row holds. */
  readonly piece?: string
}

/** A price that loaves were named by. */
export interface LoafCoinRow extends Attested {
  readonly id: string
  readonly label: string
  readonly pence: string
  readonly names: readonly string[]
  /** From the first year in which a loaf could be had for it. */
  readonly years: readonly [number, number]
  /** When it was a common loaf, and how likely one of another time is beside it. Bears on dates that leave the time open. */
  readonly common?: readonly [number, number]
  readonly rare?: number
}

/** A loaf of fixed weight. */
export interface FixedLoafRow extends Attested, Dated {
  readonly id: string
  readonly loaf: string
  readonly label: string
  readonly names: readonly string[]
  /** Avoirdupois ounces. */
  readonly ounces: string
  readonly ends?: readonly [string, string]
  /** Weight beside other rows of the same loaf; 1 where nothing is said. */
  readonly likelihood?: number
}

/** What a loaf was that is not fully named, its kind or its size; or, as a custom, what may stand behind a loaf that is. */
export interface LoafUsageRow extends Attested {
  readonly id: string
  readonly years: readonly [number, number]
  readonly about: 'kind' | 'size' | 'custom'
  /** The kind that a row about size or custom is confined to. */
  readonly of?: string
  /** The coin that a custom is confined to. */
  readonly coin?: string
  readonly weights: Readonly<Record<string, number>>
  readonly reason: string
}

/** What part of a loaf its crumb is. */
export interface CrumbShareRow extends Attested {
  readonly id: string
  readonly label: string
  readonly kind?: string
  readonly share: Spread
}
