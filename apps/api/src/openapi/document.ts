import { OpenApiBuilder, type OperationObject, type ParameterObject, type PathItemObject, type SchemaObject } from 'openapi3-ts/oas31'
import type { z } from 'zod'
import type { Content, Route } from '../http/route.js'
import { headerReferences, headers, problemReferences, problemResponses } from './responses.js'
import { namedSchemas, type Schema, schemaFor } from './schemas.js'
import { tags } from './tags.js'

function parametersOf(schema: z.ZodObject | undefined, where: 'query' | 'path'): ParameterObject[] {
  return Object.entries(schema?.shape ?? {}).map(([name, field]) => {
    const { description, examples, ...rest } = schemaFor(field as z.ZodType) as SchemaObject
    const required = where === 'path' || !(field as z.ZodType).safeParse(undefined).success
    const [example] = (examples as readonly unknown[] | undefined) ?? []
    return {
      name,
      in: where,
      required,
      ...(description ? { description } : {}),
      ...(example === undefined ? {} : { example }),
      schema: rest,
    }
  })
}

function contentOf({ media }: Content): Record<string, { schema: Schema }> {
  return Object.fromEntries(
    Object.entries(media).map(([type, { schema, example }]) => [
      type,
      { schema: schemaFor(schema), ...(example === undefined ? {} : { example }) },
    ]),
  )
}

/** The headers of what is found, and the answer to a client that has it already. */
function foundResponses(route: Route): OperationObject['responses'] {
  const { description } = route.answer
  const keeps = route.method === 'get' && !route.passing
  const known = headerReferences('ETag', 'Cache-Control', 'X-Request-Id')
  return {
    200: { description, headers: keeps ? known : headerReferences('Cache-Control', 'X-Request-Id'), content: contentOf(route.answer) },
    ...(keeps ? { 304: { description: 'You have it already: nothing has changed since.', headers: known } } : {}),
  }
}

const ifNoneMatch: ParameterObject = {
  name: 'If-None-Match',
  in: 'header',
  required: false,
  description: 'The ETag of the answer that you have.',
  schema: { type: 'string' },
}

function operationOf(route: Route): OperationObject {
  const conditional = route.method === 'get' && !route.passing
  return {
    operationId: route.operation,
    tags: [route.tag],
    summary: route.summary,
    description: route.description,
    parameters: [
      ...parametersOf(route.pathParameters, 'path'),
      ...parametersOf(route.query, 'query'),
      ...(conditional ? [{ $ref: '#/components/parameters/IfNoneMatch' }] : []),
    ],
    ...(route.body ? { requestBody: { description: route.body.description, required: true, content: contentOf(route.body) } } : {}),
    responses: { ...foundResponses(route), ...problemReferences(route) },
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
        'Turns the measures of old English cookery books into modern ones, with a band, the possible senses, and a source for every step. No key is needed, and pages of any origin may ask.',
      license: { name: 'MIT', identifier: 'MIT' },
    },
    servers: [{ url: '/' }],
    security: [],
    tags: [...tags],
    externalDocs: { url: '/docs', description: 'The same as a page to read.' },
    paths: {},
    components: { headers, parameters: { IfNoneMatch: ifNoneMatch }, responses: problemResponses(routes) },
  })
  for (const [id, schema] of Object.entries(namedSchemas())) builder.addSchema(id, schema)
  const paths = new Map<string, PathItemObject>()
  for (const route of routes) paths.set(route.path, { ...paths.get(route.path), [route.method]: operationOf(route) })
  for (const [path, item] of paths) builder.addPath(path, item)
  return builder.getSpec()
}
