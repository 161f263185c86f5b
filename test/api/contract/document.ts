/** The OpenAPI document as someone walks through it who knows of the server nothing else. */
import type {
  HeaderObject,
  MediaTypeObject,
  OpenAPIObject,
  OperationObject,
  ParameterObject,
  ReferenceObject,
  RequestBodyObject,
  ResponseObject,
} from 'openapi3-ts/oas31'

export type { OpenAPIObject } from 'openapi3-ts/oas31'

/** One method of one address. */
export interface Operation {
  readonly method: string
  readonly path: string
  readonly parameters: readonly ParameterObject[]
  /** What it reads, by media type. */
  readonly reads: Readonly<Record<string, MediaTypeObject>>
  readonly promises: readonly Promised[]
}

/** One thing that the document says may come back: a status in one media type, and of problems one of the kinds that share the status. */
export interface Promised {
  readonly status: number
  /** None of an answer without a body. */
  readonly media?: string
  readonly kind?: string
  readonly schema?: object
  /** The headers that it has, by their names. */
  readonly headers: readonly string[]
}

const problemMedia = 'application/problem+json'

function resolve<Part extends object>(document: OpenAPIObject, part: Part | ReferenceObject): Part {
  if (!('$ref' in part)) return part as Part
  const names = part.$ref.replace(/^#\//, '').split('/')
  return names.reduce<unknown>((at, name) => (at as Record<string, unknown>)[name], document) as Part
}

function promisesOf(status: number, { content = {}, headers: named = {} }: ResponseObject): Promised[] {
  const headers = Object.keys(named as Record<string, HeaderObject>)
  // The kinds are told by the examples, whatever the form that a problem is told in.
  const kinds = Object.keys(content[problemMedia]?.examples ?? {})
  const told = Object.entries(content).flatMap(([media, { schema }]) => {
    const promised = { status, media, headers, schema: schema as object }
    return kinds.length === 0 ? [promised] : kinds.map((kind) => ({ ...promised, kind }))
  })
  return told.length === 0 ? [{ status, headers }] : told
}

function operationAt(document: OpenAPIObject, path: string, method: string, { parameters, requestBody, responses }: OperationObject) {
  const body = requestBody && resolve<RequestBodyObject>(document, requestBody)
  return {
    method: method.toUpperCase(),
    path,
    parameters: (parameters ?? []).map((one) => resolve<ParameterObject>(document, one)),
    reads: body?.content ?? {},
    promises: Object.entries<ResponseObject | ReferenceObject>(responses ?? {}).flatMap(([status, response]) =>
      promisesOf(Number(status), resolve(document, response)),
    ),
  }
}

const methods = ['get', 'post', 'put', 'patch', 'delete'] as const

export function operationsOf(document: OpenAPIObject): readonly Operation[] {
  return Object.entries(document.paths ?? {}).flatMap(([path, item]) =>
    methods.flatMap((method) => (item[method] ? [operationAt(document, path, method, item[method])] : [])),
  )
}
