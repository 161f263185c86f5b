import type { GoodRow, UsageRow } from '../tables/index.js'
import { holds, usage } from '../tables/index.js'

/** What a measure was used for, and when: the facts that usage rows are chosen by. */
export interface Use {
  readonly measure: string
  /** Every name and class of the thing, the narrowest first; empty where no thing was named. */
  readonly thing: readonly string[]
  readonly year: number
  readonly places: readonly string[]
}

const byFamily = new Map<string, UsageRow[]>()
for (const row of usage) byFamily.set(row.family, [...(byFamily.get(row.family) ?? []), row])

/** All that is known of which standards of a family were used. */
export const usageOf = (family: string): readonly UsageRow[] => byFamily.get(family) ?? []

/** The names a thing answers to in usage and sense rows: its id, then its classes from the narrowest to the widest. */
export function namesOf(thing: string | null, good: GoodRow | undefined): readonly string[] {
  if (good) return [good.id, ...[...good.classes].reverse()]
  return thing ? [thing] : []
}

/** How narrowly a row fits: the measure first, then the thing, then the place, then the shortness of its years. Undefined where it does not fit. */
function fit(row: UsageRow, use: Use): number | undefined {
  if (!holds(row, use.year, use.places)) return undefined
  if (row.measures && !row.measures.includes(use.measure)) return undefined
  const rank = row.things ? use.thing.findIndex((name) => row.things!.includes(name)) : use.thing.length
  if (rank < 0) return undefined
  const thingNarrow = row.things ? 100 - rank : 0
  const placeNarrow = row.place ? 10 - use.places.indexOf(row.place) : 0
  const span = row.years ? row.years[1] - row.years[0] : 1000
  return (row.measures ? 1e9 : 0) + thingNarrow * 1e6 + placeNarrow * 1e3 - span / 10
}

/** The row that says most narrowly which standards of a family a use went by; undefined where none speaks. */
export function usageFor(family: string, use: Use): UsageRow | undefined {
  let best: UsageRow | undefined
  let bestFit = Number.NEGATIVE_INFINITY
  for (const row of usageOf(family)) {
    const narrow = fit(row, use)
    if (narrow !== undefined && narrow > bestFit) {
      best = row
      bestFit = narrow
    }
  }
  return best
}
