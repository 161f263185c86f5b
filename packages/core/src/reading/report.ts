import { words } from '../tables/index.js'
import type { Line } from './line.js'
import { eggNames } from './names.js'
import type { Reading, Span } from './reading.js'
import type { Statement } from './statement.js'
import { Role } from './word.js'

/** No spans at all. */
export const nothing: readonly Span[] = []

/** A reading under construction. */
export type Mutable<T> = { -readonly [K in keyof T]: T[K] }

/** The statement as a reading, with every word of the line accounted for. */
export function readingOf(line: Line, one: Statement, all: readonly Statement[]): Reading {
  const read: Mutable<Reading> = reading(line, one, [spanOf(line, one.start, one.unknown)], unreadWords(line, one))
  const reference = referenceOf(line, one, all)
  if (reference !== undefined) read.reference = reference
  return read
}

/** The reading without its reference. */
function reading(line: Line, one: Statement, understood: readonly Span[], unread: readonly Span[]): Reading {
  const { kind, amount, measure, thing, qualifier, eggs } = one
  const read: Mutable<Reading> = { kind, amount, measure, thing, qualifier, eggs, understood, unread }
  addDetails(read, one, line)
  return read
}

/** The words of a statement that say of what kind its thing is: *brown* sugar, a penny *white* loaf. */
function describingIn(line: Line, { start, end }: Statement): readonly string[] {
  const words: string[] = []
  for (let at = start; at < end; at++) if (line.is(at, Role.Describing)) words.push(line.at(at).text)
  return words
}

/** Adds what only some statements have. */
export function addDetails(read: Mutable<Reading>, one: Statement, line: Line): void {
  const describing = describingIn(line, one)
  if (describing.length > 0) read.describing = describing
  if (one.unit !== null) read.unit = one.unit
  if (one.things !== null) read.things = one.things
  if (one.alternatives !== null) read.alternatives = one.alternatives
  if (one.each) read.each = true
  if (one.implied) read.implied = true
  if (one.standard !== null) read.standard = one.standard
  if (one.tale !== null) read.tale = one.tale
  if (one.part !== null) read.part = one.part
  if (one.portions !== null) read.portions = one.portions
  if (one.parts !== null) read.parts = one.parts
  if (one.heat !== null) read.heat = one.heat
  if (one.heatOf !== null) read.heatOf = one.heatOf
  if (one.heatClass !== null) read.heatClass = one.heatClass
  if (one.minutes !== null) read.minutes = one.minutes
  if (one.contradiction !== null) read.contradiction = one.contradiction
}

/** What an *as much* or an *equal weight* points at: the thing it names, or else the statement before it. */
export function referenceOf(line: Line, one: Statement, all: readonly Statement[], index: number = all.indexOf(one)): Reading | undefined {
  if (!one.refers) return one.beside === null ? undefined : named(one.beside)
  const earlier = all.slice(Math.max(0, index - reach), index).reverse()
  const sought = earlier.find((other) => isMeant(one, other)) ?? earlier.find((other) => isOfThatKind(one, other))
  if (sought !== undefined) return reading(line, sought, [spanOf(line, sought.start, sought.end)], nothing)
  return one.beside === null ? undefined : named(one.beside)
}

/** Measures of so much, in which nothing is told one by one. */
const sized = new Set(words.filter(({ class: of }) => of === 'weight' || of === 'capacity').map(({ label }) => label))

/** Whether a statement tells things one by one: *the juice of as many lemons* passes by a pint that was spoken of last. */
const isTold = ({ kind, measure }: Statement): boolean =>
  kind === 'comparison' ? measure === 'as-many' : kind !== 'measured' || !sized.has(measure ?? '')

/** Whether a comparison points at an earlier statement: the one of the thing that it names, or else the nearest of its kind. */
function isMeant(one: Statement, other: Statement): boolean {
  if (one.beside !== null) return isNamed(other, one.beside)
  if (one.theirs && other.measure === 'equal-weight') return false
  if (one.measure === 'as-many' && !isTold(other)) return false
  return other.amount !== null && other.thing !== null
}

/** *The eggs* are those that were spoken of, whoever laid them. */
function isNamed({ thing, eggs, contradiction }: Statement, name: string): boolean {
  return thing === name || (name === 'egg' && (eggs !== null || (contradiction !== null && eggNames.has(thing ?? ''))))
}

/** The suet may be the beef suet that was spoken of. */
function isOfThatKind({ beside }: Statement, { thing, amount }: Statement): boolean {
  return beside !== null && amount !== null && (thing ?? '').endsWith(` ${beside}`)
}

/** A thing of which nothing is said but its name. */
function named(thing: string): Reading {
  return { kind: 'vague', amount: null, measure: null, thing, qualifier: null, eggs: null, understood: nothing, unread: nothing }
}

/** How many statements back a comparison may point. */
const reach = 12

export function spanOf(line: Line, start: number, end: number): Span {
  return { start: line.start(start), end: line.end(end - 1) }
}

/** The words outside a statement that are more than marks and joints. */
function unreadWords(line: Line, one: Statement): readonly Span[] {
  let unread: Span[] | undefined
  for (let at = 0; at < line.length; at++) {
    if (at === one.start) at = one.unknown
    if (at >= line.length) break
    if (!isSilent(line, at)) {
      unread ??= []
      unread.push(spanOf(line, at, at + 1))
    }
  }
  return unread ?? nothing
}

/** Marks, articles and joints say nothing by themselves, and how a thing is dressed says nothing of its measure. */
function isSilent(line: Line, at: number): boolean {
  return (
    line.is(at, Role.Mark | Role.Article | Role.Determiner | Role.Describing | Role.Adverb | Role.Degree) || joints.has(line.at(at).text)
  )
}

const joints = new Set(['of', 'and', 'in', 'to', 'with', 'take', 'put', 'add'])
