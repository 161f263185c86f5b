import type { MeasureWordRow } from '../tables/index.js'
import type { Amount } from './amount.js'
import { isExample } from './counted.js'
import type { Line } from './line.js'
import { longestName, type Named } from './lookup.js'
import { type Context, type Statement, statement } from './statement.js'
import { severalOf, sharedThings, thingAt, unknownFrom } from './thing.js'
import { the } from './vocabulary.js'
import { Role } from './word.js'

/** The coins as they stand before a loaf. */
const beforeLoaf: Readonly<Record<string, string>> = {
  twopence: 'twopenny',
  threepence: 'threepenny',
  groat: 'fourpenny',
  sixpence: 'sixpenny',
  ninepence: 'ninepenny',
}

/** What bakers sold by the price, by the things of the tables. */
const loaves: Readonly<Record<string, string>> = {
  loaf: 'loaf',
  bread: 'loaf',
  roll: 'roll',
  'french-roll': 'roll',
  manchet: 'manchet',
  'naples-biscuit': 'Naples biscuit',
  biscuit: 'biscuit',
  cake: 'cake',
  sippet: 'loaf',
}

const multiples: Readonly<Record<number, string>> = { 2: 'twopenny', 3: 'threepenny', 4: 'fourpenny', 6: 'sixpenny' }

/** The loaf at a token, behind what describes it: *white*, *French*, *stale*. */
function loafAt(line: Line, start: number): { noun: string; thing: string; at: number; end: number } | null {
  let at = start
  while (
    at < start + 4 &&
    line.is(at, Role.Describing | Role.Determiner) &&
    longestName(line, at, 'thing') === null &&
    line.at(at) !== the.loaf
  )
    at++
  const found = longestName(line, at, 'thing')
  const id = line.at(at) === the.loaf ? 'loaf' : found?.row.id
  let noun = id === undefined ? undefined : loaves[id]
  let end = found?.end ?? at + 1
  if (noun === undefined || id === undefined) return null
  // "a penny white bread loaf", "a penny bread roll"
  if (id === 'bread' && (line.at(end) === the.loaf || line.at(end) === the.roll)) noun = line.at(end++).text
  return { noun, thing: id === 'loaf' || id === 'bread' ? 'loaf' : noun, at, end }
}

/** *a penny white loaf*, *two halfpenny rolls*, *a quartern loaf*: bread by what it cost or by the flour in it. */
export function pricedAt(context: Context, start: number, amount: Amount, at: number): Statement | null {
  const { line } = context
  if (amount.each || isExample(line, start, amount.article)) return null
  const coin = longestName(line, at, 'coin')
  if (coin === null) return byFlourAt(context, start, amount, at)
  const loaf = loafAt(line, coin.end)
  if (loaf === null) return null
  let price = beforeLoaf[coin.row.label] ?? coin.row.label
  let { low, high } = amount
  // "two penny loaf" costs twopence, "two penny loaves" are two.
  const multiple = multiples[low]
  if (price === 'penny' && low === high && multiple !== undefined && at === start + 1 && !endsInS(line, loaf.at)) {
    price = multiple
    low = high = 1
  }
  return loafOf(context, start, loaf, `${price} ${loaf.noun}`, { low, high })
}

const endsInS = (line: Line, at: number): boolean => line.text[line.end(at) - 1] === 's'

function byFlourAt(context: Context, start: number, amount: Amount, at: number): Statement | null {
  const { line } = context
  const unit = longestName(line, at, 'measure')
  if (unit === null || (unit.row.class !== 'capacity' && unit.row.class !== 'weight') || line.at(unit.end) !== the.loaf) return null
  return loafOf(context, start, { thing: 'loaf', end: unit.end + 1 }, `${unit.row.label} loaf`, { low: amount.low, high: amount.high })
}

function loafOf(
  context: Context,
  start: number,
  loaf: { thing: string; end: number },
  measure: string,
  amount: { low: number; high: number },
): Statement {
  const { line } = context
  const of = line.at(loaf.end) === the.of ? thingAt(line, loaf.end + 1, false) : null
  return statement('priced', start, of?.end ?? loaf.end, { amount, measure, thing: of?.name ?? loaf.thing })
}

/** *a pennyworth of saffron*, *a groat's worth*: the amount is in pence, whatever the coin. */
export function worthAt(context: Context, start: number, amount: Amount, unit: Named<MeasureWordRow>): Statement {
  const { line } = context
  const of = line.at(unit.end) === the.of
  const first = thingAt(line, of ? unit.end + 1 : unit.end, of)
  const thing = first === null ? null : sharedThings(line, first, false)
  const pence = unit.row.worth ?? 1
  const cents = unit.row.id === 'centsworth'
  return statement('priced', start, thing?.end ?? unit.end, {
    amount: cents ? { low: amount.low, high: amount.high } : { low: amount.low * pence, high: amount.high * pence },
    measure: cents ? 'centsworth' : 'pennyworth',
    thing: thing?.name ?? null,
    qualifier: amount.qualifier,
    things: severalOf(thing),
    alternatives: thing?.alternatives,
    unknown: unknownFrom(line, thing),
  })
}
