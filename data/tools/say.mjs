/** One fault: its table, its row, and what is wrong and what would be right. */
export const say = (table, row, said) => ({ table, row: row?.id ?? '(no id)', said })

/**
 * Every object inside a row, the row itself first, with the path to it: rules about spreads, years and sources hold at any depth.
 *
 * @returns {{path: string, part: object}[]}
 */
export function partsOf(row, path = '') {
  if (row === null || typeof row !== 'object') return []
  const inside = Object.entries(row).flatMap(([key, part]) => partsOf(part, path ? `${path}.${key}` : key))
  return Array.isArray(row) ? inside : [{ path, part: row }, ...inside]
}
