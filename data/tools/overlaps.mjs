/** Faults of two rows that speak of the same in the same years: one id, one name, one standard, one use, one sense twice. */
import { say } from './say.mjs'

/** @returns {{table: string, row: string, said: string}[]} */
export function findOverlaps(tables) {
  return [...idFaults(tables), ...nameFaults(tables), ...standardFaults(tables), ...usageFaults(tables), ...senseFaults(tables)]
}

function idFaults(tables) {
  return Object.entries(tables).flatMap(([table, rows]) => {
    const ids = rows.map(({ id }) => id)
    const again = rows.filter(({ id }, i) => ids.indexOf(id) < i)
    return again.map((row) => say(table, row, `the id "${row.id}" is used twice in this table: rename one of the rows or join them`))
  })
}

/** Tables in which one name must not stand for two rows. */
const namesUnique = ['measures', 'goods']

function nameFaults(tables) {
  return namesUnique.flatMap((table) => {
    const rows = tables[table] ?? []
    const owner = new Map(rows.map(({ id }) => [id, id]))
    return rows.flatMap((row) =>
      row.names.flatMap((name) => {
        const other = owner.get(name)
        owner.set(name, row.id)
        // A row that stands there twice is told of once, by its id.
        if (other === undefined || (other === row.id && name !== row.id && rows.filter(({ id }) => id === row.id).length > 1)) return []
        return [say(table, row, `the name "${name}" also belongs to "${other}": keep it in one of them`)]
      }),
    )
  })
}

const meet = (a, b) => a[0] <= b[1] && b[0] <= a[1]
const yearsOf = ({ years }) => years ?? [0, 9999]
const listOf = (names) => [...(names ?? [])].sort().join()

/** Calls `found` for each pair of rows with the same key whose years meet. */
function overlaps(rows, keyOf, found) {
  return [...groupBy(rows, keyOf).values()].flatMap((group) =>
    group.flatMap((row, i) => group.slice(i + 1).flatMap((other) => (meet(yearsOf(row), yearsOf(other)) ? found(row, other) : []))),
  )
}

function groupBy(rows, keyOf) {
  const groups = new Map()
  for (const row of rows) groups.set(keyOf(row), [...(groups.get(keyOf(row)) ?? []), row])
  return groups
}

function standardFaults({ standards = [] }) {
  const same = ({ label, family, place }) => [family, label, place].join('|')
  const twice = (row, other) => [say('standards', row, `"${other.id}" is the same standard in the same place, and their years overlap`)]
  return overlaps(standards, same, twice)
}

function usageFaults({ usage = [] }) {
  const same = ({ family, things, measures, place }) => [family, listOf(things), listOf(measures), place].join('|')
  const unclear = (row, other) => {
    const [a, b] = [yearsOf(row), yearsOf(other)]
    const nested = (a[0] >= b[0] && a[1] <= b[1]) || (b[0] >= a[0] && b[1] <= a[1])
    const alike = a[1] - a[0] === b[1] - b[0]
    return nested && !alike
      ? []
      : [say('usage', row, `"${other.id}" rules the same use and their years overlap: let one end where the other begins`)]
  }
  return overlaps(usage, same, unclear)
}

function senseFaults({ measures = [] }) {
  return measures.flatMap((row) => {
    const same = ({ of, ratio, things, place }) => [of, ratio, listOf(things), place].join('|')
    return overlaps(row.senses, same, (a, b) => [say('measures', row, `"${a.id}" and "${b.id}" say the same in the same years: keep one`)])
  })
}
