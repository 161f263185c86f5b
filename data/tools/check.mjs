// Checks every table of data/ and says what is wrong with which row; the last line counts what there is. Exit code 1 where anything is wrong.
import { existsSync, readFileSync } from 'node:fs'
import { findDescriptionFaults } from './described.mjs'
import { countSenses, findFaults } from './faults.mjs'
import { partsOf } from './say.mjs'
import { tables as registered } from './tables.mjs'

const data = new URL('../', import.meta.url)
const faults = []
const tables = {}

for (const name of Object.keys(registered)) {
  const file = new URL(`${name}.json`, data)
  if (!existsSync(file))
    faults.push({ table: name, row: '(no file)', said: 'it is registered in tools/tables.mjs but there is no such file' })
  else tables[name] = readRows(name, file)
}

function readRows(name, file) {
  try {
    const rows = JSON.parse(readFileSync(file, 'utf8'))
    if (Array.isArray(rows)) return rows
    faults.push({ table: name, row: '(file)', said: 'it is not a list of rows: begin it with [ and end it with ]' })
  } catch (error) {
    faults.push({ table: name, row: '(file)', said: `it is not JSON: ${error.message}` })
  }
  return []
}

const tally = (field) => {
  const counts = {}
  for (const rows of Object.values(tables))
    for (const row of rows)
      for (const { part } of partsOf(row))
        if (typeof part[field] === 'string' && part.source) counts[part[field]] = (counts[part[field]] ?? 0) + 1
  return Object.entries(counts)
    .map(([name, count]) => `${name} ${count}`)
    .join(', ')
}

const readObject = (name) => JSON.parse(readFileSync(new URL(name, data), 'utf8'))
faults.push(...findFaults(tables), ...findDescriptionFaults(readObject('datapackage.json'), tables, readObject('package.json').version))
for (const { table, row, said } of faults) console.error(`data/${table}.json, row "${row}": ${said}`)

const rows = Object.values(tables).reduce((sum, list) => sum + list.length, 0)
console.log(
  `${Object.keys(tables).length} tables, ${rows} rows, ${countSenses(tables)} senses of weights, capacities and counts, ` +
    `${tables.sources?.length ?? 0} sources; by grade: ${tally('grade')}; by checking: ${tally('checked')}; ${faults.length === 0 ? 'no faults' : `${faults.length} faults`}`,
)
if (faults.length > 0) process.exitCode = 1
