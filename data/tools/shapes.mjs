/** Faults of rows that have another shape than the type of their table: fields that are missing, unknown, or of another kind. */
import { Ajv } from 'ajv'
import { closest, distance } from 'fastest-levenshtein'
import { inside, say, sayPath } from './say.mjs'
import { tables as types } from './tables.mjs'
import { schemaOf } from './types.mjs'

const ajv = new Ajv({ allErrors: true, verbose: true })
const validators = new Map(Object.entries(types).map(([table, type]) => [table, ajv.compile(schemaOf(type))]))

/** How a field is written, where its type alone would make a poor example. */
const samples = {
  source: [{ id: 'nicholson-1912', at: 'p. 64' }],
  years: [1707, 1824],
  names: ['creame', 'cream'],
  low: 0.9,
  best: 1,
  high: 1.1,
  author: [{ family: 'Digby', given: 'Kenelm' }],
  'date-parts': [[1669]],
}

function sampleOf(name, schema) {
  if (Object.hasOwn(samples, name)) return samples[name]
  if (schema.enum) return schema.enum[0]
  if (schema.type === 'array') return Array.from({ length: schema.minItems ?? 1 }, () => sampleOf('', schema.items))
  if (schema.type === 'object' && schema.properties)
    return Object.fromEntries(fieldsOf(schema).map((key) => [key, sampleOf(key, schema.properties[key])]))
  return { string: 'words', number: 1, boolean: true, object: {} }[schema.type]
}

const fieldsOf = ({ properties, required }) => (required.length > 0 ? required : Object.keys(properties))

/** JSON on one line, as people write it. */
const write = (value) => JSON.stringify(value, null, 1).replace(/\n\s*/g, ' ').replace(/\[ /g, '[').replace(/ \]/g, ']')

const kinds = { string: 'words in quotation marks', number: 'a number, without quotation marks', boolean: 'true or false' }

/** What would be right. */
function wanted(name, schema) {
  if (schema.enum) return `write one of ${schema.enum.join(', ')}`
  return `write ${kinds[schema.type] ?? `it so: ${write(sampleOf(name, schema))}`}`
}

/** What is wrong with a value of another kind, and how just that value would be right. */
function otherKind(found, name, schema) {
  if (found === null) return 'leave it out where there is nothing to say'
  if (schema.type === 'number' && typeof found === 'string' && /^\d+(?:[.,]\d+)?$/.test(found))
    return `write a number without quotation marks, with a point: ${found.replace(',', '.')}`
  if (schema.type === 'string' && typeof found === 'number') return `write it in quotation marks: "${found}"`
  if (schema.type === 'array' && schema.items.type === typeof found) return `write a list, in square brackets: ${write([found])}`
  return wanted(name, schema)
}

function missing(name, schema) {
  if (name === 'source') return `no source is named: list at least one, by its id in sources.json: "source": ${write(samples.source)}`
  return `${name} is missing: ${wanted(name, schema)}`
}

function unknownField(where, name, { properties }) {
  const fields = Object.keys(properties)
  const near = closest(name, fields)
  const mend =
    distance(name, near) <= Math.max(2, name.length / 3)
      ? `did you mean "${near}"?`
      : `its fields are ${fields.join(', ')}; a new one is added to the types in packages/core/src/tables/schema/ first`
  return `${where || 'the row'} has "${name}", which is no field there: ${mend}`
}

const empty = ({ where }) => `${where} is empty: write at least one, or leave it out`
const tooFewOrMany = ({ is, name, schema }) => `${is}: write ${schema.minItems} of them, ${write(sampleOf(name, schema))}`
const ofItems = (complaint) => (complaint.schema.minItems === complaint.schema.maxItems ? tooFewOrMany : empty)(complaint)

/** What to say of a complaint of the validator, by its keyword. */
const sayings = {
  required: ({ where, params, schema }) => inside(where, missing(params.missingProperty, schema.properties[params.missingProperty])),
  additionalProperties: ({ where, params, schema }) => unknownField(where, params.additionalProperty, schema),
  enum: ({ is, name, found, schema }) => {
    const low = String(found).toLowerCase()
    return `${is}: ${schema.enum.includes(low) ? `write "${low}"` : wanted(name, schema)}`
  },
  type: ({ is, name, found, schema }) => `${is}: ${otherKind(found, name, schema)}`,
  minLength: ({ where }) => `${where} is empty: write something, or leave it out`,
  minItems: ofItems,
  maxItems: ofItems,
  minProperties: empty,
}

/** One complaint in plain words. */
function inWords({ instancePath, keyword, params, data: found, parentSchema: schema }, row) {
  const path = instancePath.split('/').slice(1)
  const where = sayPath(row, path)
  const name = path.findLast((key) => !/^\d+$/.test(key)) ?? ''
  return sayings[keyword]({ where, name, found, params, schema, is: `${where || 'the row'} is ${write(found)}` })
}

/** A value that is none of the words it may be is told once, whatever else it is. */
const once = (error, _, errors) =>
  error.keyword !== 'type' || !errors.some((other) => other.keyword === 'enum' && other.instancePath === error.instancePath)

/** @returns {{table: string, row: string, said: string}[]} */
export function findShapeFaults(tables) {
  return Object.entries(tables).flatMap(([table, rows]) => {
    const validate = validators.get(table)
    if (!validate) return []
    return rows.flatMap((row, i) => {
      if (validate(row)) return []
      const which = typeof row?.id === 'string' ? row : `number ${i + 1}`
      return validate.errors.filter(once).map((error) => say(table, which, inWords(error, row)))
    })
  })
}
