import { byName } from '../tables/index.js'

/**
 * A name as the tables of this room compare it: no case, hyphens, apostrophes, *-ful* or plural.
 *
 * @example keyOf('Table-spoonfuls')   // 'tablespoon'
 * @example keyOf("hen's egg")         // 'henegg'
 */
export function keyOf(name: string): string {
  const words = name
    .slice(0, 80)
    .toLowerCase()
    .replace(/['’]s\b/g, '')
    .split(/[^a-z0-9]{1,80}/)
    .filter((word) => word !== '' && word !== 'a' && word !== 'an' && word !== 'the')
  const joined = words.map(singular).join('')
  return singular(joined.replace(/(?<=.)full?$/, ''))
}

/** `eggs` is egg and `berries` berry, but `glass` and `pease` stay. */
function singular(word: string): string {
  if (word.length < 4 || word.endsWith('ss') || word.endsWith('us')) return word
  if (word.endsWith('ies')) return `${word.slice(0, -3)}y`
  if (word.endsWith('sses') || word.endsWith('shes') || word.endsWith('ches')) return word.slice(0, -2)
  return word.endsWith('s') ? word.slice(0, -1) : word
}

/** Rows by every name they have, compared as `keyOf` compares. */
export function byKey<Row extends { readonly id: string; readonly names: readonly string[] }>(
  rows: readonly Row[],
): () => ReadonlyMap<string, Row> {
  return byName(rows, keyOf)
}
