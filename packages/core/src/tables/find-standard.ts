import { byId } from './index-rows.js'
import { standards } from './rows/standards.js'
import type { StandardRow } from './schema/index.js'

const index = byId(standards)
const families = new Map<string, StandardRow[]>()
for (const row of standards) families.set(row.family, [...(families.get(row.family) ?? []), row])

/** A standard by its id. */
export function findStandard(id: string): StandardRow | undefined {
  return index.get(id)
}

/** Every standard of a family, in the order of the table. */
export function standardsOf(family: string): readonly StandardRow[] {
  return families.get(family) ?? []
}
