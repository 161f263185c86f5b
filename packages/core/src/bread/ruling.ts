import { changesIn, ink, line, type Paper, plate, quiet, text } from './plate.js'

/** Ledger lines at round grams; round ounces stand in the right column, each with a stroke of its own. */
export function ruling({ years, weights, ounces }: Paper): string {
  const { left, right, head, foot } = plate
  const label = { 'font-size': 15 }
  const rules = weights.ticks.map(
    ({ value, at: y }) => line(left, y, right, y, ink.faint) + text(left - 12, y + 5, String(value), 'end', label),
  )
  const strokes = ounces.map(
    ({ value, at: y }) => line(right, y, right + 7, y, ink.margin) + text(right + 12, y + 5, String(value), 'start', label),
  )
  const dates = years.ticks.map(
    ({ value, at: x }) => line(x, foot, x, foot + 6, ink.line) + text(x, foot + 24, String(value), 'middle', label),
  )
  const columns = [
    line(left, head, left, foot, ink.margin),
    line(left - 3, head, left - 3, foot, ink.margin),
    line(right, head, right, foot, ink.margin),
    line(left, foot, right, foot, ink.line),
    text(left - 12, head - 14, 'grams', 'end', quiet),
    text(right + 12, head - 14, 'ounces', 'start', quiet),
  ]
  return [...rules, ...strokes, ...dates, ...columns].join('\n')
}

/** Room that the year of a change of law needs beside its neighbours. */
const room = 42

/** A dotted rule where the law of bread changed, with its year where there is room for it. */
export function changes({ series, years }: Paper): string {
  let free = plate.left
  return changesIn(series)
    .map((year) => {
      const x = years.place(year)
      const rule = line(x, plate.head, x, plate.foot, ink.quiet, { 'stroke-dasharray': '2 4' })
      if (x - room / 2 < free) return rule
      free = x + room / 2
      return rule + text(Math.min(x, plate.right - room / 2), plate.head - 14, String(year), 'middle', quiet)
    })
    .join('\n')
}
