/**
 * What is wrong with the tables, in words that a historian understands. A pure function: it reads no file and prints nothing.
 */
import { shapes } from '../schema.mjs'
import { findReferenceFaults } from './references.mjs'
import { findRuleFaults } from './rules.mjs'
import { say } from './say.mjs'

/**
 * Every fault of a set of tables.
 *
 * @param {Record<string, readonly object[]>} tables the rows by the name of their table; tables that are not there are not looked into
 * @returns {{table: string, row: string, said: string}[]} where each fault is, what is wrong and what would be right; empty where all is well
 * @example findFaults({ places: [{ id: 'kent', label: 'Kent', within: 'englnad' }] })[0].said   // 'the place "englnad" is not in places.json ...'
 */
export function findFaults(tables) {
  return [...shapeFaults(tables), ...idFaults(tables), ...nameFaults(tables), ...findReferenceFaults(tables), ...findRuleFaults(tables)]
}

/** How many senses the measures have, a sense by a family counted once for each standard of it. */
export function countSenses({ measures = [], standards = [] }) {
  const inFamily = (family) => standards.filter((row) => row.family === family).length
  return measures
    .flatMap((row) => row.senses ?? [])
    .reduce((sum, { of, except = [] }) => sum + (inFamily(of) ? inFamily(of) - except.length : 1), 0)
}

function shapeFaults(tables) {
  return Object.entries(tables).flatMap(([table, rows]) => {
    const shape = shapes[table]
    if (!shape) return []
    return rows.flatMap((row) => (shape.safeParse(row).error?.issues ?? []).map((issue) => say(table, row, inWords(issue, row))))
  })
}

/** An issue of the schema library in plain words. */
function inWords(issue, row) {
  const field = issue.path.join('.') || 'the row'
  const found = issue.path.reduce((at, key) => at?.[key], row)
  if (issue.code === 'unrecognized_keys')
    return `${field} has ${issue.keys.join(', ')}, which this table does not know: mend the spelling or add the field to data/schema.mjs`
  if (issue.code === 'invalid_type' && found === undefined) return `${field} is missing: write ${issue.expected}`
  if (issue.code === 'invalid_value') return `${field} is ${JSON.stringify(found)}: write one of ${issue.values.join(', ')}`
  if (issue.code === 'too_small') return `${field} is empty: write at least one`
  return `${field} is ${JSON.stringify(found)}: ${issue.message}`
}

function idFaults(tables) {
  return Object.entries(tables).flatMap(([table, rows]) => {
    const seen = new Set()
    return rows.flatMap((row) => {
      if (!row.id) return [say(table, row, 'the row has no id: give it a short name of its own')]
      if (seen.has(row.id)) return [say(table, row, `the id "${row.id}" is used twice in this table: rename one of the rows or join them`)]
      seen.add(row.id)
      return []
    })
  })
}

/** Tables in which one name must not stand for two rows. */
const namesUnique = ['measures', 'goods']

function nameFaults(tables) {
  return namesUnique.flatMap((table) => {
    const owner = new Map((tables[table] ?? []).map((row) => [row.id, row.id]))
    return (tables[table] ?? []).flatMap((row) =>
      (row.names ?? []).flatMap((name) => {
        const other = owner.get(name)
        owner.set(name, row.id)
        return other ? [say(table, row, `the name "${name}" also belongs to "${other}": keep it in one of them`)] : []
      }),
    )
  })
}
