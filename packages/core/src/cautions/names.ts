import { once } from '../once.js'
import {
  byName,
  cautions,
  eggs,
  findGood,
  type GoodRow,
  goods,
  type HeatRelationRow,
  heatRelations,
  heats,
  liquidHeats,
  vessels,
} from '../tables/index.js'
import { deedKey, nounKey } from './fold.js'

/** What a named thing stands for in the table: the key of its name, the id of its good and its classes. */
export interface Named {
  readonly things: readonly string[]
  readonly classes: readonly string[]
}

const byOwnName = byName(goods, nounKey)
/** Eggs of any bird are eggs, unless they are a good of their own. */
const goodsByKey = once(
  () => new Map([...eggs.flatMap(({ names }) => names.map((name) => [nounKey(name), byOwnName().get('egg')!] as const)), ...byOwnName()]),
)

function namedBy(key: string, good: GoodRow | undefined): Named {
  return { things: good ? [key, nounKey(good.id)] : [key], classes: good?.classes ?? [] }
}

/** A thing that a caller names: by its own spelling or plural, or else by its last word (*best fresh butter* is butter). */
export function nameThing(name: string): Named {
  const key = nounKey(name)
  const last = key.slice(key.lastIndexOf(' ') + 1)
  return namedBy(key, goodsByKey().get(key) ?? findGood(name) ?? goodsByKey().get(last))
}

/** The nouns that the cautions name. */
const warnedOf = once(() => new Set(cautions.flatMap(({ touches }) => (touches.things ?? []).map(nounKey))))

/** Names of a warmth and of a vessel, which name no thing: nothing that is blood-warm need have blood in it, nor an egg-spoonful egg. */
const noThings = once(
  () =>
    new Set(
      [...liquidHeats.flatMap(({ names }) => names.map(({ words }) => words)), ...vessels.flatMap(({ id, names }) => [id, ...names])]
        .map(nounKey)
        .filter((key) => key.includes(' ') && !warnedOf().has(key)),
    ),
)
const nothing: Named = { things: [], classes: [] }

/** The keys under which a text may name a thing: the names of goods, and the nouns of the cautions. */
export function* nounKeys(): Generator<string> {
  yield* goodsByKey().keys()
  yield* warnedOf()
  yield* noThings()
}

/** What one of those keys names. */
export function nameKey(key: string): Named {
  return noThings().has(key) ? nothing : namedBy(key, goodsByKey().get(key))
}

const ends = ['is drawn', 'be drawn', 'are drawn', 'is out', 'be out', 'are out', 'comes out', 'come out', 'is taken out', 'are taken out']

/** Ways to say that a batch has left the oven, which then falls: *bread is drawn*. */
function drawings({ kind, goods }: HeatRelationRow): readonly string[] {
  return kind === 'after' ? goods.flatMap((batch) => ends.map((end) => `${batch} ${end}`)) : []
}

const heatsByKey = once(() => {
  const index = new Map<string, string>()
  for (const row of heats) for (const { words } of row.names) if (!index.has(deedKey(words))) index.set(deedKey(words), row.id)
  for (const row of heatRelations) for (const name of [...row.names, ...drawings(row)]) index.set(deedKey(name), row.id)
  for (const { id } of [...heats, ...heatRelations]) index.set(deedKey(id), id)
  return index
})

/** The id of a heat by its id or by the words for it: `very-slow`, *slack*, *a slack oven*. */
export function nameHeat(words: string): string | undefined {
  const key = deedKey(words)
  return heatsByKey().get(key) ?? heatsByKey().get(key.replace(/^(?:an?|the) /, '').replace(/ oven$/, ''))
}

const relations = new Set(heatRelations.map(({ id }) => id))

/** The heats by the words with which a text speaks of them: words that name the oven, or a state that only an oven has. */
export const spokenHeats: () => ReadonlyMap<string, string> = once(
  () =>
    new Map(
      [...heatsByKey()].flatMap(([key, id]) => [...(relations.has(id) ? [key] : []), `${key} oven`].map((words) => [words, id] as const)),
    ),
)
