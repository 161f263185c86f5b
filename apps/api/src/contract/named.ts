import * as z from 'zod'

/**
 * The bodies of the contract. These schemas are the one truth for validation, for TypeScript types and for the OpenAPI document.
 * Names given here become the document's components.
 */
export const components: z.core.$ZodRegistry<{ id: string; description?: string }> = z.registry()

/** Gives a schema a name and a description in the document. */
export function named<Schema extends z.ZodType>(id: string, description: string, schema: Schema): Schema {
  components.add(schema, { id, description })
  return schema
}
