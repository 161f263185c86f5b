import { type HeatClaimRow, type HeatWitnessRow, heatClaims, heatWitnesses, ovenTests } from '../tables/index.js'
import { cited } from './cited.js'
import { votes } from './consensus.js'
import type { HeatClaim, HeatGoods } from './reading.js'
import { asTest, type OvenTest } from './tests.js'

function asClaim(row: HeatClaimRow): HeatClaim {
  const { id, duty, low, high = null, unit, year } = row
  return { id, duty, low, high, unit, year, ...cited(row), votes: votes(row) }
}

/** Nearest in time first; in the order of the years where none is asked for. */
function inTime<Row extends { readonly year: number; readonly id: string }>(rows: readonly Row[], year: number | null): readonly Row[] {
  const off = (row: Row): number => (year === null ? row.year : Math.abs(row.year - year))
  return [...rows].sort((a, b) => off(a) - off(b) || a.year - b.year || (a.id < b.id ? -1 : 1))
}

/** Rows by their heat, brought into their public form once. */
function byHeat<Row extends { readonly heat?: string }, Shown>(
  rows: readonly Row[],
  show: (row: Row) => Shown,
): ReadonlyMap<string, readonly Shown[]> {
  const index = new Map<string, Shown[]>()
  for (const row of rows) if (row.heat !== undefined) index.set(row.heat, [...(index.get(row.heat) ?? []), show(row)])
  return index
}

function asGoods(row: HeatWitnessRow): HeatGoods {
  const { id, phrase, goods, year } = row
  const { source, sources } = cited(row)
  return { id, phrase, goods, year, source, sources }
}

const claims = byHeat(heatClaims, asClaim)
const witnesses = byHeat(heatWitnesses, asGoods)
const tests = byHeat(ovenTests, asTest)

/** What dated sources print for a heat, nearest in time first. */
export function claimsFor(heat: string, year: number | null): readonly HeatClaim[] {
  return inTime(claims.get(heat) ?? [], year)
}

/** What dated books baked at a heat, or at a relation such as `after.bread`. */
export function goodsFor(heats: readonly string[], year: number | null): readonly HeatGoods[] {
  return inTime(
    heats.flatMap((heat) => witnesses.get(heat) ?? []),
    year,
  )
}

/** The tests by which dated books know a heat. */
export function testsFor(heat: string, year: number | null): readonly OvenTest[] {
  return inTime(tests.get(heat) ?? [], year)
}
