import { cautions, eggs, findGood, type GoodRow, goods, type HeatRelationRow, heatRelations, heats } from '../tables/index.js'
import { deedKey, nounKey } from './fold.js'

/** What a named thing stands for in the table: the key of its name, the id of its good and its classes. */
export interface Named {
  readonly things: readonly string[]
  readonly classes: readonly string[]
}

const goodsByKey = new Map<string, GoodRow>()
for (const row of goods) for (const name of row.names) if (!goodsByKey.has(nounKey(name))) goodsByKey.set(nounKey(name), row)
for (const row of goods) goodsByKey.set(nounKey(row.id), row)
// Eggs of any bird are eggs.
for (const name of eggs.flatMap(({ names }) => names))
  if (!goodsByKey.has(nounKey(name))) goodsByKey.set(nounKey(name), goodsByKey.get('egg')!)

const plain = new Set(cautions.flatMap((row) => row.touches.things ?? []).map(nounKey))

function namedBy(key: string, good: GoodRow | undefined): Named {
  return { things: good ? [key, nounKey(good.id)] : [key], classes: good?.classes ?? [] }
}

/** A thing that a caller names: by its own spelling or plural, or else by its last word (*best fresh butter* is butter). */
export function nameThing(name: string): Named {
  const key = nounKey(name)
  const last = key.slice(key.lastIndexOf(' ') + 1)
  return namedBy(key, goodsByKey.get(key) ?? findGood(name) ?? goodsByKey.get(last))
}

/** A run of words in a text: named only where it is a good's name, or a noun of the cautions, from end to end. */
export function nameWords(key: string): Named | undefined {
  const good = goodsByKey.get(key)
  return good || plain.has(key) ? namedBy(key, good) : undefined
}

const ends = ['is drawn', 'be drawn', 'are drawn', 'is out', 'be out', 'are out', 'comes out', 'come out', 'is taken out', 'are taken out']

/** Ways to say that a batch has left the oven, which then falls: *bread is drawn*. */
function drawings({ kind, goods }: HeatRelationRow): readonly string[] {
  return kind === 'after' ? goods.flatMap((batch) => ends.map((end) => `${batch} ${end}`)) : []
}

const heatsByKey = new Map<string, string>()
for (const row of heats) for (const { words } of row.names) if (!heatsByKey.has(deedKey(words))) heatsByKey.set(deedKey(words), row.id)
for (const row of heatRelations) for (const name of [...row.names, ...drawings(row)]) heatsByKey.set(deedKey(name), row.id)
for (const { id } of [...heats, ...heatRelations]) heatsByKey.set(deedKey(id), id)

/** The id of a heat by its id or by the words for it: `very-slow`, *slack*, *a slack oven*. */
export function nameHeat(words: string): string | undefined {
  const key = deedKey(words)
  return heatsByKey.get(key) ?? heatsByKey.get(key.replace(/^(?:an?|the) /, '').replace(/ oven$/, ''))
}

/** The heat that a run of words in a text speaks of: the words must name the oven, or a state that only an oven has. */
export function heatIn(key: string): string | undefined {
  const id = key.endsWith(' oven') ? heatsByKey.get(key.slice(0, -' oven'.length)) : heatsByKey.get(key)
  const ofOven = key.endsWith(' oven') || heatRelations.some((row) => row.id === id)
  return ofOven ? id : undefined
}
