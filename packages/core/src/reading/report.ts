import type { Reading, Span } from './reading.js'
import type { Statement } from './statement.js'
import type { Line } from './tokens.js'
import { Role } from './word.js'

const nothing: readonly Span[] = []

/** The statement as a reading, with every word of the line accounted for. */
export function readingOf(line: Line, one: Statement, all: readonly Statement[]): Reading {
  const read = reading(one, [spanOf(line, one.start, one.unknown ?? one.end)], unreadWords(line, one))
  const reference = referenceOf(line, one, all)
  return reference === undefined ? read : { ...read, reference }
}

/** The reading without its reference. */
export function reading(one: Statement, understood: readonly Span[], unread: readonly Span[]): Reading {
  return {
    kind: one.kind,
    amount: one.amount,
    measure: one.measure,
    thing: one.thing,
    qualifier: one.qualifier,
    eggs: one.eggs,
    ...(one.things && { things: one.things }),
    ...(one.each && { each: one.each }),
    ...(one.implied && { implied: one.implied }),
    ...(one.standard && { standard: one.standard }),
    ...(one.part && { part: one.part }),
    ...(one.parts && { parts: one.parts }),
    ...(one.heat && { heat: one.heat }),
    ...(one.heatClass && { heatClass: one.heatClass }),
    ...(one.minutes && { minutes: one.minutes }),
    understood,
    unread,
  }
}

/** What an *as much* or an *equal weight* points at: the thing it names, or else the statement before it. */
export function referenceOf(line: Line, one: Statement, before: readonly Statement[]): Reading | undefined {
  if (!one.refers) return undefined
  const index = before.indexOf(one)
  const earlier = before.slice(Math.max(0, (index < 0 ? before.length : index) - 12), index < 0 ? undefined : index).reverse()
  const sought =
    one.beside === undefined
      ? earlier.find((other) => other.amount !== null && other.thing !== null && other.kind !== 'time')
      : earlier.find((other) => other.thing === one.beside)
  if (sought !== undefined) return reading(sought, [spanOf(line, sought.start, sought.end)], nothing)
  if (one.beside === undefined) return undefined
  return {
    kind: 'vague',
    amount: null,
    measure: null,
    thing: one.beside,
    qualifier: null,
    eggs: null,
    understood: nothing,
    unread: nothing,
  }
}

export function spanOf(line: Line, start: number, end: number): Span {
  return { start: line.start(start), end: line.end(end - 1) }
}

/** The words outside a statement that are more than marks and joints. */
function unreadWords(line: Line, one: Statement): readonly Span[] {
  let unread: Span[] | undefined
  for (let at = 0; at < line.length; at++) {
    if (at === one.start) at = one.unknown ?? one.end
    if (at >= line.length) break
    if (!isSilent(line, at)) {
      unread ??= []
      unread.push(spanOf(line, at, at + 1))
    }
  }
  return unread ?? nothing
}

/** Marks, articles and joints say nothing by themselves. */
function isSilent(line: Line, at: number): boolean {
  return line.is(at, Role.Mark | Role.Article | Role.Determiner) || joints.has(line.at(at).text)
}

const joints = new Set(['of', 'and', 'in', 'to', 'with', 'take', 'put', 'add'])
