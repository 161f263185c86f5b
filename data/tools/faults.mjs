/**
 * What is wrong with the tables, in words that a historian understands. A pure function of the tables: it prints nothing.
 */
import { findFormFaults } from './forms.mjs'
import { findOverlaps } from './overlaps.mjs'
import { findReferenceFaults } from './references.mjs'
import { findRuleFaults } from './rules.mjs'
import { findShapeFaults } from './shapes.mjs'

/**
 * The faults of a set of tables, the simplest alone: what is wrong with the shape of a row would only be told again, and worse, by what comes after.
 *
 * First the fields of each row, then the form of its texts, then its figures; at last what rows say of each other.
 *
 * @param {Record<string, readonly object[]>} tables the rows by the name of their table; tables that are not there are not looked into
 * @returns {{table: string, row: string, said: string}[]} where each fault is, what is wrong and what would be right; empty where all is well
 * @example findFaults({ places: [{ id: 'kent', label: 'Kent', within: 'englnad' }] })[0].said   // 'the place "englnad" is not in places.json ...'
 */
export function findFaults(tables) {
  const stages = [findShapeFaults, findFormFaults, findRuleFaults, (all) => [...findOverlaps(all), ...findReferenceFaults(all)]]
  for (const stage of stages) {
    const faults = stage(tables)
    if (faults.length > 0) return faults
  }
  return []
}

/** How many senses the measures have, a sense by a family counted once for each standard of it. */
export function countSenses({ measures = [], standards = [] }) {
  const inFamily = (family) => standards.filter((row) => row.family === family).length
  return measures
    .flatMap((row) => row.senses)
    .reduce((sum, { of, except = [] }) => sum + (inFamily(of) ? inFamily(of) - except.length : 1), 0)
}
