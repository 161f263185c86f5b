/**
 * One fault: its table, its row, and what is wrong and what would be right.
 *
 * @param row the row, or words that say which it is where it has no name
 */
export const say = (table, row, said) => ({ table, row: typeof row === 'string' ? row : (row?.id ?? '(no id)'), said })

/** The name of what stands in a list: its id, or its number from 1. */
const nameOf = (item, i) => (typeof item?.id === 'string' ? `"${item.id}"` : String(i + 1))

/** The words for a way into a row, from its fields and the numbers of lists: `senses "firkin.butter", ratio`. */
export function sayPath(row, path) {
  let words = ''
  let at = row
  for (const key of path) {
    if (Array.isArray(at)) words += ` ${nameOf(at[key], Number(key))}`
    else words += words ? `, ${key}` : key
    at = at?.[key]
  }
  return words
}

/**
 * Every object inside a row, the row itself first, with the way to it in words: rules about spreads, years and sources hold at any depth.
 *
 * @returns {{path: string, part: object}[]}
 */
export function partsOf(row) {
  const inside = (value, path) => {
    if (value === null || typeof value !== 'object') return []
    const within = Object.entries(value).flatMap(([key, part]) => inside(part, [...path, key]))
    return Array.isArray(value) ? within : [{ path: sayPath(row, path), part: value }, ...within]
  }
  return inside(row, [])
}

/** A fault inside a row, behind the words for where. */
export const inside = (path, said) => (path ? `${path}: ${said}` : said)
