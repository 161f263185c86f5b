import { badOption } from './error.js'

/** First and last year a date may mean, and whether its writer hedged it. */
export interface YearSpan {
  readonly from: number
  readonly to: number
  readonly hedged: boolean
}

const endpoint = /^(\d{2}(?:\d\d|\dX|XX))(?:-\d\d(?:-\d\d)?)?([?~%]?)$/
const forms = 'write a year in EDTF: 1690, 1690~ (about), 169X (the 1690s), 16XX, or 1650/1700'

function readEnd(text: string): YearSpan {
  const [, year, hedge] = endpoint.exec(text) ?? []
  if (!year) throw badOption('year', `"${text.slice(0, 40)}" is not a year; ${forms}`)
  return { from: Number(year.replaceAll('X', '0')), to: Number(year.replaceAll('X', '9')), hedged: hedge !== '' }
}

/**
 * Reads a year, an uncertain year or an interval in EDTF level 1 (ISO 8601-2:2019, annex A).
 * Months and days are accepted and dropped: no table here is finer than a year.
 *
 * @throws PottleError `bad-option` for anything else, and for an interval that ends before it begins
 * @example readEdtf('169X')   // { from: 1690, to: 1699, hedged: false }
 */
export function readEdtf(text: string): YearSpan {
  const ends = text.trim().split('/')
  if (ends.length > 2) throw badOption('year', `"${text.slice(0, 40)}" has more than two ends; ${forms}`)
  const first = readEnd(ends[0]!)
  const last = ends.length === 2 ? readEnd(ends[1]!) : first
  if (last.to < first.from) throw badOption('year', `"${text.slice(0, 40)}" ends before it begins; put the earlier year first`)
  return { from: first.from, to: last.to, hedged: first.hedged || last.hedged }
}
