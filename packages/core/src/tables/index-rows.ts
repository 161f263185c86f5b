import { once } from '../once.js'

/**
 * Rows by their id and by every other name; an id wins over another row's name, and the earlier of two rows has a name that both bear.
 *
 * @param keyOf what a name is compared by; its very letters where nothing is said
 * @returns the index, made when it is first asked for
 * @example byName(measures, (name) => name.toUpperCase())().get('POTTLE')?.id   // 'pottle'
 */
export function byName<Row extends { readonly id: string; readonly names: readonly string[] }>(
  rows: readonly Row[],
  keyOf: (name: string) => string = (name) => name,
): () => ReadonlyMap<string, Row> {
  return once(() => {
    const index = new Map<string, Row>()
    for (const row of rows) for (const name of row.names.map(keyOf)) if (!index.has(name)) index.set(name, row)
    for (const row of rows) index.set(keyOf(row.id), row)
    return index
  })
}

/** Rows by their id alone; the index is made when it is first asked for. */
export function byId<Row extends { readonly id: string }>(rows: readonly Row[]): () => ReadonlyMap<string, Row> {
  return once(() => new Map(rows.map((row) => [row.id, row])))
}
