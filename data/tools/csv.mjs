// Writes every table as CSV after RFC 4180 into data/csv/, with a description of its columns as a Data Package: `npm run data:csv`.
import { mkdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { fileURLToPath } from 'node:url'
import { stringify } from 'csv-stringify/sync'
import { flatten } from './flat.mjs'
import { tables } from './tables.mjs'

const data = new URL('../', import.meta.url)
const read = (name) => JSON.parse(readFileSync(new URL(name, data), 'utf8'))

const said = {
  row: 'The id of the row that it belongs to.',
  nth: 'Its place among the parts of that row, from 1.',
}

function fieldOf({ name, type, item }) {
  const description = said[name]
  return { name, type, ...(type === 'list' ? { delimiter: '|', itemType: item } : {}), ...(description ? { description } : {}) }
}

const pointing = (field, resource) => ({ fields: [field], reference: { resource, fields: ['id'] } })

function resourceOf({ name, columns }) {
  const [table, inner] = name.split('.')
  const foreignKeys = columns.flatMap((column) => (column.name === 'place' ? [pointing('place', 'places')] : []))
  if (inner) foreignKeys.push(pointing('row', table))
  const schema = {
    fields: columns.map(fieldOf),
    primaryKey: inner ? ['row', 'nth'] : ['id'],
    ...(foreignKeys.length > 0 ? { foreignKeys } : {}),
  }
  // Said outright: some readers guess what divides the columns, and a bar stands in many cells.
  const dialect = { delimiter: ',', doubleQuote: true }
  return { name, path: `${name}.csv`, format: 'csv', mediatype: 'text/csv', encoding: 'utf-8', dialect, schema }
}

/** The tables of data/ as files of a folder. */
export function writeCsv(folder = new URL('csv/', data)) {
  rmSync(folder, { recursive: true, force: true })
  mkdirSync(folder, { recursive: true })
  const sheets = Object.keys(tables).flatMap((name) => flatten(name, read(`${name}.json`)))
  for (const { name, columns, cells } of sheets) {
    const rows = [columns.map((column) => column.name), ...cells]
    writeFileSync(new URL(`${name}.csv`, folder), stringify(rows, { record_delimiter: 'windows' }))
  }
  const { resources, ...head } = read('datapackage.json')
  const described = { ...head, name: `${head.name}-csv`, resources: sheets.map(resourceOf) }
  writeFileSync(new URL('datapackage.json', folder), `${JSON.stringify(described, null, 2)}\n`)
  return sheets.length
}

if (process.argv[1] === fileURLToPath(import.meta.url)) console.log(`data/csv: ${writeCsv()} files`)
