// Writes datapackage.json, the description of the tables as a Frictionless Data Package (https://datapackage.org), from the row types and
// their comments in packages/core/src/tables/schema/: `node data/tools/describe.mjs`. Run it after a table or a field is added.
import { readFileSync, writeFileSync } from 'node:fs'
import { fileURLToPath } from 'node:url'
import { tables } from './tables.mjs'
import { schemaOf } from './types.mjs'

const data = new URL('../', import.meta.url)

/** What fields of the same name mean in every table, where the type has no comment on them. */
const common = {
  id: 'The name of the row, unlike any other in its table.',
  label: 'What the row is about, in the words an answer shows.',
  source: 'Who says so: ids of sources.json, each with the place in the source.',
  grade: 'How well it is attested: statute, standard, measured, handbook, scholarship, practice or judgement.',
  checked: 'read: seen in that source or a transcription of it. memory: recalled, not looked up. none: nothing to look up.',
  note: 'What a reader should know besides.',
  years: 'First and last year, both included.',
  place: 'A place of places.json; none means everywhere.',
}

function fieldsOf({ properties, required }) {
  return Object.entries(properties).map(([name, { type, description = common[name] }]) => ({
    name,
    type,
    ...(description ? { description } : {}),
    ...(required.includes(name) ? { constraints: { required: true } } : {}),
  }))
}

const inPlaces = [{ fields: ['place'], reference: { resource: 'places', fields: ['id'] } }]

function resourceOf([name, type]) {
  const schema = schemaOf(type)
  return {
    name,
    path: `${name}.json`,
    format: 'json',
    mediatype: 'application/json',
    encoding: 'utf-8',
    ...(schema.description ? { description: schema.description } : {}),
    schema: { fields: fieldsOf(schema), primaryKey: ['id'], ...(schema.properties.place ? { foreignKeys: inPlaces } : {}) },
  }
}

/** The description as it should be. */
export function describeTables() {
  const { version, description } = JSON.parse(readFileSync(new URL('package.json', data), 'utf8'))
  const licence = { name: 'CC0-1.0', path: 'https://creativecommons.org/publicdomain/zero/1.0/', title: 'Creative Commons CC0 1.0' }
  const head = {
    $schema: 'https://datapackage.org/profiles/2.0/datapackage.json',
    name: 'pottle-data',
    title: description,
    version,
    licenses: [licence],
    contributors: [{ title: 'The Pottle contributors', roles: ['creator'] }],
  }
  return `${JSON.stringify({ ...head, resources: Object.entries(tables).map(resourceOf) }, null, 2)}\n`
}

if (process.argv[1] === fileURLToPath(import.meta.url)) writeFileSync(new URL('datapackage.json', data), describeTables())
