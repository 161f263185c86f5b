import {
  OpenApiBuilder,
  type OperationObject,
  type ParameterObject,
  type PathItemObject,
  type ResponsesObject,
  type SchemaObject,
} from 'openapi3-ts/oas31'
import { z } from 'zod'
import { problemKinds } from '../http/problem.js'
import type { Content, Route } from '../http/route.js'
import { components } from './named.js'
import { Problem } from './service.js'

type JsonSchema = Record<string, unknown>

const uri = (id: string): string => `#/components/schemas/${id}`

/** Zod marks every integer with the bounds of a double, which say nothing to a reader. */
function withoutMachineBounds({ jsonSchema }: { jsonSchema: JsonSchema }): void {
  if (jsonSchema.maximum === Number.MAX_SAFE_INTEGER) delete jsonSchema.maximum
  if (jsonSchema.minimum === Number.MIN_SAFE_INTEGER) delete jsonSchema.minimum
}

function withoutMeta(schema: JsonSchema): SchemaObject {
  const { $schema: _, $id: __, id: ___, ...rest } = schema
  return rest as SchemaObject
}

function componentSchemas(): Record<string, SchemaObject> {
  const { schemas } = z.toJSONSchema(components, { uri, metadata: components, io: 'output', override: withoutMachineBounds as never })
  return Object.fromEntries(Object.entries(schemas).map(([id, schema]) => [id, withoutMeta(schema as JsonSchema)]))
}

/** A reference where the schema has a name, else the schema itself. */
function schemaFor(schema: z.ZodType): SchemaObject | { $ref: string } {
  const name = components.get(schema)?.id
  if (name) return { $ref: uri(name) }
  return withoutMeta(z.toJSONSchema(schema, { io: 'input', override: withoutMachineBounds as never }) as JsonSchema)
}

function parametersOf(schema: z.ZodObject | undefined, where: 'query' | 'path'): ParameterObject[] {
  return Object.entries(schema?.shape ?? {}).map(([name, field]) => {
    const { description, ...rest } = schemaFor(field as z.ZodType) as SchemaObject
    const required = where === 'path' || !(field as z.ZodType).safeParse(undefined).success
    return { name, in: where, required, ...(description ? { description } : {}), schema: rest }
  })
}

function contentOf({ media }: Content): Record<string, { schema: SchemaObject | { $ref: string } }> {
  return Object.fromEntries(
    Object.entries(media).map(([type, { schema, example }]) => [
      type,
      { schema: schemaFor(schema), ...(example === undefined ? {} : { example }) },
    ]),
  )
}

/** One response a status; kinds of problem that share a status are told apart by their `type`. */
function problemResponses({ problems }: Route): ResponsesObject {
  const responses: ResponsesObject = {}
  for (const kind of problems) {
    const { status, title } = problemKinds[kind]
    const before = responses[status]?.description
    responses[status] = {
      description: before ? `${before}; or: ${title}` : title,
      content: { 'application/problem+json': { schema: schemaFor(Problem) } },
    }
  }
  return responses
}

function operationOf(route: Route): OperationObject {
  return {
    operationId: route.operation,
    summary: route.summary,
    description: route.description,
    parameters: [...parametersOf(route.pathParameters, 'path'), ...parametersOf(route.query, 'query')],
    ...(route.body ? { requestBody: { description: route.body.description, required: true, content: contentOf(route.body) } } : {}),
    responses: { 200: { description: route.answer.description, content: contentOf(route.answer) }, ...problemResponses(route) },
  }
}

/** The OpenAPI 3.1 document of a set of routes. */
export function describeRoutes(routes: readonly Route[], version: string): object {
  const builder = new OpenApiBuilder({
    openapi: '3.1.1',
    info: {
      title: 'Pottle',
      version,
      description:
        'Turns the measures of old English cookery books into modern ones, with a band, the possible senses, and a source for every step.',
      license: { name: 'MIT', identifier: 'MIT' },
    },
    servers: [{ url: '/' }],
    paths: {},
  })
  for (const [id, schema] of Object.entries(componentSchemas())) builder.addSchema(id, schema)
  const paths = new Map<string, PathItemObject>()
  for (const route of routes) paths.set(route.path, { ...paths.get(route.path), [route.method]: operationOf(route) })
  for (const [path, item] of paths) builder.addPath(path, item)
  return builder.getSpec()
}
