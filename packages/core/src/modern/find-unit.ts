import { type ModernUnitRow, modernUnits } from '../tables/index.js'

const byId = new Map(modernUnits.map((row) => [row.id, row]))

export function findUnit(id: string): ModernUnitRow | undefined {
  return byId.get(id)
}

export function unitIds(): readonly string[] {
  return [...byId.keys()]
}
