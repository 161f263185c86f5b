import type { Band } from '../bands/index.js'
import type { Step } from '../cite/index.js'
import type { ModernValue } from '../modern/index.js'
import type { Grade } from '../tables/index.js'
import type { Cited } from './cited.js'
import type { HeatName } from './scale.js'
import type { OvenTest } from './tests.js'

/** What one dated source prints, in its own unit. */
export interface HeatClaim extends Cited {
  readonly id: string
  readonly duty: string
  readonly low: number
  /** Null where the source gives only a lower end. */
  readonly high: number | null
  readonly unit: 'degC' | 'degF'
  readonly year: number
  /** Whether it counts towards the heat's ends. */
  readonly votes: boolean
}

/** What a dated book baked at a heat. */
export interface HeatGoods extends Pick<Cited, 'source' | 'sources'> {
  readonly id: string
  readonly phrase: string
  readonly goods: string
  readonly year: number
}

/** Everything that is known of a heat phrase. */
export interface HeatReading {
  readonly phrase: string
  readonly setting: { readonly year: number | null }
  readonly heat: HeatName
  /** In degC, for an oven without a fan. */
  readonly value: Band & { readonly quantity: 'temperature'; readonly unit: 'degC' }
  /** The ends before they were widened for the year, in degC. */
  readonly core: { readonly low: number; readonly high: number }
  readonly modern: readonly ModernValue[]
  /** Nearest in time first. */
  readonly claims: readonly HeatClaim[]
  readonly goods: readonly HeatGoods[]
  readonly tests: readonly OvenTest[]
  /** Set where the words tell the heat by what else is baked. */
  readonly relation: { readonly id: string; readonly label: string; readonly falling: boolean } | null
  readonly of: 'oven' | 'fire'
  /** How likely this heat is beside the others that the words may mean. */
  readonly likelihood: number
  readonly others: readonly (HeatName & { readonly likelihood: number; readonly value: Band; readonly note: string | null })[]
  readonly steps: readonly Step[]
  /** The grade of the weakest step: no derivation is surer. */
  readonly weakest: Grade
  readonly notes: readonly string[]
  readonly unread: readonly string[]
  /** The second heat of *quick at first, then slow*. */
  readonly then: HeatReading | null
  readonly method: string
}

/** When the words were written; no year means that it is not known. */
export interface HeatSetting {
  readonly year?: number
}
