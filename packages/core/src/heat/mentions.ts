import { badOption } from '../error.js'
import { type Found, places, plainly } from './found.js'
import { comparatives, joining, lowering, negating, raising, than, weak } from './grammar.js'
import { heatAt, type Meaning } from './names.js'
import { coreOfHeat, heatOfRank, heatRow } from './scale.js'
import { keyOf, type Word } from './words.js'

/** A heat that a phrase names, with the words that bend it. */
interface Mention {
  readonly meanings: readonly Meaning[]
  readonly rank: number
  readonly negated: boolean
  readonly weak: boolean
  readonly from: number
  readonly to: number
  readonly used: readonly number[]
}

const moderate = 6
const but = keyOf('but')
const too = keyOf('too')
const rather = keyOf('rather')

/** *Very* leads away from moderate, *pretty* leads towards it. */
function bend(rank: number, way: number): number {
  if (way > 0) return rank > moderate ? heatOfRank(rank + 1).rank : heatOfRank(rank - 1).rank
  if (way < 0 && Math.abs(rank - moderate) > 1) return rank > moderate ? rank - 1 : rank + 1
  return rank
}

/** Every heat that the words name, from left to right. */
function mentionsIn(words: readonly Word[], year: number | null): readonly Mention[] {
  const mentions: Mention[] = []
  let negated = false
  let way = 0
  for (let at = 0; at < words.length; at++) {
    const { key } = words[at]!
    const bends = raising.has(key) || key === too
    // *Not too hot* and *not very hot* keep the oven below hot, not below very hot.
    const match = negated && bends ? undefined : heatAt(words, at, year)
    if (match) {
      const rank = bend(heatRow(match.known[0]!.heat).rank, way)
      const { to } = match
      mentions.push({
        meanings: match.known,
        rank,
        negated,
        weak: to - at === 1 && weak.has(key),
        from: at,
        to,
        used: places(words, at, to),
      })
      at = to - 1
      way = 0
    } else if (negating.has(key) || (key === rather && than.has(words[at + 1]?.key ?? ''))) negated = true
    else if (key === but) negated = false
    else if (bends) way = negated ? 0 : 1
    else if (lowering.has(key)) way = -1
  }
  const strong = mentions.filter((mention) => !mention.weak)
  return strong.length > 0 ? strong : mentions
}

/** Heats farther apart than this contradict each other, unless *or* stands between them. */
const widestPair = 2

function forbidContradiction(words: readonly Word[], mentions: readonly Mention[]): void {
  for (const [i, one] of mentions.entries())
    for (const other of mentions.slice(i + 1)) {
      const joined = words.slice(one.to, other.from).some(({ key }) => joining.has(key))
      if (joined || Math.abs(one.rank - other.rank) <= widestPair) continue
      const [a, b] = [one, other].map(({ from, to }) =>
        words
          .slice(from, to)
          .map(({ text }) => text)
          .join(' '),
      )
      throw badOption('phrase', `"${a}" and "${b}" contradict each other; give one of them, or "${a} or ${b}" for an oven between them`)
    }
}

/** All that is affirmed: one heat, or from one to another. */
function affirm(mentions: readonly Mention[]): Found {
  const [first] = mentions
  const used = mentions.flatMap((mention) => mention.used)
  const bent = first!.rank !== heatRow(first!.meanings[0]!.heat).rank
  const [meaning, ...others] = first!.meanings
  const found = plainly(heatOfRank(first!.rank).id, 'words', used, meaning!.note && !bent ? [meaning!.note] : [])
  const cores = mentions.map(({ rank }) => coreOfHeat(heatOfRank(rank).id))
  const core = { low: Math.min(...cores.map(({ low }) => low)), high: Math.max(...cores.map(({ high }) => high)) }
  return { ...found, core, likelihood: bent ? 1 : meaning!.likelihood, others: bent ? [] : others }
}

/** *Brisk, but not too hot*: the half of the heat that lies away from what is denied. */
function limit(found: Found, denied: readonly Mention[]): Found {
  const { rank } = heatRow(found.heat)
  const middle = (found.core.low + found.core.high) / 2
  const cut = denied.some((mention) => (rank > moderate ? mention.rank <= rank : mention.rank >= rank))
  const used = [...found.used, ...denied.flatMap((mention) => mention.used)]
  if (!cut) return { ...found, used }
  const core = rank > moderate ? { low: found.core.low, high: middle } : { low: middle, high: found.core.high }
  return { ...found, core, used }
}

/** *Not too quick* alone: the next heat towards moderate; *neither too hot nor too cold*: moderate itself. */
function deny(denied: readonly Mention[]): Found {
  const ranks = denied.map(({ rank }) => rank)
  const [lowest, highest] = [Math.min(...ranks), Math.max(...ranks)]
  const rank = lowest > moderate ? lowest - 1 : highest < moderate ? highest + 1 : moderate
  const used = denied.flatMap((mention) => mention.used)
  return plainly(heatOfRank(rank).id, 'words', used, ['Told by what it is not: read as the next heat towards a moderate oven.'])
}

/**
 * The heat that adjectives name: *a pretty quick oven*, *hot but not fierce*, *not too slow*.
 *
 * @throws PottleError `bad-option` for words that contradict each other
 */
export function byAdjectives(words: readonly Word[], year: number | null): Found | undefined {
  // *A slower oven*, with nothing that it is slower than, is a slow one.
  const plain = words.map((word) => {
    const compared = comparatives.get(word.key)
    return compared ? { ...word, key: keyOf(compared.base) } : word
  })
  const mentions = mentionsIn(plain, year)
  const affirmed = mentions.filter(({ negated }) => !negated)
  const denied = mentions.filter(({ negated }) => negated)
  if (affirmed.length > 0) {
    forbidContradiction(words, affirmed)
    return limit(affirm(affirmed), denied)
  }
  return denied.length > 0 ? deny(denied) : undefined
}
