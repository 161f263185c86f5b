import type { Sheet } from './sheet.js'

/** A stretch of the text: plain, a measure with the numbers of its lines, or words of a heat. Put together they are the text again. */
export interface Stretch {
  readonly text: string
  readonly numbers: readonly number[]
  readonly heat: boolean
}

interface Mark {
  readonly start: number
  readonly end: number
  readonly numbers: number[]
  readonly heat: boolean
}

function marksOf({ lines, oven, warmths }: Sheet): readonly Mark[] {
  const marks = new Map<string, Mark>()
  for (const { start, end, number } of lines) {
    const mark = marks.get(`${start}-${end}`) ?? { start, end, numbers: [], heat: false }
    mark.numbers.push(number)
    marks.set(`${start}-${end}`, mark)
  }
  const heats = [...oven, ...warmths].flatMap(({ start, end }) =>
    start === null || end === null ? [] : [{ start, end, numbers: [], heat: true }],
  )
  return [...marks.values(), ...heats].sort((a, b) => a.start - b.start || b.end - a.end)
}

/**
 * Cuts the text of a sheet at its measures and heats.
 *
 * A mark that begins inside another is cut short, so that no character is told twice.
 *
 * @example stretchesOf(workSheet('Take a pint of cream.')).map(({ text }) => text)   // ['Take ', 'a pint of cream', '.']
 */
export function stretchesOf(sheet: Sheet): readonly Stretch[] {
  const { text } = sheet
  const stretches: Stretch[] = []
  let at = 0
  for (const { start, end, numbers, heat } of marksOf(sheet)) {
    const from = Math.max(start, at)
    if (from >= end) continue
    if (from > at) stretches.push({ text: text.slice(at, from), numbers: [], heat: false })
    stretches.push({ text: text.slice(from, end), numbers, heat })
    at = end
  }
  if (at < text.length) stretches.push({ text: text.slice(at), numbers: [], heat: false })
  return stretches
}
