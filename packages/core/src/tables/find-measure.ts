import { byName } from './index-rows.js'
import { measures } from './rows/measures.js'
import type { MeasureRow } from './schema/index.js'

const index = byName(measures)

/**
 * A weight, capacity or count by its modern name or a listed spelling; undefined where the tables have none.
 *
 * @example findMeasure('pottle')?.kind   // 'capacity'
 */
export function findMeasure(name: string): MeasureRow | undefined {
  return index().get(name)
}
