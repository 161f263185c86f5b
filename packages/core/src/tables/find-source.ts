import { byId } from './index-rows.js'
import { sources } from './rows/sources.js'
import type { SourceRow } from './schema/index.js'

const index = byId(sources)

/**
 * A source by its id.
 *
 * @returns its CSL-JSON item; undefined where the tables have none of that id
 * @example findSource('digby-1669')?.issued   // { 'date-parts': [[1669]] }
 */
export function findSource(id: string): SourceRow | undefined {
  return index().get(id)
}
