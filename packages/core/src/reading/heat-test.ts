import { amountAt } from './amount.js'
import type { Line } from './line.js'
import { unitAt } from './unit.js'
import { the } from './vocabulary.js'
import { Role } from './word.js'

/** What an oven does to the paper or the flour that tries it. */
const colouring = new Set([
  'brown',
  'browning',
  'colour',
  'colouring',
  'color',
  'scorch',
  'scorching',
  'burn',
  'burning',
  'turn',
  'tinge',
  'singe',
])

const isFigure = (line: Line, at: number): boolean => line.at(at) === the.paper || line.at(at) === the.flour

/** The end of *in five minutes*, or of nothing. */
function pastTime(line: Line, at: number): number {
  const amount = line.at(at) === the.in ? amountAt(line, at + 1) : null
  const unit = amount === null ? null : unitAt(line, amount.end)
  return unit?.row.class === 'time' ? unit.end : at
}

/** *that will not brown paper*, *which turns white paper yellow in five minutes*, behind an oven: the end of it, or 0. */
export function testAt(line: Line, start: number): number {
  let at = start
  while (at < start + 5 && line.is(at, Role.Plain | Role.Degree | Role.Determiner) && !colouring.has(line.at(at).text)) at++
  if (!colouring.has(line.at(at).text)) return 0
  const verb = at++
  while (at < verb + 8 && !isFigure(line, at) && !line.is(at, Role.Mark)) at++
  if (!isFigure(line, at)) return 0
  let end = at + 1
  while (end < at + 5 && line.is(end, Role.Article | Role.Describing | Role.Degree | Role.Adverb)) end++
  return pastTime(line, end)
}

/** Scales of degrees, by the words and letters that stand for them. */
const scales = new Set(['fahrenheit', 'fahr', 'celsius', 'centigrade', 'reaumur', 'f', 'c', 'r'])

/** *350 degrees*, *180° C.*: the end of it, or 0. */
export function degreesAt(line: Line, number: number): number {
  if (!line.is(number, Role.Cardinal)) return 0
  const sign = line.text[line.end(number)] === '°' || line.text[line.end(number)] === 'º'
  let end = number + 1
  const word = /^deg(?:ree)?$/.test(line.at(end).text)
  if (word) end++
  const scale = end
  if (line.at(end) === the.of) end++
  if (scales.has(line.at(end).text)) return end + 1
  return sign || word ? scale : 0
}

/** *heated to 350 degrees*, *at about 180° C.*, *of 400 degrees* behind an oven: the end of it, or 0. */
export function degreesBehind(line: Line, start: number): number {
  for (let at = start; at < start + 5 && !line.is(at, Role.Mark); at++) {
    const end = degreesAt(line, at)
    if (end > 0) return end
  }
  return 0
}
