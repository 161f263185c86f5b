/** How hot: ovens, boiling sugar, liquids. */

import type { Attested, Citation, Spread } from './attested.js'

/** Words that name a heat, the years in which they did, and how likely that meaning is beside the others of the same words. */
export interface HeatName {
  readonly words: string
  readonly years?: readonly [number, number]
  /** 1 where nothing is said. */
  readonly likelihood?: number
  readonly note?: string
}

/** One step of the scale of oven heats. */
export interface HeatRow extends Attested {
  readonly id: string
  /** Orders all heats from drying to scorching. */
  readonly rank: number
  readonly label: string
  readonly names: readonly HeatName[]
  /** Ends in degF, used where too few books print degrees to find a middle of them. */
  readonly ends: readonly [number, number]
}

/** What one dated source says of a heat, or of the oven for one kind of goods, in degrees. */
export interface HeatClaimRow extends Attested {
  readonly id: string
  /** The heat it speaks of; absent where the source names only what is baked. */
  readonly heat?: string
  /** The source's case in our words. */
  readonly duty: string
  readonly low: number
  /** Absent where the source gives only a lower end. */
  readonly high?: number
  readonly unit: 'degC' | 'degF'
  readonly year: number
  /** Books that copy one another, or share authors, are one family and have one vote. */
  readonly family: string
  /** Was the text itself seen, or a quotation of it, or is it recalled? */
  readonly access: 'text' | 'quoted' | 'memory'
  /** `dial` figures are what a dial in the oven door showed, which is not the heat of the air. */
  readonly instrument: 'stated' | 'dial'
}

/** A heat phrase without degrees in a dated book, and the goods that place it. */
export interface HeatWitnessRow extends Attested {
  readonly id: string
  readonly phrase: string
  /** The heat or the relation (`HeatRelationRow`) that the phrase comes to. */
  readonly heat: string
  readonly goods: string
  readonly year: number
}

/** A heat told by what else is baked: as hot as for manchet, after the bread is drawn. */
export interface HeatRelationRow extends Attested {
  readonly id: string
  readonly label: string
  readonly kind: 'as-for' | 'after' | 'overnight'
  /** What is or was baked. */
  readonly goods: readonly string[]
  /** Wordings that the grammar of the kind does not reach. */
  readonly names: readonly string[]
  /** The step of the scale nearest to it. */
  readonly heat: string
  readonly degF: Spread
  /** The oven is cooling while the food is in it. */
  readonly falling: boolean
}

/** How far an undivided opinion of dated books is widened for the years before them. */
export interface HeatEraRow extends Attested {
  readonly id: string
  readonly years?: readonly [number, number]
  /** To either side, in degF. */
  readonly widen: number
}

/** A cook's test of an oven without a thermometer. */
export interface OvenTestRow extends Attested {
  readonly id: string
  readonly kind: 'paper' | 'flour' | 'hand' | 'sight'
  readonly observation: string
  readonly meaning: string
  /** 0 unchanged, 1 light yellow, 2 dark yellow, 3 light brown, 4 golden brown, 5 dark brown, 6 black. */
  readonly colour?: number
  /** When the colour shows, or how long the hand is borne. */
  readonly seconds?: number
  /** The heat that the test stands for. */
  readonly heat: string
  /** Degrees where the source itself prints them. */
  readonly degF?: readonly [number, number]
  readonly year: number
}

/** A mark of the British gas-oven regulator. */
export interface GasMarkRow extends Attested {
  readonly id: string
  readonly mark: string
  readonly value: number
  readonly degF: number
  /** What British books print beside the mark, in degC. */
  readonly printed: readonly [number, number]
  readonly words: string
}

/** A published rule for setting a fan oven. */
export interface FanRuleRow extends Attested {
  readonly id: string
  readonly label: string
  /** Taken off the setting of an oven without a fan, in degC. */
  readonly less?: number
  /** Pairs of settings, without and with a fan, in degC. */
  readonly pairs?: readonly (readonly [number, number])[]
  /** Minutes taken off each hour. */
  readonly minutesAnHour: number
}

/** Words of a dated book for a sugar height or the warmth of a liquid. */
export interface PeriodName {
  readonly words: string
  readonly years?: readonly [number, number]
  readonly source?: string
}

/** A height to which sugar is boiled. */
export interface SugarHeightRow extends Attested {
  readonly id: string
  readonly rank: number
  readonly label: string
  readonly names: readonly PeriodName[]
  readonly degF: Spread
  /** The degree that a book prints for this height, and no other: books before it print none. */
  readonly printed?: { readonly degF: number; readonly source: Citation; readonly year: number }
  readonly test: string
}

/** The warmth of a liquid by its kitchen name. */
export interface LiquidHeatRow extends Attested {
  readonly id: string
  readonly rank: number
  readonly label: string
  readonly names: readonly PeriodName[]
  readonly degF: Spread
  /** What dated books print. */
  readonly printed: readonly {
    readonly low: number
    readonly high: number
    readonly year: number
    readonly source: Citation
    readonly note?: string
  }[]
}
