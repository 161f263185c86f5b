import { type Amount, amountAt } from './amount.js'
import { type Clause, clauseAt, type Part, parted, partOf, pastDescribingEggs, pastDeterminers, type Tally } from './egg-clauses.js'
import type { Line } from './line.js'
import type { EggParts, Range } from './reading.js'
import { the } from './vocabulary.js'
import { mark, Role } from './word.js'

/** A statement of eggs and the token after it. */
export interface EggsFound {
  readonly amount: Range
  readonly eggs: EggParts
  /** Whether the words speak of yolks or whites at all. */
  readonly parted: boolean
  readonly qualifier: string | null
  readonly end: number
}

/** How many words a clause may stand behind its eggs: *ten eggs, well beaten in a basin, leaving out two whites*. */
const reach = 12

/** *the whites of four eggs*, *yolks and white of six*: from the word yolk or white on. */
function partsOfEggs(line: Line, at: number): EggsFound | null {
  const part = partOf(line, at)
  let of = at + 1
  const both = (line.at(of) === the.and || line.at(of) === mark.comma) && line.is(pastDeterminers(line, of + 1), parted)
  if (both) of = pastDeterminers(line, of + 1) + 1
  if (line.at(of) !== the.of) return null
  const amount = amountAt(line, line.at(of + 1) === the.but ? of + 2 : of + 1)
  if (amount === null || amount.each) return null
  const egg = pastDescribingEggs(line, amount.end)
  const named = line.is(egg, Role.Egg)
  if (!named && (amount.article || line.at(amount.end).measure !== null)) return null
  const count = amount.low
  const tally: Tally = {
    yolks: both || part === 'yolks' ? count : 0,
    whites: both || part === 'whites' ? count : 0,
    stated: count,
    partsOnly: !both,
  }
  return settle(line, named ? pastDozenAndHalf(line, egg + 1, tally) : amount.end, tally, amount, amount.qualifier)
}

/** *the yolks of one dozen of eggs and half*: the half is of the dozen. */
function pastDozenAndHalf(line: Line, at: number, tally: Tally): number {
  if (
    tally.stated % 12 !== 0 ||
    line.at(at) !== the.and ||
    !line.is(at + 1, Role.Half) ||
    line.is(at + 2, Role.Determiner | Role.White | Role.Yolk)
  )
    return at
  const half = tally.stated / 2
  if (tally.yolks > 0) tally.yolks += half
  if (tally.whites > 0) tally.whites += half
  tally.stated += half
  return at + 2
}

/** Puts the clauses behind the eggs to the tally. */
function settle(line: Line, start: number, tally: Tally, amount: Range, qualifier: string | null): EggsFound {
  let end = start
  let spoken = tally.partsOnly
  let plain = false
  for (let at = start; at < end + reach; ) {
    const word = line.at(at)
    if (word === mark.stop || word === mark.colon || word === mark.end) break
    const clause = clauseAt(line, at, tally, plain)
    if (clause !== null) {
      apply(clause, tally)
      spoken = true
      end = clause.end
      at = end
      continue
    }
    if (
      line.is(at, Role.Cardinal | Role.Half | Role.Collective | Role.Egg) ||
      (word.measure !== null && word.measure.class !== 'cup') ||
      (word.thing !== null && !line.is(at, Role.White | Role.Describing))
    )
      break
    if (line.is(at, Role.Plain) && word !== the.and && word !== the.with && word !== the.but) plain = true
    at++
  }
  const whole = Math.min(tally.yolks, tally.whites)
  const eggs = { whole, yolks: tally.yolks - whole, whites: tally.whites - whole }
  return {
    amount: { low: amount.low, high: amount.high },
    eggs,
    parted: spoken,
    qualifier,
    end: line.at(end) === mark.close ? end + 1 : end,
  }
}

function apply(clause: Clause, tally: Tally): void {
  const { part, count } = clause
  if (clause.effect === 'all') tally.yolks = tally.whites = tally.stated
  else if (clause.effect === 'keep') tally[part] = count
  else if (clause.effect === 'add') tally[part] += count
  else tally[part] = Math.max(0, tally[part] - count)
}

/** Eggs, yolks or whites with their number, and every clause that changes it. */
export function eggsAt(line: Line, start: number, amount: Amount | null): EggsFound | null {
  let at = pastDescribingEggs(line, start)
  // "beat the yolks": the verb is no part of the statement.
  if (at > start && line.is(start, Role.Plain)) return null
  if (line.is(at, parted)) return partsOfEggs(line, at)
  if (amount === null || (amount.article && line.at(amount.end) === the.little)) return null
  // Brine and must are strong enough when they "bear an egg": that egg is a test.
  if (line.at(start - 1).text === 'bear') return null
  at = pastDescribingEggs(line, amount.end)
  const count = amount.low
  if (line.is(at, Role.Egg)) {
    const possessed = line.is(at + 1, parted) && line.at(at + 2) !== the.and
    if (possessed) return settle(line, at + 2, onlyPart(partOf(line, at + 1), count), amount, amount.qualifier)
    return settle(line, at + 1, { yolks: count, whites: count, stated: count, partsOnly: false }, amount, amount.qualifier)
  }
  if (!line.is(at, parted)) return null
  const of = line.at(at + 1) === the.of ? pastDescribingEggs(line, at + 2) : at + 1
  if (line.at(at + 1) === the.of && !line.is(of, Role.Egg) && !line.is(of, Role.Article)) return null
  const egg = line.is(of, Role.Article) ? pastDescribingEggs(line, of + 1) : of
  const end = line.is(egg, Role.Egg) ? egg + 1 : at + 1
  if (end === at + 1 && (amount.article || count < 1)) return null
  // A bare number before *white* may belong to something else: "two white onions".
  if (end === at + 1 && line.is(at, Role.White) && (line.at(end).thing !== null || line.is(end, Role.Describing))) return null
  return settle(line, end, onlyPart(partOf(line, at), count), amount, amount.qualifier)
}

function onlyPart(part: Part, count: number): Tally {
  return { yolks: part === 'yolks' ? count : 0, whites: part === 'whites' ? count : 0, stated: count, partsOnly: true }
}
