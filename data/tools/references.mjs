/** Faults of rows that point at other rows: sources, places, families, standards, measures. */
import { closest, distance } from 'fastest-levenshtein'
import { inside, partsOf, say } from './say.mjs'

const setOf = (rows, field = 'id') => new Set((rows ?? []).map((row) => row[field]))

/** @returns {{table: string, row: string, said: string}[]} */
export function findReferenceFaults(tables) {
  return [
    ...sourceFaults(tables),
    ...placeFaults(tables),
    ...pointerFaults(tables),
    ...senseFaults(tables),
    ...usageFaults(tables),
    ...reachFaults(tables),
    ...thingFaults(tables),
  ]
}

const citedBy = ({ source }) => (Array.isArray(source) ? source : typeof source === 'object' ? [source] : [])

function sourceFaults({ sources, ...tables }) {
  if (!sources) return []
  const known = new Map(sources.map((row) => [row.id, row]))
  const unseen = ({ id }) => /^not seen/.test(known.get(id)?.custom.seen ?? '')
  return Object.entries(tables).flatMap(([table, rows]) =>
    rows.flatMap((row) =>
      partsOf(row).flatMap(({ path, part }) => {
        const cited = citedBy(part)
        const faults = cited
          .filter(({ id }) => !known.has(id))
          .map(({ id }) => say(table, row, inside(path, `the source "${id}" is not in sources.json: ${mend(id, known)}`)))
        if (part.checked === 'read' && cited.length > 0 && cited.every((one) => known.has(one.id) && unseen(one)))
          faults.push(
            say(table, row, inside(path, `it says "read", but sources.json says that ${cited[0].id} was not seen: write "memory"`)),
          )
        return faults
      }),
    ),
  )
}

/** What to do about a name that is not there: the one that it is near to, if it is. */
function mend(name, known) {
  const near = closest(name, [...known.keys()])
  return distance(name, near) <= Math.max(2, name.length / 4)
    ? `did you mean "${near}"? Else add it there`
    : 'add it there, or mend its name'
}

function placeFaults({ places, ...tables }) {
  if (!places) return []
  const known = setOf(places)
  const wrong = (place) => `the place "${place}" is not in places.json: ${mend(place, known)}`
  const within = places.filter((row) => row.within && !known.has(row.within)).map((row) => say('places', row, wrong(row.within)))
  const used = Object.entries(tables).flatMap(([table, rows]) =>
    rows.flatMap((row) =>
      partsOf(row)
        .filter(({ part }) => typeof part.place === 'string' && !known.has(part.place))
        .map(({ path, part }) => say(table, row, inside(path, wrong(part.place)))),
    ),
  )
  return [...within, ...used, ...circles(places)]
}

/** Fields that name rows of other tables. */
const pointers = [
  ['assize-rules', 'regime', 'assize-regimes'],
  ['bake-foods', 'core', 'core-temperatures'],
  ['bake-foods', 'signs', 'doneness'],
  ['bakers-allowances', 'markets', 'bread-markets'],
  ['bread-markets', 'places', 'places'],
  ['comparisons', 'bird', 'eggs'],
  ['egg-parts', 'birds', 'eggs'],
  ['heat-claims', 'heat', 'heats'],
  ['heat-relations', 'heat', 'heats'],
  ['heat-witnesses', 'heat', 'heats', 'heat-relations'],
  ['loaf-kinds', 'as', 'loaf-kinds'],
  ['oven-tests', 'heat', 'heats'],
  ['usage', 'measures', 'measures'],
  ['words', 'within', 'words'],
]

function pointerFaults(tables) {
  return pointers.flatMap(([table, field, ...into]) => {
    if (!into.every((name) => tables[name])) return []
    const known = new Set(into.flatMap((name) => tables[name].map(({ id }) => id)))
    const files = into.map((name) => `${name}.json`).join(' or ')
    return (tables[table] ?? []).flatMap((row) =>
      partsOf(row)
        .flatMap(({ path, part }) => [part[field] ?? []].flat().map((id) => ({ path, id })))
        .filter(({ id }) => !known.has(id))
        .map(({ path, id }) => say(table, row, inside(path, `${field} names "${id}", which is not in ${files}: ${mend(id, known)}`))),
    )
  })
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
    row.senses.flatMap((sense) => {
      const faults = []
      if (!known.has(sense.of))
        faults.push(
          say('measures', row, `${sense.id}: "${sense.of}" is no standard and no family of standards.json: ${mend(sense.of, known)}`),
        )
      if (seen.has(sense.id)) faults.push(say('measures', row, `the sense id "${sense.id}" is used twice: rename one`))
      seen.add(sense.id)
      return faults
    }),
  )
}

function usageFaults({ usage = [], standards }) {
  if (!standards) return []
  const familyOf = new Map(standards.map((row) => [row.id, row.family]))
  const families = setOf(standards, 'family')
  const wrong = (id, family) =>
    familyOf.has(id) ? `"${id}" is a ${familyOf.get(id)}, not a ${family}` : `"${id}" is not in standards.json: ${mend(id, familyOf)}`
  return usage.flatMap((row) => {
    if (!families.has(row.family)) return [say('usage', row, `no standard is of the family "${row.family}": ${mend(row.family, families)}`)]
    return Object.keys(row.weights)
      .filter((id) => familyOf.get(id) !== row.family)
      .map((id) => say('usage', row, wrong(id, row.family)))
  })
}

/** Things and classes that rows are confined to: another spelling of a good would never be met. */
function thingFaults({ goods = [], ...tables }) {
  const known = new Set(goods.flatMap((row) => [row.id, ...row.classes]))
  const owner = new Map(goods.flatMap((row) => row.names.map((name) => [name, row.id])))
  return Object.entries(tables).flatMap(([table, rows]) =>
    rows.flatMap((row) =>
      partsOf(row)
        .flatMap(({ path, part }) => (Array.isArray(part.things) ? part.things : []).map((name) => ({ path, name })))
        .filter(({ name }) => owner.has(name) && !known.has(name))
        .map(({ path, name }) =>
          say(table, row, inside(path, `"${name}" is a spelling of the good "${owner.get(name)}": write that, or one of its classes`)),
        ),
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
    Object.keys(row.weights).flatMap((id) => {
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
