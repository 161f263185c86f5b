import { type Amount, amountAt } from './amount.js'
import { countsBefore, isExample, orMore } from './counted.js'
import {
  type Clause,
  clauseAt,
  eggNamed,
  type Part,
  parted,
  partOf,
  pastDescribingEggs,
  pastDeterminers,
  type Tally,
} from './egg-clauses.js'
import type { Line } from './line.js'
import type { EggParts, Range } from './reading.js'
import { the } from './vocabulary.js'
import { mark, Role } from './word.js'

/** A statement of eggs and the token after it. */
export interface EggsFound {
  readonly amount: Range
  readonly eggs: EggParts
  /** Whose eggs they are: `egg` is a hen's. */
  readonly thing: string
  /** Whether the words speak of yolks or whites at all. */
  readonly parted: boolean
  readonly qualifier: string | null
  readonly tale: string | null
  /** Why the words can't all be true. */
  readonly contradiction: string | null
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
  const amount =
    line.at(of) === the.of ? amountAt(line, numberBehindOf(line, of + 1)) : line.is(of, Role.Cardinal) ? amountAt(line, of) : null
  if (amount === null || amount.each) return partsCountedBehind(line, part, of)
  const egg = eggNamed(line, pastDescribingEggs(line, amount.end))
  if (egg === null && (amount.article || line.at(of) !== the.of || line.at(amount.end).measure !== null)) return null
  const count = amount.low
  const tally: Tally = {
    yolks: both || part === 'yolks' ? count : 0,
    whites: both || part === 'whites' ? count : 0,
    stated: count,
    partsOnly: !both,
    thing: egg?.thing ?? 'egg',
  }
  return settle(line, egg !== null ? pastDozenAndHalf(line, egg.end, tally) : amount.end, tally, amount)
}

/** The number behind *of*: *of but four*, *of the four eggs*. */
function numberBehindOf(line: Line, at: number): number {
  if (line.at(at) === the.but) return at + 1
  return line.is(at, Role.Determiner) && line.is(at + 1, Role.Cardinal) ? at + 1 : at
}

/** *yolks of eggs xx*: in lists the number stands behind. */
function partsCountedBehind(line: Line, part: Part, of: number): EggsFound | null {
  const egg = line.at(of) === the.of ? eggNamed(line, pastDescribingEggs(line, of + 1)) : null
  const amount = egg === null ? null : amountAt(line, line.at(egg.end) === mark.comma ? egg.end + 1 : egg.end)
  if (egg === null || amount === null || !countsBefore(line, egg.end, amount, true)) return null
  return settle(line, amount.end, onlyPart(part, amount.low, egg.thing), amount)
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
function settle(line: Line, start: number, tally: Tally, amount: Amount): EggsFound {
  const most = Math.max(tally.stated, amount.high)
  let contradiction: string | null = null
  let end = start
  let spoken = tally.partsOnly
  let plain = false
  for (let at = start; at < end + reach; ) {
    const word = line.at(at)
    if (word === mark.stop || word === mark.colon || word === mark.end) break
    const clause = clauseAt(line, at, tally, plain)
    if (clause !== null) {
      contradiction ??= contradictionIn(clause, tally, most)
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
    thing: tally.thing,
    parted: spoken,
    qualifier: amount.qualifier,
    tale: amount.tale,
    contradiction,
    end: line.at(end) === mark.close ? end + 1 : end,
  }
}

/** More is taken from the eggs, or kept of them, than there is. */
function contradictionIn({ effect, part, count, only }: Clause, { stated, partsOnly, ...tally }: Tally, most: number): string | null {
  const bounded = effect === 'take' || only
  // *The yolks of six eggs, leaving out the whites* takes all of what was never in.
  const there = effect === 'take' && !partsOnly && count !== stated ? Math.min(most, tally[part] + most - stated) : most
  if (!bounded || count <= there) return null
  const done = effect === 'take' ? 'left out' : 'kept'
  const eggs = there < most ? `the ${there} that are left` : there === 1 ? '1 egg' : `${there} eggs`
  return `${count} ${part} can't be ${done} of ${eggs}; give at most as many as there are`
}

function apply({ effect, part, count }: Clause, tally: Tally): void {
  if (effect === 'all') tally.yolks = tally.whites = tally.stated
  else if (effect === 'keep') tally[part] = count
  else if (effect === 'add') tally[part] += count
  // *The yolks of eight eggs, leaving out half the whites*: the other half goes in.
  else tally[part] = Math.max(0, (tally.partsOnly && tally[part] === 0 ? tally.stated : tally[part]) - count)
}

/** Eggs, yolks or whites with their number, and every clause that changes it. */
export function eggsAt(line: Line, start: number, amount: Amount | null): EggsFound | null {
  let at = pastDescribingEggs(line, start)
  // "beat the yolks": the verb is no part of the statement.
  if (at > start && line.is(start, Role.Plain)) return null
  if (line.is(at, parted)) return partsOfEggs(line, at)
  if (amount === null || (amount.article && line.at(amount.end) === the.little)) return null
  if (amount.article && isExample(line, start, true)) return null
  at = pastDescribingEggs(line, amount.end)
  const count = amount.low
  const egg = eggNamed(line, at)
  if (egg !== null) {
    const { thing, end } = egg
    const possessed = line.is(end, parted) && line.at(end + 1) !== the.and
    if (possessed) return settle(line, end + 1, onlyPart(partOf(line, end), count, thing), amount)
    const more = orMore(line, end)
    const counted = more === null ? amount : { ...amount, high: Math.max(amount.high, more.value) }
    return settle(line, more?.end ?? end, { yolks: count, whites: count, stated: count, partsOnly: false, thing }, counted)
  }
  if (!line.is(at, parted)) return null
  const of = line.at(at + 1) === the.of ? pastDescribingEggs(line, at + 2) : at + 1
  if (line.at(at + 1) === the.of && eggNamed(line, of) === null && !line.is(of, Role.Article)) return null
  const whose = eggNamed(line, line.is(of, Role.Article) ? pastDescribingEggs(line, of + 1) : of)
  const end = whose?.end ?? at + 1
  if (end === at + 1 && (amount.article || count < 1)) return null
  // A bare number before *white* may belong to something else: "two white onions".
  if (end === at + 1 && line.is(at, Role.White) && (line.at(end).thing !== null || line.is(end, Role.Describing))) return null
  return settle(line, end, onlyPart(partOf(line, at), count, whose?.thing ?? 'egg'), amount)
}

function onlyPart(part: Part, count: number, thing: string): Tally {
  return { yolks: part === 'yolks' ? count : 0, whites: part === 'whites' ? count : 0, stated: count, partsOnly: true, thing }
}
