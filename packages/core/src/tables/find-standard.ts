import { byId } from './index-rows.js'
import { standards } from './rows/standards.js'
import type { StandardRow } from './schema/index.js'

const index = byId(standards)
const families = new Map<string, StandardRow[]>()
for (const row of standards) families.set(row.family, [...(families.get(row.family) ?? []), row])

/**
 * A standard by its id; undefined where the tables have none.
 *
 * @example findStandard('gallon.wine')?.value   // '231 in3'
 */
export function findStandard(id: string): StandardRow | undefined {
  return index().get(id)
}

/**
 * Every standard of a family, in the order of the table; none for a family that the tables do not know.
 *
 * @example standardsOf('gallon').map(({ id }) => id).includes('gallon.ale')   // true
 */
export function standardsOf(family: string): readonly StandardRow[] {
  return families.get(family) ?? []
}
