import type { Band } from '../bands/index.js'
import type { ModernValue } from '../modern/index.js'
import type { HeatRow } from '../tables/index.js'
import { method } from './consensus.js'
import { tidy, toCelsius } from './degrees.js'
import { claimsFor, goodsFor, testsFor } from './evidence.js'
import { bandForYear } from './find-heat.js'
import type { HeatClaim, HeatGoods } from './reading.js'
import { coreOfHeat, type HeatName, heatRow, heatRows } from './scale.js'
import { modernSettings } from './settings.js'
import type { OvenTest } from './tests.js'

/** One step of the scale of oven heats, with everything that is known of it. */
export interface OvenHeat extends HeatName {
  /** Other words for it, with the years that they are confined to. */
  readonly aliases: readonly { readonly words: string; readonly years: readonly [number, number] | null }[]
  /** In degC, for words without a year. */
  readonly band: Band
  /** The ends before widening, in degC, and whether its books vote for them. */
  readonly core: { readonly low: number; readonly high: number; readonly byVote: boolean }
  readonly modern: readonly ModernValue[]
  readonly claims: readonly HeatClaim[]
  readonly goods: readonly HeatGoods[]
  readonly tests: readonly OvenTest[]
  readonly method: string
}

function asHeat({ id, rank, label, names }: HeatRow): OvenHeat {
  const core = coreOfHeat(id)
  const band = bandForYear(core, rank, null)
  return {
    id,
    rank,
    label,
    aliases: names.map(({ words, years = null }) => ({ words, years })),
    band,
    core: { low: tidy(toCelsius(core.low)), high: tidy(toCelsius(core.high)), byVote: core.byVote },
    modern: modernSettings(band),
    claims: claimsFor(id, null),
    goods: goodsFor([id], null),
    tests: testsFor(id, null),
    method,
  }
}

const all: readonly OvenHeat[] = heatRows().map(asHeat)

/**
 * Every oven heat, from drying to scorching: its band in degC for words without a year, and all that is known of it.
 *
 * @example allHeats().map(({ id }) => id)[4]   // 'slow'
 */
export function allHeats(): readonly OvenHeat[] {
  return all
}

/**
 * One oven heat.
 *
 * @throws PottleError `bad-option` with the nearest ids for an unknown one
 * @example heatById('moderate').rank   // 6
 */
export function heatById(id: string): OvenHeat {
  const known = heatRow(id).id
  return all.find((heat) => heat.id === known)!
}
