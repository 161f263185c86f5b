import { badOption, requireWord } from '../error.js'
import { sayNearest } from '../nearest.js'
import { type HeatRow, heats } from '../tables/index.js'
import { coreOf, type Ends } from './consensus.js'
import { tidy, toCelsius } from './degrees.js'

/** A heat by its place on the scale, from 0 for drying upwards. */
export interface HeatName {
  readonly id: string
  readonly rank: number
  readonly label: string
}

/** What a row is called, without all that is known of it. */
export const nameOf = ({ id, rank, label }: HeatRow): HeatName => ({ id, rank, label })

const rows: readonly HeatRow[] = [...heats].sort((a, b) => a.rank - b.rank)
const byId = new Map(rows.map((row) => [row.id, row]))
const byRank = new Map(rows.map((row) => [row.rank, row]))
const cores = new Map(rows.map((row) => [row.id, coreOf(row)]))

export function heatRows(): readonly HeatRow[] {
  return rows
}

/** @throws PottleError `bad-option` with the nearest ids for an unknown one */
export function heatRow(id: string): HeatRow {
  const row = byId.get(requireWord('heat', id))
  if (!row) throw badOption('heat', `"${id.slice(0, 40)}" is not a heat${sayNearest(id, [...byId.keys()])}`)
  return row
}

/** The heat of a rank; the last one where the rank lies off the scale. */
export function heatOfRank(rank: number): HeatRow {
  return byRank.get(Math.max(0, Math.min(rows.length - 1, rank)))!
}

/** The ends of a heat in degF before widening, and whether its books vote for them. */
export function coreOfHeat(id: string): Ends & { readonly byVote: boolean } {
  return cores.get(heatRow(id).id)!
}

/** The middle of a heat, in degC. */
export function bestOfHeat(id: string): number {
  const { low, high } = coreOfHeat(id)
  return tidy(toCelsius((low + high) / 2))
}

/** The step of the scale whose middle is nearest. */
export function heatNearest(celsius: number): HeatRow {
  const off = (row: HeatRow): number => Math.abs(bestOfHeat(row.id) - celsius)
  return rows.reduce((nearest, row) => (off(row) < off(nearest) ? row : nearest))
}
