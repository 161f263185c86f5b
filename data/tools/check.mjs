// Checks every table of data/ and says what is wrong with which row; the last line counts what there is. Exit code 1 where anything is wrong.
import { readFileSync } from 'node:fs'
import { describeTables } from './describe.mjs'
import { countSenses, findFaults } from './faults.mjs'
import { readTables } from './files.mjs'
import { partsOf } from './say.mjs'
import { tables as types } from './tables.mjs'

const data = new URL('../', import.meta.url)

function descriptionFaults() {
  if (readFileSync(new URL('datapackage.json', data), 'utf8') === describeTables()) return []
  return [{ table: 'datapackage', row: '', said: 'it describes other tables, fields or another version: run node data/tools/describe.mjs' }]
}

function tally(tables, field) {
  const counts = {}
  for (const row of Object.values(tables).flat())
    for (const { part } of partsOf(row)) if (part.source && part[field]) counts[part[field]] = (counts[part[field]] ?? 0) + 1
  return Object.entries(counts)
    .map(([name, count]) => `${name} ${count}`)
    .join(', ')
}

function count(tables) {
  const rows = Object.values(tables).reduce((sum, list) => sum + list.length, 0)
  const senses = `${countSenses(tables)} senses of weights, capacities and counts`
  const graded = `by grade: ${tally(tables, 'grade')}; by checking: ${tally(tables, 'checked')}`
  return `${Object.keys(tables).length} tables, ${rows} rows, ${senses}, ${tables.sources.length} sources; ${graded}; no faults`
}

const { tables, faults: fileFaults } = readTables(data, Object.keys(types))
const rowFaults = fileFaults.length > 0 ? fileFaults : findFaults(tables)
const faults = rowFaults.length > 0 ? rowFaults : descriptionFaults()
for (const { table, row, said } of faults) console.error(`data/${table}.json${row && `, row "${row}"`}: ${said}`)
if (faults.length > 0) {
  console.error(
    `${faults.length === 1 ? 'One fault' : `${faults.length} faults`}. Mend what is named and check again: more may come to light.`,
  )
  process.exitCode = 1
} else console.log(count(tables))
