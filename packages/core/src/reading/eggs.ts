import { type Amount, amountAt, valueAt } from './amount.js'
import type { EggParts, Range } from './reading.js'
import type { Line } from './tokens.js'
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

/** What has been said of the eggs so far: all the yolks, all the whites, and how many eggs the statement began with. */
interface Tally {
  yolks: number
  whites: number
  stated: number
  /** The statement began with yolks or whites alone. */
  readonly partsOnly: boolean
}

type Part = 'yolks' | 'whites'

/** A clause behind the eggs: *leaving out four of the whites*, *but three whites*, *whites and all*. */
interface Clause {
  readonly effect: 'take' | 'keep' | 'add' | 'all'
  readonly part: Part
  readonly count: number
  readonly end: number
}

/** How many words a clause may stand behind its eggs: *ten eggs, well beaten in a basin, leaving out two whites*. */
const reach = 12

const parted = Role.Yolk | Role.White
const outward = new Set(['out', 'by', 'away', 'aside', 'off', 'back'])

const partOf = (line: Line, at: number): Part => (line.is(at, Role.Yolk) ? 'yolks' : 'whites')

/** Skips *of the*, *of their*, *their*. */
function pastDeterminers(line: Line, start: number): number {
  let at = start
  while (at < start + 3 && (line.at(at) === the.of || line.is(at, Role.Determiner) || line.at(at) === the.but)) at++
  return at
}

/** Skips what may stand between a number and its eggs: *of the best new laid*. */
function pastDescribingEggs(line: Line, start: number): number {
  let at = start
  const describing = Role.Describing | Role.Qualifier | Role.Adverb | Role.Degree | Role.Determiner
  while (at < start + 5 && !line.is(at, parted) && (line.at(at) === the.of || line.is(at, describing) || line.at(at).text === 'laid')) at++
  return at
}

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

/** A clause that starts at a token. Once verbs have passed, only those that cannot be misread are taken. */
function clauseAt(line: Line, at: number, tally: Tally, plain: boolean): Clause | null {
  return allAt(line, at, tally) ?? withoutAt(line, at, tally) ?? (plain ? null : besideAt(line, at, tally))
}

/** *whites and all*, *yolks and whites*, *with their whites*, *whites only*. */
function allAt(line: Line, at: number, tally: Tally): Clause | null {
  const all = (end: number): Clause => ({ effect: 'all', part: 'whites', count: tally.stated, end })
  if (line.is(at, parted) && line.at(at + 1) === the.and) {
    const other = pastDeterminers(line, at + 2)
    if (line.at(at + 2) === the.all) return all(at + 3)
    if (line.is(other, parted) && partOf(line, at) !== partOf(line, other)) return line.at(other + 1) === the.of ? null : all(other + 1)
  }
  if (line.is(at, parted) && line.at(at + 1).text === 'only') {
    return { effect: 'take', part: partOf(line, at) === 'whites' ? 'yolks' : 'whites', count: tally.stated, end: at + 2 }
  }
  const own = line.at(at) === the.their && line.is(at + 1, Role.White)
  return own && tally.partsOnly && !removedAt(line, at + 2) ? all(at + 2) : null
}

/** *being put by*, *left out*, *taken away*: how a verb may follow what it removes. */
function removedAt(line: Line, start: number): number {
  let at = start
  while (
    at < start + 3 &&
    (line.at(at).text === 'being' || line.at(at) === the.be || line.at(at).text === 'are' || line.at(at) === mark.comma)
  )
    at++
  if (!line.is(at, Role.Without)) return 0
  return outward.has(line.at(at + 1).text) ? at + 2 : line.at(at).text === 'left' || line.at(at).text === 'omit' ? at + 1 : 0
}

/** How many whites or yolks are meant, up to the word itself: *four of the*, *half the*, *all the*, *the*. */
function countBefore(line: Line, start: number, stated: number): { count: number; part: number; whole: boolean } | null {
  let at = pastDeterminers(line, start)
  const value = line.at(at) === the.all ? { value: stated, end: at + 1 } : valueAt(line, at)
  const half = line.is(at, Role.Half)
  if (value !== null) at = value.end
  at = pastDeterminers(line, at)
  while (at < start + 8 && !line.is(at, parted) && line.is(at, Role.Describing | Role.Degree)) at++
  if (!line.is(at, parted)) return null
  // "the whites of four": the number may follow.
  if (value === null && line.at(at + 1) === the.of) {
    const after = amountAt(line, line.at(at + 2) === the.but ? at + 3 : at + 2)
    if (after !== null && !after.article) return { count: after.low, part: at, whole: false }
  }
  return { count: value === null ? stated : half ? stated * value.value : value.value, part: at, whole: value === null }
}

/** The token behind *whites*, or behind *whites of four eggs*. */
function pastPart(line: Line, part: number): number {
  if (line.at(part + 1) !== the.of) return part + 1
  const after = amountAt(line, line.at(part + 2) === the.but ? part + 3 : part + 2)
  if (after !== null) {
    const egg = pastDescribingEggs(line, after.end)
    return line.is(egg, Role.Egg) ? egg + 1 : after.article ? part + 1 : after.end
  }
  return line.is(pastDeterminers(line, part + 1), Role.Egg) ? pastDeterminers(line, part + 1) + 1 : part + 1
}

/** *leaving out four of the whites*, *but five whites*, *casting half the whites away*. */
function withoutAt(line: Line, at: number, tally: Tally): Clause | null {
  if (!line.is(at, Role.Without)) return null
  const particle = outward.has(line.at(at + 1).text)
  const found = countBefore(line, particle ? at + 2 : at + 1, tally.stated)
  if (found === null) return null
  let end = pastPart(line, found.part)
  const after = outward.has(line.at(end).text)
  if (after) end++
  const part = partOf(line, found.part)
  if (line.is(at, Role.Keeping)) return { effect: 'keep', part, count: found.count, end }
  if (line.is(at, Role.Removing) && !particle && !after) return null
  return { effect: 'take', part, count: found.count, end }
}

/** *eight whites*, *with half the whites*, *with two of the yolks taken out* beside the eggs. */
function besideAt(line: Line, at: number, tally: Tally): Clause | null {
  const found = countBefore(line, at, tally.stated)
  if (found === null) return null
  const part = partOf(line, found.part)
  const end = pastPart(line, found.part)
  // "six eggs, two white onions"
  if (part === 'whites' && line.at(found.part + 1).thing !== null && end === found.part + 1) return null
  const removed = removedAt(line, end)
  if (removed > 0) return { effect: 'take', part, count: found.count, end: removed }
  if (found.whole) return null
  const added = line.at(at - 1) === the.and && !tally.partsOnly && !line.is(at, Role.Half)
  if (added && part === 'whites' && found.count < tally.stated && tally.yolks === tally.whites)
    return { effect: 'add', part, count: found.count, end }
  if (tally.partsOnly) return tally[part] === 0 ? { effect: 'keep', part, count: found.count, end } : null
  return { effect: added ? 'add' : part === 'whites' ? 'keep' : 'add', part, count: found.count, end }
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
