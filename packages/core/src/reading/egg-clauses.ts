import { amountAt } from './amount.js'
import type { Line } from './line.js'
import { longestName } from './lookup.js'
import { eggNames } from './names.js'
import { valueAt } from './value.js'
import { the } from './vocabulary.js'
import { mark, Role } from './word.js'

/** What has been said of the eggs so far: all the yolks, all the whites, and how many eggs the statement began with. */
export interface Tally {
  yolks: number
  whites: number
  stated: number
  /** The statement began with yolks or whites alone. */
  readonly partsOnly: boolean
  readonly thing: string
}

export type Part = 'yolks' | 'whites'

/** A clause behind the eggs: *leaving out four of the whites*, *but three whites*, *whites and all*. */
export interface Clause {
  readonly effect: 'take' | 'keep' | 'add' | 'all'
  readonly part: Part
  readonly count: number
  /** A word says that no more than these are kept: *but*, *only*. */
  readonly only?: boolean
  readonly end: number
}

export const parted: number = Role.Yolk | Role.White

const outward = new Set(['out', 'by', 'away', 'aside', 'off', 'back'])

export const partOf = (line: Line, at: number): Part => (line.is(at, Role.Yolk) ? 'yolks' : 'whites')

/** Skips *of the*, *of their*, *their*. */
export function pastDeterminers(line: Line, start: number): number {
  let at = start
  while (at < start + 3 && (line.at(at) === the.of || line.is(at, Role.Determiner) || line.at(at) === the.but)) at++
  return at
}

/** The eggs named at a token, and whose they are: *eggs*, *goose eggs*, *eggs of a pullet*. */
export function eggNamed(line: Line, at: number): { readonly thing: string; readonly end: number } | null {
  const named = longestName(line, at, 'thing')
  // An egg-spoonful is no egg.
  if ((longestName(line, at, 'measure')?.end ?? at) > (named?.end ?? at)) return null
  if (named !== null && eggNames.has(named.row.label)) return { thing: named.row.label, end: named.end }
  // *Egg whites* have a name of their own.
  return line.is(at, Role.Egg) ? { thing: 'egg', end: at + 1 } : null
}

/** Skips what may stand between a number and its eggs: *of the best new laid*. */
export function pastDescribingEggs(line: Line, start: number): number {
  let at = start
  const describing = Role.Describing | Role.Qualifier | Role.Adverb | Role.Degree | Role.Determiner
  while (
    at < start + 5 &&
    !line.is(at, parted) &&
    eggNamed(line, at) === null &&
    (line.at(at) === the.of || line.is(at, describing) || line.at(at).text === 'laid')
  )
    at++
  return at
}

/** A clause that starts at a token. Once verbs have passed, only those that cannot be misread are taken. */
export function clauseAt(line: Line, at: number, tally: Tally, plain: boolean): Clause | null {
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
    if (pastHalf(line, at + 2) > 0) return { count: stated * line.value(at + 2), part: at, whole: false }
    const after = amountAt(line, line.at(at + 2) === the.but ? at + 3 : at + 2)
    if (after !== null && !after.article) return { count: after.low, part: at, whole: false }
  }
  return { count: value === null ? stated : half ? stated * value.value : value.value, part: at, whole: value === null }
}

/** The end of *half*, *half of them*, *half the eggs*, or 0: half of the eggs that were spoken of. */
function pastHalf(line: Line, half: number): number {
  if (!line.is(half, Role.Half)) return 0
  const at = pastDeterminers(line, half + 1)
  if (at > half + 1) return line.at(at) === the.them || line.is(at, Role.Egg) ? at + 1 : 0
  return line.is(at, Role.Mark) || line.at(at) === the.and ? at : 0
}

/** The token behind *whites*, or behind *whites of four eggs*. */
function pastPart(line: Line, part: number): number {
  if (line.at(part + 1) !== the.of) return part + 1
  const half = pastHalf(line, part + 2)
  if (half > 0) return half
  const after = amountAt(line, line.at(part + 2) === the.but ? part + 3 : part + 2)
  if (after !== null) {
    const egg = eggNamed(line, pastDescribingEggs(line, after.end))
    return egg?.end ?? (after.article ? part + 1 : after.end)
  }
  return eggNamed(line, pastDeterminers(line, part + 1))?.end ?? part + 1
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
  if (line.is(at, Role.Keeping)) return { effect: 'keep', part, count: found.count, only: true, end }
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
  // "and two of the whites" tells how many of the same eggs are kept.
  const same = line.at(found.part - 1) === the.the && line.at(found.part - 2) === the.of
  const added = line.at(at - 1) === the.and && !tally.partsOnly && !line.is(at, Role.Half) && !same
  if (added && part === 'whites' && found.count < tally.stated && tally.yolks === tally.whites)
    return { effect: 'add', part, count: found.count, end }
  if (tally.partsOnly) return tally[part] === 0 ? { effect: 'keep', part, count: found.count, end } : null
  return { effect: added ? 'add' : part === 'whites' ? 'keep' : 'add', part, count: found.count, end }
}
