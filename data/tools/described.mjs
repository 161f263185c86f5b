/** Faults of datapackage.json: tables, fields or a version that it does not have. */
import { say } from './say.mjs'

const mend = 'run node data/tools/describe.mjs'

/**
 * @param {{version: string, resources: {name: string, schema: {fields: {name: string}[]}}[]}} description the content of datapackage.json
 * @param {Record<string, readonly object[]>} tables the rows by the name of their table
 * @param {string} version of the data's package.json
 * @returns {{table: string, row: string, said: string}[]}
 */
export function findDescriptionFaults(description, tables, version) {
  const described = new Map(description.resources.map(({ name, schema }) => [name, new Set(schema.fields.map((field) => field.name))]))
  const faults = Object.entries(tables).flatMap(([table, rows]) => {
    const fields = described.get(table)
    if (!fields) return [{ table, row: '(table)', said: `datapackage.json does not describe it: ${mend}` }]
    const unknown = new Map(rows.flatMap((row) => Object.keys(row).flatMap((field) => (fields.has(field) ? [] : [[field, row]]))))
    return [...unknown].map(([field, row]) =>
      say(
        table,
        row,
        `datapackage.json does not describe the field "${field}": add it to its type in packages/core/src/tables/schema/ and ${mend}`,
      ),
    )
  })
  for (const name of described.keys())
    if (!tables[name])
      faults.push({ table: name, row: '(table)', said: `datapackage.json describes it, but it is not registered: ${mend}` })
  if (description.version !== version)
    faults.push({ table: 'datapackage', row: '(version)', said: `it has version ${description.version}, not ${version}: ${mend}` })
  return faults
}
