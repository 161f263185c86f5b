import type { BakeGoodRow, HeatRelationRow } from '../tables/index.js'
import { toCelsius } from './degrees.js'
import { type Found, places, plainly } from './found.js'
import { after, comparatives, enough, fires, much, negating, removing, than, utmost, whenever } from './grammar.js'
import { afterIn, asForIn, goodsIn, heatAt, type Match, wordingIn } from './names.js'
import { heatNearest, heatOfRank, heatRow } from './scale.js'
import { keyOf, type Word } from './words.js'

const as = keyOf('as')
const half = keyOf('half')
const highest = 'fierce'

function related(words: readonly Word[], { known, from, to }: Match<HeatRelationRow>): Found {
  const { low, best, high } = known.degF
  const notes = known.note ? [known.note] : []
  return {
    heat: known.heat,
    core: { low, best, high },
    via: 'relation',
    relation: known,
    likelihood: 1,
    others: [],
    notes,
    used: places(words, from, to),
  }
}

function byGoods(words: readonly Word[], { known, from, to }: Match<BakeGoodRow>): Found {
  const [low, high] = known.degF
  const { id } = heatNearest(toCelsius((low + high) / 2))
  const note = `Placed by what tables of the 1930s and 1940s bake it at: ${known.label}.`
  return {
    heat: id,
    core: { low, high },
    via: 'goods',
    goods: known,
    likelihood: 1,
    others: [],
    notes: [note],
    used: places(words, from, to),
  }
}

/** The heat that goods are baked at: *for manchet*, *as for a tart*, *fit for cheesecakes*. */
export function asFor(words: readonly Word[]): Found | undefined {
  const relation = asForIn(words)
  const tabled = goodsIn(words)
  // The longer name wins: *pie crust* over *pie*, *brown bread* over nothing.
  if (relation && (!tabled || tabled.to - tabled.from <= relation.to - relation.from)) return related(words, relation)
  return tabled && byGoods(words, tabled)
}

/** A cooling oven: *after the bread is drawn*, *when the pies come out*, *all night*. */
export function afterwards(words: readonly Word[]): Found | undefined {
  const wording = wordingIn(words)
  if (wording) return related(words, wording)
  const goods = afterIn(words)
  if (!goods) return undefined
  const says = (set: ReadonlySet<string>): boolean => words.some(({ key }) => set.has(key))
  return says(after) || (says(whenever) && says(removing)) ? related(words, goods) : undefined
}

const shifted = (found: Found, steps: number, used: readonly number[], words: string): Found => {
  const { id, label } = heatOfRank(heatRow(found.heat).rank + steps)
  const what = found.relation?.label ?? found.goods?.label ?? heatRow(found.heat).label
  return plainly(id, 'comparison', [...found.used, ...used], [`${words}, compared with "${what}": read as ${label}.`])
}

/** *Slower than for bread*, *much hotter than for manchet*. `rest` reads what it is compared with. */
export function byComparison(words: readonly Word[], rest: (words: readonly Word[]) => Found | undefined): Found | undefined {
  const at = words.findIndex(({ key }) => comparatives.has(key))
  const { way } = comparatives.get(words[at]?.key ?? '') ?? { way: 0 }
  const standard = words.findIndex(({ key }, i) => i > at && than.has(key))
  if (at < 0 || standard < 0) return undefined
  const compared = rest(words.slice(standard + 1))
  // *No quicker than for manchet* sets the same heat and forbids more.
  if (compared && negating.has(words[at - 1]?.key ?? '')) return compared
  const steps = much.has(words[at - 1]?.key ?? '') ? 2 : 1
  return compared && shifted(compared, way * steps, [words[at]!.at], words[at]!.text.toLowerCase())
}

/** *As hot as for manchet*, *not so hot as for bread*, *hot enough for pies*, *as hot as it can be made*. */
export function byEquation(words: readonly Word[], year: number | null): Found | undefined {
  const at = words.findIndex((_, i) => heatAt(words, i, year) !== undefined)
  const match = at < 0 ? undefined : heatAt(words, at, year)
  if (!match) return undefined
  const next = words[match.to]?.key
  if (next !== as && !enough.has(next ?? '')) return undefined
  const rest = words.slice(match.to + 1)
  const used = places(words, at, match.to)
  const compared = asFor(rest)
  const before = words.slice(0, at)
  const denied = before.some(({ key }) => negating.has(key))
  const halved = before.find(({ key }) => key === half)
  if (compared && halved) return shifted(compared, -2, [...used, halved.at], 'half as hot')
  if (compared) return denied ? shifted(compared, -1, used, 'cooler') : { ...compared, used: [...compared.used, ...used] }
  return rest.some(({ key }) => utmost.has(key)) && next === as
    ? plainly(highest, 'words', [...used, ...rest.map((word) => word.at)])
    : undefined
}

/** Whether the words speak of a fire and not of an oven. */
export const ofFire = (words: readonly Word[]): boolean => words.some(({ key }) => fires.has(key))
