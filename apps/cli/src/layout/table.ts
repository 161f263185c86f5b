import { clean, padEnd, padStart, widthOf, wrap } from './text.js'

export interface Column {
  readonly align?: 'right'
  /** Takes what the others leave and is wrapped there; one column of a table at most. */
  readonly wraps?: true
  /** Holds a drawing, which is set as it is, or left out where there is no room for columns. */
  readonly drawn?: true
  /** Makes a cell stand out, or stand back. */
  readonly ink?: (text: string) => string
}

type Row = readonly string[]

const gap = '  '
const margin = '  '
/** In a narrower column than this a text is a pile of words. */
const leastText = 20
/** A longer first cell stands alone on its line. */
const longestKey = 12

const asIs = (text: string): string => text

/** How wide each column is; null where the text would have no room beside the others. */
function widthsFor(columns: readonly Column[], rows: readonly Row[], width: number): readonly number[] | null {
  const natural = columns.map((_, i) => Math.max(0, ...rows.map((row) => widthOf(row[i]!))))
  const over = margin.length + gap.length * (columns.length - 1) + natural.reduce((sum, one) => sum + one, 0) - width
  if (over <= 0) return natural
  const at = columns.findIndex(({ wraps }) => wraps)
  const left = at < 0 ? 0 : natural[at]! - over
  return left >= leastText ? natural.map((one, i) => (i === at ? left : one)) : null
}

function setCell({ align, ink = asIs }: Column, text: string, width: number): string {
  const blanks = ' '.repeat(Math.max(0, width - widthOf(text)))
  return align === 'right' ? `${blanks}${ink(text)}` : `${ink(text)}${blanks}`
}

function setRow(columns: readonly Column[], row: Row, widths: readonly number[]): readonly string[] {
  const cells = row.map((cell, i) => (columns[i]!.wraps ? wrap(cell, widths[i]!) : [cell]))
  const height = Math.max(...cells.map(({ length }) => length))
  return Array.from({ length: height }, (_, line) => {
    const set = cells.map((cell, i) => setCell(columns[i]!, cell[line] ?? '', widths[i]!))
    return `${margin}${set.join(gap)}`.trimEnd()
  })
}

/** A row where there is no room for columns: the first cell at the side, the others one under another. */
function stackRow(columns: readonly Column[], [first = '', ...rest]: Row, width: number, keys: number): readonly string[] {
  const beside = keys <= longestKey
  const indent = ' '.repeat(margin.length + (beside ? keys + gap.length : gap.length))
  const body = rest.flatMap((cell, i) => {
    const { drawn, ink = asIs } = columns[i + 1]!
    return drawn ? [] : wrap(cell, width - indent.length).map((line) => `${indent}${ink(line)}`)
  })
  const [column] = columns
  const padded = column?.align === 'right' ? padStart(first, keys) : padEnd(first, keys)
  const { ink = asIs } = column!
  if (!beside) return [...wrap(first, width - margin.length).map((line) => `${margin}${ink(line)}`), ...body]
  const [top = '', ...below] = body
  return [`${margin}${ink(padded)}${top.slice(margin.length + keys)}`.trimEnd(), ...below]
}

/** Sets rows in columns where they fit the width, and one cell under another where they don't. */
export function table(columns: readonly Column[], rows: readonly Row[], width: number): readonly string[] {
  const tidy = rows.map((row) => row.map((cell, i) => (columns[i]!.drawn ? cell : clean(cell))))
  const widths = widthsFor(columns, tidy, width)
  if (widths) return tidy.flatMap((row) => setRow(columns, row, widths))
  const keys = Math.max(0, ...tidy.map(([first = '']) => widthOf(first)))
  return tidy.flatMap((row) => stackRow(columns, row, width, keys))
}
