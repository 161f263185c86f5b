import { byId } from './index-rows.js'
import { sources } from './rows/sources.js'
import type { SourceRow } from './schema/index.js'

const index = byId(sources)

export function findSource(id: string): SourceRow | undefined {
  return index.get(id)
}
