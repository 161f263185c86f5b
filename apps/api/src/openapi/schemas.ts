import type { SchemaObject } from 'openapi3-ts/oas31'
import * as z from 'zod'
import { components } from '../contract/index.js'

type JsonSchema = Record<string, unknown>
export type Schema = SchemaObject | { $ref: string }

const uri = (id: string): string => `#/components/schemas/${id}`

/** Zod marks every integer with the bounds of a double, which say nothing to a reader, and tells descriptions of its own registry alone. */
function forReaders({ jsonSchema, zodSchema }: { jsonSchema: JsonSchema; zodSchema: z.core.$ZodType }): void {
  if (jsonSchema.maximum === Number.MAX_SAFE_INTEGER) delete jsonSchema.maximum
  if (jsonSchema.minimum === Number.MIN_SAFE_INTEGER) delete jsonSchema.minimum
  const description = z.globalRegistry.get(zodSchema)?.description
  if (description !== undefined && jsonSchema.$ref === undefined) jsonSchema.description ??= description
}

function withoutMeta(schema: JsonSchema): SchemaObject {
  const { $schema: _, $id: __, id: ___, ...rest } = schema
  return rest as SchemaObject
}

/** Every schema that has a name. */
export function namedSchemas(): Record<string, SchemaObject> {
  const { schemas } = z.toJSONSchema(components, { uri, metadata: components, io: 'output', override: forReaders as never })
  return Object.fromEntries(Object.entries(schemas).map(([id, schema]) => [id, withoutMeta(schema as JsonSchema)]))
}

/** The parts of a union that can be told apart by name, so that each is referred to and not written out. */
function partsOf(schema: z.ZodType): readonly z.ZodType[] | undefined {
  return schema instanceof z.ZodUnion ? (schema.options as readonly z.ZodType[]) : undefined
}

/** A reference where the schema has a name, else the schema itself. */
export function schemaFor(schema: z.ZodType): Schema {
  const name = components.get(schema)?.id
  if (name) return { $ref: uri(name) }
  const parts = partsOf(schema)
  if (parts?.some((part) => !isPlain(part))) return { anyOf: parts.map(schemaFor) }
  const written = withoutMeta(z.toJSONSchema(schema, { io: 'input', override: forReaders as never }) as JsonSchema)
  return schema instanceof z.ZodArray ? { ...written, items: schemaFor(schema.element as z.ZodType) } : written
}

const isPlain = (schema: z.ZodType): boolean => schema instanceof z.ZodString || schema instanceof z.ZodNumber
