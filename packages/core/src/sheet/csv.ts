import type { Sheet, SheetLine } from './sheet.js'

type Cell = string | number | boolean | null

const columns: readonly (readonly [string, (line: SheetLine, sheet: Sheet) => Cell])[] = [
  ['line', ({ number }) => number],
  ['start', ({ start }) => start],
  ['end', ({ end }) => end],
  ['phrase', ({ phrase }) => phrase],
  ['thing', ({ thing }) => thing],
  ['part', ({ part }) => part],
  ['amount_low', ({ amount }) => amount?.low ?? null],
  ['amount_high', ({ amount }) => amount?.high ?? null],
  ['measure', ({ measure }) => measure],
  ['sense', ({ chosen }) => chosen?.id ?? null],
  ['sense_label', ({ chosen }) => chosen?.label ?? null],
  ['likelihood', ({ chosen }) => chosen?.likelihood ?? null],
  ['quantity', ({ value }) => value?.quantity ?? null],
  ['unit', ({ value }) => value?.unit ?? null],
  ['low', ({ value }) => value?.low ?? null],
  ['best', ({ value }) => value?.best ?? null],
  ['high', ({ value }) => value?.high ?? null],
  ['coverage', ({ value }) => value?.coverage ?? null],
  ['scale', (_, { scale }) => scale.factor],
  ['working_amount', ({ working }) => working?.amount ?? null],
  ['working_unit', ({ working }) => working?.unit ?? null],
  ['working_text', ({ working }) => working?.text ?? null],
  ['working_metric', ({ working }) => working?.metric ?? null],
  ['moved', ({ working }) => working?.moved ?? null],
  ['estimate', ({ estimate }) => estimate],
  ['note', ({ note }) => note],
  ['sources', ({ sources }, sheet) => sources.map((number) => sheet.sources[number - 1]!.id).join(' ')],
]

/** Characters that a spreadsheet takes for the beginning of a formula, at the head of a cell. */
const formula = /^[\s]{0,20}[=+\-@＝＋－＠]|^[\t\r]/

function cell(value: Cell): string {
  if (value === null) return ''
  if (typeof value !== 'string') return String(value)
  const guarded = formula.test(value) ? `'${value}` : value
  return /["\r\n,]/.test(guarded) ? `"${guarded.replaceAll('"', '""')}"` : guarded
}

/**
 * The lines of a sheet as CSV (RFC 4180): a header, a line for each measured thing, CRLF at the end of each.
 *
 * Text that a spreadsheet would run as a formula gets an apostrophe before it.
 *
 * @example sheetToCsv(workSheet('Take a pint of cream', { year: 1690 })).split('\r\n')[1].slice(0, 24)   // '1,5,20,a pint of cream,c'
 */
export function sheetToCsv(sheet: Sheet): string {
  const header = columns.map(([name]) => name)
  const rows = sheet.lines.map((line) => columns.map(([, read]) => cell(read(line, sheet))))
  return [header, ...rows].map((row) => `${row.join(',')}\r\n`).join('')
}
