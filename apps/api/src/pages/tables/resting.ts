import { allHeats, citeShort, listMeasures, sources } from '@pottle/core'

/** What leans on a source. */
export interface Resting {
  readonly measures: ReadonlySet<string>
  readonly heats: ReadonlySet<string>
}

/** The source that a footnote form speaks of: the longest short form that it begins with. */
function sourceFinder(): (text: string) => string | undefined {
  const byShort = sources.map(({ id }) => ({ id, short: citeShort({ id }) })).sort((a, b) => b.short.length - a.short.length)
  const known = new Map<string, string | undefined>()
  return (text) => {
    if (!known.has(text)) known.set(text, byShort.find(({ short }) => text === short || text.startsWith(`${short}, `))?.id)
    return known.get(text)
  }
}

let index: ReadonlyMap<string, { measures: Set<string>; heats: Set<string> }> | undefined

/** Made once, when a source is first looked at. */
function makeIndex(): NonNullable<typeof index> {
  const made = new Map(sources.map(({ id }) => [id, { measures: new Set<string>(), heats: new Set<string>() }]))
  const find = sourceFinder()
  for (const { id, senses } of listMeasures())
    for (const text of senses.flatMap((sense) => sense.sources)) made.get(find(text) ?? '')?.measures.add(id)
  for (const { id, claims, goods, tests } of allHeats()) {
    for (const cited of [...claims, ...goods, ...tests].flatMap((one) => one.sources)) made.get(cited.id)?.heats.add(id)
  }
  return made
}

/** The measures and heats that lean on a source. */
export function restingOn(id: string): Resting {
  index ??= makeIndex()
  return index.get(id)!
}
