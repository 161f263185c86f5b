/** Relations between measures: *the like quantity*, *of each*, *twice as much*, *an equal weight*. */
import { noAnswer } from '../error.js'
import type { Found, Range, Reading } from '../reading/index.js'

/** A reading that stands on its own, or one that is to weigh as much as another. */
export interface Settled {
  readonly reading: Reading
  /** The other pan of the scale: `reading` weighs so many times as much as this. */
  readonly weighs?: { readonly pan: Reading; readonly times: Range }
}

/** The last statement of each place in the text, settled, so that relations of relations come out. */
export type Earlier = Map<number, Settled>

const scaled = ({ low, high }: Range, by: Range): Range => ({ low: low * by.low, high: high * by.high })
const isEgg = ({ eggs, thing }: Reading): boolean => eggs !== null || /\begg$/.test(thing ?? '')

function earlierOf(reference: Reading, earlier: Earlier): Settled {
  const start = reference.understood[0]?.start
  return (start === undefined ? undefined : earlier.get(start)) ?? { reading: reference }
}

/** The same number of another thing: *six eggs and as many spoonfuls of cream*. */
function asMany({ unit }: Found, reading: Reading): Reading {
  if (unit === 'none' || (unit === undefined && isEgg(reading))) return { ...reading, kind: 'counted', measure: 'none', eggs: null }
  return unit !== undefined ? { ...reading, kind: 'measured', measure: unit, eggs: null } : reading
}

/** The same measure of another thing. */
function alike(found: Found, pointed: Settled, times: Range): Settled {
  const { thing, things, part, understood, unread, qualifier } = found
  const reading = found.measure === 'as-many' || found.unit !== undefined ? asMany(found, pointed.reading) : pointed.reading
  const { things: _, part: __, each: ___, reference: ____, tale: _____, ...measure } = reading
  const amount = reading.amount ? scaled(reading.amount, times) : null
  const own = { thing, understood, unread, qualifier: qualifier ?? reading.qualifier, ...(things && { things }), ...(part && { part }) }
  return { reading: { ...measure, ...own, amount } }
}

/**
 * Settles what a statement points at.
 *
 * @throws PottleError `no-answer` where it points at a thing that the text gives no amount of
 */
export function settle(found: Found, earlier: Earlier): Settled {
  const { reference, measure, thing } = found
  if (measure !== 'as-much' && measure !== 'as-many' && measure !== 'equal-weight') return { reading: found }
  if (!reference) throw noAnswer('text', `the text gives no amount of what it is to be as much as; say how much ${thing ?? 'of it'}`)
  const byCount = measure === 'as-many' || found.unit !== undefined
  if (isEgg(reference) && !byCount) return { reading: found }
  const pointed = earlierOf(reference, earlier)
  const times = found.amount ?? { low: 1, high: 1 }
  if (pointed.reading.amount === null && !pointed.weighs)
    throw noAnswer(
      'text',
      `it points at ${pointed.reading.thing ?? 'something'}, of which the text gives no amount; say how much of ${thing ?? 'it'}`,
    )
  if (pointed.weighs) return { reading: found, weighs: { pan: pointed.weighs.pan, times: scaled(pointed.weighs.times, times) } }
  // A loaf's worth of butter is as much butter as the loaf weighs, and as much ginger as three nutmegs what they weigh.
  const { kind } = pointed.reading
  const byWeight = measure === 'equal-weight' || (!byCount && (kind === 'priced' || kind === 'counted'))
  return byWeight ? { reading: found, weighs: { pan: pointed.reading, times } } : alike(found, pointed, times)
}

/** *The rind and juice of two lemons* is a line of rind and one of juice. */
function portionsOf({ portions, ...found }: Found): readonly Found[] {
  return portions ? portions.map((part) => ({ ...found, part })) : [found]
}

/** Statements that speak of several things at once, one for each; terms of a compound that no law binds together, one for each. */
export function separate(found: Found): readonly Found[] {
  const things = found.each && found.things && found.things.length > 1 ? found.things : undefined
  const byThing = things ? things.map((thing) => ({ ...found, thing, things: [thing] })) : portionsOf(found)
  const { parts, amount } = found
  const loose = parts && parts.length > 1 && amount?.low === parts[0]!.amount.low ? parts : undefined
  if (!loose) return byThing
  return byThing.flatMap((one) => {
    const { parts: _, ...rest } = one
    return loose.map((part) => ({ ...rest, amount: part.amount, measure: part.measure }))
  })
}
