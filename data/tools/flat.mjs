/**
 * Tables as sheets of plain cells, for CSV. A pure function: it reads and writes no file. `data/README.md` tells a reader the same rules:
 *
 * - a named part has a column of its own, `density.low`; a span of years has two, `years.from` and `years.to`
 * - a list of plain values is one cell, its items divided by `|`; so are citations, `digby-1669: p. 3`, and shares, `gallon.wine: 0.7`
 * - a list of rows, such as the senses of a measure, is a sheet of its own, `measures.senses`, whose rows name the row that they belong to
 */

/** The mark between the items of a cell. */
const mark = '|'

/** Fields whose keys are ids of other rows, so that no column could be named for them. */
const shares = new Set(['weights'])

/** What rows say about themselves stands last, as people look for it there. */
const last = ['years.from', 'years.to', 'place', 'reason', 'source', 'grade', 'checked', 'note']

const isObject = (value) => value !== null && typeof value === 'object' && !Array.isArray(value)
const isCitations = (key, value) => key === 'source' && Array.isArray(value)
const isRows = (key, value) => Array.isArray(value) && !isCitations(key, value) && value.some(isObject)

/** A list as one cell. An item with the mark in it could not be told from two. */
function listed(items, path) {
  const torn = items.find((item) => String(item).includes(mark))
  if (torn !== undefined) throw new Error(`${path}: "${torn}" has a ${mark}, which divides the items of a cell: write it otherwise`)
  return { type: 'list', item: items.every((item) => typeof item === 'number') ? 'number' : 'string', text: items.join(mark) }
}

/** The cells of one field: its path and value, or those of its parts. */
function cellsOf(path, key, value) {
  if (key === 'years') return value.flatMap((year, i) => cellsOf(`${path}.${['from', 'to'][i]}`, '', year))
  if (isCitations(key, value))
    return [
      [
        path,
        listed(
          value.map(({ id, at }) => (at === undefined ? id : `${id}: ${at}`)),
          path,
        ),
      ],
    ]
  if (shares.has(key))
    return [
      [
        path,
        listed(
          Object.entries(value).map(([id, share]) => `${id}: ${share}`),
          path,
        ),
      ],
    ]
  if (isObject(value)) return Object.entries(value).flatMap(([part, inner]) => cellsOf(`${path}.${part}`, part, inner))
  if (Array.isArray(value))
    return [
      [
        path,
        listed(
          value.map((item) => (Array.isArray(item) ? item.join(' ') : item)),
          path,
        ),
      ],
    ]
  return [[path, { type: typeof value, text: String(value) }]]
}

const rank = ({ name }) => last.indexOf(name)

/** Rows of cells as a sheet: a column for each path that any row has. */
function sheetOf(name, rows) {
  const columns = new Map()
  for (const [path, { type, item }] of rows.flat()) {
    const known = columns.get(path)
    if (known && known.type !== type) throw new Error(`${name}, ${path}: here a ${known.type} and there a ${type}: write one of them`)
    // A list without items says nothing of their type.
    columns.set(path, { name: path, type, ...(item ? { item: known?.item === 'string' ? 'string' : item } : {}) })
  }
  const ordered = [...columns.values()].sort((a, b) => rank(a) - rank(b))
  const cells = rows.map((row) => {
    const byPath = new Map(row)
    return ordered.map((column) => byPath.get(column.name)?.text ?? '')
  })
  return { name, columns: ordered, cells }
}

/**
 * A table as one sheet, and one more for each of its lists of rows.
 *
 * @param {string} name
 * @param {readonly object[]} rows
 * @returns {{name: string, columns: {name: string, type: string, item?: string}[], cells: string[][]}[]}
 */
export function flatten(name, rows) {
  const inner = [...new Set(rows.flatMap((row) => Object.keys(row).filter((key) => isRows(key, row[key]))))]
  const own = rows.map((row) =>
    Object.entries(row)
      .filter(([key]) => !inner.includes(key))
      .flatMap(([key, value]) => cellsOf(key, key, value)),
  )
  const within = inner.map((key) =>
    sheetOf(
      `${name}.${key}`,
      rows.flatMap((row) =>
        (row[key] ?? []).map((part, i) => [
          ['row', { type: 'string', text: row.id }],
          ['nth', { type: 'number', text: String(i + 1) }],
          ...Object.entries(part).flatMap(([field, value]) => cellsOf(field, field, value)),
        ]),
      ),
    ),
  )
  return [sheetOf(name, own), ...within]
}
