import { noAnswer, PottleError } from './error.js'
import { nearestTo, sayNearest } from './nearest.js'
import type { Reading } from './reading/index.js'
import { goodIn, inQuantity, kindFor, namesOf, type Question, qualify, reaches, type Sense, type SenseKind } from './senses/index.js'
import type { Setting } from './setting.js'
import { findGood, findMeasure, type GoodRow, holds, type MeasureRow, measures, type Quantity } from './tables/index.js'

/** What a reading comes to in a setting, before anyone asks how sure it is: every sense, in one quantity where that can be had. */
export interface Assessment {
  readonly kind: SenseKind
  readonly question: Question
  readonly quantity: Quantity
  readonly senses: readonly Sense[]
  /** Senses of another quantity that no density could bring over: shown, but not in the band. */
  readonly apart: readonly Sense[]
  readonly good: GoodRow | undefined
  /** The names and classes of the thing, for the tables that ask about things. */
  readonly thing: readonly string[]
}

/** What a caller may insist on. */
export interface Insistence {
  readonly standard?: string
  readonly quantity?: Quantity
}

/** *As much sugar as flour* says how much once the flour is known: alone it has no figure. */
function relative({ measure, thing, reference }: Reading): PottleError {
  if (thing === null)
    return noAnswer(
      'phrase',
      'these words liken an amount to one that they leave out, and name no thing: give both, or send the whole receipt',
    )
  const what = thing
  const other = reference?.thing ?? 'the other thing'
  const how = measure === 'equal-weight' ? 'weighs as much as' : measure === 'as-many' ? 'is as many as' : 'is as much as'
  return noAnswer('phrase', `${what} here ${how} ${other}, whose amount these words leave out: give it, or send the whole receipt`)
}

const relatives = new Set(['as-much', 'as-many', 'equal-weight'])

function unknownMeasure(reading: Reading): PottleError {
  if (reading.measure && relatives.has(reading.measure)) return relative(reading)
  if (reading.kind === 'priced')
    return noAnswer(
      'phrase',
      `no table says what a ${reading.measure} weighed, for the law set bread alone; give a weight or a number of it`,
    )
  const name = reading.measure ?? reading.kind
  const ids = measures.map(({ id }) => id)
  const detail = `"${name}" is not a measure of these tables${sayNearest(name, ids)}`
  return new PottleError('unreadable', [{ parameter: 'phrase', detail }], { understood: [], unread: [name], nearest: nearestTo(name, ids) })
}

/** Every word of a bare name is understood, and still something is wanting. */
function withoutAmount({ thing, unread }: Reading): PottleError {
  const detail = 'these words name a thing but no amount; say how many or how much'
  const words = thing !== null && unread.length === 0 ? { understood: [thing], unread: [], nearest: [] } : undefined
  return new PottleError('no-answer', [{ parameter: 'phrase', detail }], words)
}

function sensesOf(question: Question): { kind: SenseKind; senses: readonly Sense[] } {
  const { reading } = question
  const contradiction = reading.contradiction ?? reading.reference?.contradiction
  if (contradiction) throw noAnswer('phrase', contradiction)
  if (reading.kind === 'vague') throw withoutAmount(reading)
  const kind = kindFor(question)
  if (!kind) throw unknownMeasure(reading)
  return { kind, senses: kind.senses(question).map((sense) => qualify(sense, reading.qualifier, kind.name)) }
}

function noWay(from: Quantity, to: Quantity, reading: Reading): PottleError {
  const thing = reading.thing ?? 'a thing that the phrase does not name'
  const detail =
    [from, to].sort().join() === 'mass,volume'
      ? `to turn ${from} into ${to} the density of ${thing} is needed, and the tables have none; name a thing they know, or ask for a unit of ${from}`
      : `the phrase states a ${from}; it can't be given as a ${to}`
  return noAnswer('to', detail)
}

/** A measure of one thing alone: *pot of butter*. */
function ownMeasure({ measure, thing }: Reading): MeasureRow | undefined {
  return measure && thing ? findMeasure(`${measure} of ${thing}`) : undefined
}

/** A measure of one thing alone, where it was known then, before the measure in general. */
function measureIn(reading: Reading, { moments, places }: Setting): MeasureRow | undefined {
  if (!reading.measure) return undefined
  const own = ownMeasure(reading)
  const known = own?.senses.some((row) => moments.some(({ year }) => holds(row, year, places)))
  return known ? own : findMeasure(reading.measure)
}

/** What a reading is of, as the tables know it. The juice of lemons has the density of lemon juice. */
export function goodNamed({ thing, part, describing }: Pick<Reading, 'thing' | 'part' | 'describing'>): GoodRow | undefined {
  if (!thing) return undefined
  return (part ? findGood(`${thing} ${part}`) : undefined) ?? findGood(thing, describing)
}

function questionOf(reading: Reading, setting: Setting, standard?: string): Question {
  const measure = measureIn(reading, setting)
  return { reading, setting, ...(measure ? { measure } : {}), ...(standard ? { standard } : {}) }
}

/**
 * The years in which the tables begin to say something else of a reading, in order: from one to the next every year has the same answer.
 * Undefined where it is not rows alone that a year decides by.
 */
export function turningYears(reading: Reading, setting: Setting): readonly number[] | undefined {
  // What is a measure of one thing alone is of another kind out of its years, or of none.
  if (ownMeasure(reading) && !findMeasure(reading.measure!)) return undefined
  const question = questionOf(reading, setting)
  const rows = kindFor(question)?.dated?.(question)
  if (!rows) return undefined
  const years = [...rows, ...(goodNamed(reading)?.printed ?? [])].flatMap((row) => (row.years ? [row.years[0], row.years[1] + 1] : []))
  return [...new Set(years)].sort((a, b) => a - b)
}

/**
 * Every sense of a reading in its setting, brought to one quantity: the one asked for, or that of the likeliest sense.
 *
 * @throws PottleError `unreadable` for a measure that no kind knows; `no-answer` where there is no amount, or no way to the quantity asked for
 */
export function assess(reading: Reading, setting: Setting, insist: Insistence = {}): Assessment {
  const question = questionOf(reading, setting, insist.standard)
  const { kind, senses } = sensesOf(question)
  const named = goodNamed(reading)
  const good = named && goodIn(named, setting)
  const likeliest = senses[0]!
  const quantity = insist.quantity ?? likeliest.quantity
  const within = senses.filter((sense) => reaches(sense, quantity, good))
  if (within.length === 0 || !reaches(likeliest, quantity, good)) throw noWay(likeliest.quantity, quantity, reading)
  return {
    kind,
    question,
    quantity,
    senses: within.map((sense) => inQuantity(sense, quantity, good)),
    apart: senses.filter((sense) => !within.includes(sense)),
    good,
    thing: namesOf(reading.thing, good),
  }
}
