import { citeShort } from '../cite/index.js'
import { type HeatClaimRow, heatWitnesses, ovenTests } from '../tables/index.js'
import { claimsOf, votes } from './consensus.js'
import type { HeatClaim, HeatGoods } from './reading.js'
import { asTest, type OvenTest } from './tests.js'

function asClaim(row: HeatClaimRow): HeatClaim {
  const { id, duty, low, high = null, unit, year, source, grade, checked, note = null } = row
  return {
    id,
    duty,
    low,
    high,
    unit,
    year,
    source: source.map(citeShort).join('; '),
    sources: source,
    grade,
    checked,
    votes: votes(row),
    note,
  }
}

/** Nearest in time first; in the order of the years where none is asked for. */
function inTime<Row extends { readonly year: number; readonly id: string }>(rows: readonly Row[], year: number | null): readonly Row[] {
  const off = (row: Row): number => (year === null ? row.year : Math.abs(row.year - year))
  return [...rows].sort((a, b) => off(a) - off(b) || a.year - b.year || (a.id < b.id ? -1 : 1))
}

/** What dated sources print for a heat, nearest in time first. */
export function claimsFor(heat: string, year: number | null): readonly HeatClaim[] {
  return inTime(claimsOf(heat), year).map(asClaim)
}

/** What dated books baked at a heat, or at a relation such as `after.bread`. */
export function goodsFor(heats: readonly string[], year: number | null): readonly HeatGoods[] {
  const rows = heatWitnesses.filter(({ heat }) => heats.includes(heat))
  return inTime(rows, year).map(({ phrase, goods, year: said, source }) => ({
    phrase,
    goods,
    year: said,
    source: source.map(citeShort).join('; '),
    sources: source,
  }))
}

export function testsFor(heat: string, year: number | null): readonly OvenTest[] {
  return inTime(
    ovenTests.filter((row) => row.heat === heat),
    year,
  ).map(asTest)
}
