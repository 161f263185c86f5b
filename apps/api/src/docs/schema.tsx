import type { Child } from 'hono/jsx'
import { Words } from './words.js'

/** As much of a JSON Schema as the document uses. */
export interface JsonSchema {
  readonly $ref?: string
  readonly type?: string | readonly string[]
  readonly description?: string
  readonly enum?: readonly unknown[]
  readonly const?: unknown
  readonly items?: JsonSchema
  readonly anyOf?: readonly JsonSchema[]
  readonly properties?: Readonly<Record<string, JsonSchema>>
  readonly required?: readonly string[]
  readonly additionalProperties?: JsonSchema | boolean
  readonly minimum?: number
  readonly maximum?: number
  readonly exclusiveMinimum?: number
}

export const anchorOf = (name: string): string => `schema-${name}`

function joined(parts: readonly Child[], between: string): Child {
  return parts.flatMap((part, i) => (i === 0 ? [part] : [between, part]))
}

function bounds({ minimum, maximum, exclusiveMinimum }: JsonSchema): string {
  const low = minimum === undefined ? (exclusiveMinimum === undefined ? '' : `above ${exclusiveMinimum}`) : `from ${minimum}`
  return [low, maximum === undefined ? '' : `to ${maximum}`].filter(Boolean).join(' ')
}

/** What a value is, in a few words, with a link where it has a name. */
export function TypeOf({ schema }: { schema: JsonSchema }): Child {
  const { $ref, anyOf, items, type, additionalProperties } = schema
  if ($ref) {
    const name = $ref.split('/').at(-1)!
    return <a href={`#${anchorOf(name)}`}>{name}</a>
  }
  if (schema.enum) {
    return joined(
      schema.enum.map((value) => <code>{String(value)}</code>),
      ', ',
    )
  }
  if (schema.const !== undefined) return <code>{String(schema.const)}</code>
  if (anyOf) {
    return joined(
      anyOf.map((one) => <TypeOf schema={one} />),
      ' or ',
    )
  }
  if (items) {
    return (
      <>
        list of <TypeOf schema={items} />
      </>
    )
  }
  if (type === 'object' && typeof additionalProperties === 'object') {
    return (
      <>
        by name: <TypeOf schema={additionalProperties} />
      </>
    )
  }
  return [type === undefined ? 'anything' : [type].flat().join(' or '), bounds(schema)].filter(Boolean).join(' ')
}

interface Row {
  readonly name: string
  readonly schema: JsonSchema
  readonly required: boolean
}

/** The objects that a field holds, each with the path that leads to its fields: in a list, by any name, or as one form of several. */
function heldBy(field: JsonSchema, path: string): readonly (readonly [path: string, JsonSchema])[] {
  const { properties, items, anyOf = [], additionalProperties } = field
  if (properties) return [[path, field]]
  if (items) return heldBy(items, `${path}[]`)
  if (typeof additionalProperties === 'object') return heldBy(additionalProperties, `${path}.*`)
  return anyOf.flatMap((form) => heldBy(form, path))
}

/** The fields of an object, those of nested objects under their paths. */
function rowsOf(schema: JsonSchema, before = ''): readonly Row[] {
  return Object.entries(schema.properties ?? {}).flatMap(([name, field]) => {
    const path = `${before}${name}`
    const row = { name: path, schema: field, required: schema.required?.includes(name) ?? false }
    return [row, ...heldBy(field, path).flatMap(([inner, held]) => rowsOf(held, `${inner}.`))]
  })
}

/** Fields or parameters as a table. */
export function Fields({ rows }: { rows: readonly Row[] }) {
  return (
    <table class="ruled stack">
      <thead>
        <tr>
          <th scope="col">Name</th>
          <th scope="col">What it is</th>
          <th scope="col">What it says</th>
        </tr>
      </thead>
      <tbody>
        {rows.map(({ name, schema, required }) => (
          <tr>
            <th scope="row">
              <code>{name}</code>
            </th>
            <td data-head="What it is">
              <TypeOf schema={schema} />
              {required ? '' : ', may be left out'}
            </td>
            <td data-head="What it says">
              <Words text={schema.description} />
            </td>
          </tr>
        ))}
      </tbody>
    </table>
  )
}

type Schemas = Readonly<Record<string, JsonSchema>>

/** A field that is no more than a schema with a name says what that schema says. */
function withDescription(field: JsonSchema, schemas: Schemas): JsonSchema {
  const description = field.description ?? schemas[field.$ref?.split('/').at(-1) ?? '']?.description
  return description === undefined ? field : { ...field, description }
}

export function SchemaFields({ schema, schemas }: { schema: JsonSchema; schemas: Schemas }) {
  const rows = rowsOf(schema).map((row) => ({ ...row, schema: withDescription(row.schema, schemas) }))
  return rows.length > 0 ? (
    <Fields rows={rows} />
  ) : (
    <p>
      <TypeOf schema={schema} />
    </p>
  )
}
