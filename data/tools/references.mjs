/** Faults of rows that point at other rows: sources, places, families, standards, measures. */
import { partsOf, say } from './say.mjs'

const setOf = (rows, field = 'id') => new Set((rows ?? []).map((row) => row[field]))

/** @returns {{table: string, row: string, said: string}[]} */
export function findReferenceFaults(tables) {
  return [
    ...sourceFaults(tables),
    ...placeFaults(tables),
    ...senseFaults(tables),
    ...usageFaults(tables),
    ...reachFaults(tables),
    ...thingFaults(tables),
  ]
}

function sourceFaults({ sources, ...tables }) {
  if (!sources) return []
  const known = new Map(sources.map((row) => [row.id, row]))
  const unseen = ({ id }) => /^not seen/.test(known.get(id)?.custom?.seen ?? '')
  return Object.entries(tables).flatMap(([table, rows]) =>
    rows.flatMap((row) =>
      partsOf(row).flatMap(({ path, part }) => {
        const cited = Array.isArray(part.source) ? part.source.filter((one) => one && typeof one === 'object') : []
        const faults = cited
          .filter(({ id }) => !known.has(id))
          .map(({ id }) =>
            say(table, row, `${path && `${path}: `}the source "${id}" is not in sources.json: add it there or mend its name`),
          )
        if (part.checked === 'read' && cited.length > 0 && cited.every((one) => known.has(one.id) && unseen(one)))
          faults.push(
            say(table, row, `${path && `${path}: `}it says "read", but sources.json says that ${cited[0].id} was not seen: write "memory"`),
          )
        return faults
      }),
    ),
  )
}

function placeFaults({ places, ...tables }) {
  if (!places) return []
  const known = setOf(places)
  const wrong = (place) => `the place "${place}" is not in places.json: add it there or mend its name`
  const within = places.filter((row) => row.within && !known.has(row.within)).map((row) => say('places', row, wrong(row.within)))
  const used = Object.entries(tables).flatMap(([table, rows]) =>
    rows.flatMap((row) =>
      partsOf(row)
        .filter(({ part }) => typeof part.place === 'string' && !known.has(part.place))
        .map(({ part }) => say(table, row, wrong(part.place))),
    ),
  )
  return [...within, ...used, ...circles(places)]
}

/** Places that lie within themselves by a chain of others. */
function circles(places) {
  const within = new Map(places.map((row) => [row.id, row.within]))
  return places.flatMap((row) => {
    const chain = new Set()
    for (let at = row.id; at; at = within.get(at)) {
      if (chain.has(at)) return [say('places', row, `it lies within itself by way of ${[...chain].join(', ')}: mend one "within"`)]
      chain.add(at)
    }
    return []
  })
}

function senseFaults({ measures = [], standards }) {
  if (!standards) return []
  const known = new Set([...setOf(standards), ...setOf(standards, 'family')])
  const seen = new Set()
  return measures.flatMap((row) =>
    (row.senses ?? []).flatMap((sense) => {
      const faults = []
      if (!known.has(sense.of))
        faults.push(say('measures', row, `${sense.id}: "${sense.of}" is no standard and no family of standards.json`))
      if (seen.has(sense.id)) faults.push(say('measures', row, `the sense id "${sense.id}" is used twice: rename one`))
      seen.add(sense.id)
      return faults
    }),
  )
}

function usageFaults({ usage = [], standards, measures }) {
  if (!standards) return []
  const familyOf = new Map(standards.map((row) => [row.id, row.family]))
  const families = setOf(standards, 'family')
  const measureIds = measures && setOf(measures)
  return usage.flatMap((row) => {
    const faults = Object.keys(row.weights ?? {})
      .filter((id) => familyOf.get(id) !== row.family)
      .map((id) =>
        say('usage', row, familyOf.has(id) ? `"${id}" is a ${familyOf.get(id)}, not a ${row.family}` : `"${id}" is not in standards.json`),
      )
    if (!families.has(row.family)) faults.push(say('usage', row, `no standard is of the family "${row.family}"`))
    for (const id of row.measures ?? [])
      if (measureIds && !measureIds.has(id)) faults.push(say('usage', row, `"${id}" is not in measures.json`))
    return faults
  })
}

/** Things and classes that rows are confined to: another spelling of a good would never be met. */
function thingFaults({ goods = [], ...tables }) {
  const known = new Set(goods.flatMap((row) => [row.id, ...row.classes]))
  const owner = new Map(goods.flatMap((row) => row.names.map((name) => [name, row.id])))
  return Object.entries(tables).flatMap(([table, rows]) =>
    rows.flatMap((row) =>
      partsOf(row)
        .flatMap(({ part }) => (Array.isArray(part.things) ? part.things : []))
        .filter((name) => owner.has(name) && !known.has(name))
        .map((name) => say(table, row, `"${name}" is a spelling of the good "${owner.get(name)}": write that, or one of its classes`)),
    ),
  )
}

/** Uses that give weight to a standard in years or places where it does not hold: the weight would be lost without a word. */
function reachFaults({ usage = [], standards = [], places = [] }) {
  const byId = new Map(standards.map((row) => [row.id, row]))
  const within = new Map(places.map((row) => [row.id, row.within]))
  const liesIn = (place, wider) => {
    const chain = new Set()
    for (let at = place; at && !chain.has(at); at = within.get(at)) chain.add(at)
    return chain.has(wider)
  }
  return usage.flatMap((row) =>
    Object.keys(row.weights ?? {}).flatMap((id) => {
      const standard = byId.get(id)
      const faults = []
      const [from, to] = row.years ?? []
      if (standard?.years && row.years && (from < standard.years[0] || to > standard.years[1]))
        faults.push(say('usage', row, `it weighs "${id}" from ${from} to ${to}, but that holds from ${standard.years.join(' to ')} alone`))
      if (standard?.place && row.place && !liesIn(row.place, standard.place))
        faults.push(say('usage', row, `it weighs "${id}" in ${row.place}, but that holds in ${standard.place} alone`))
      return faults
    }),
  )
}
