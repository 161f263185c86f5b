import {
  type ContentObject,
  type ExamplesObject,
  OpenApiBuilder,
  type OperationObject,
  type ParameterObject,
  type PathItemObject,
  type SchemaObject,
} from 'openapi3-ts/oas31'
import * as z from 'zod'
import type { Content, Route } from '../http/route.js'
import { headerReferences, headers, problemReferences, problemResponses } from './responses.js'
import { namedSchemas, schemaFor } from './schemas.js'
import { tags } from './tags.js'

/** The parameters of the route's own example, as they stand in the address. */
function exampleOf({ pathParameters, example }: Route): Readonly<Record<string, string>> {
  if (!pathParameters) return Object.fromEntries(new URLSearchParams(example))
  return Object.fromEntries(Object.keys(pathParameters.shape).map((name) => [name, example]))
}

function parametersOf(route: Route, where: 'query' | 'path'): ParameterObject[] {
  const { shape } = where === 'path' ? (route.pathParameters ?? z.object({})) : route.query
  const own = exampleOf(route)
  return Object.entries(shape as Record<string, z.ZodType>).map(([name, field]) => {
    const { description, examples = [], ...rest } = schemaFor(field) as SchemaObject
    const required = where === 'path' || !field.safeParse(undefined).success
    const example = name in own ? field.parse(own[name]) : examples[0]
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

const shown = (examples: Readonly<Record<string, unknown>>): ExamplesObject =>
  Object.fromEntries(Object.entries(examples).map(([name, value]) => [name, { value }]))

function contentOf({ media }: Content): ContentObject {
  return Object.fromEntries(
    Object.entries(media).map(([type, { schema, examples }]) => [
      type,
      { schema: schemaFor(schema), ...(examples ? { examples: shown(examples) } : {}) },
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
      ...parametersOf(route, 'path'),
      ...parametersOf(route, 'query'),
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
