import type { Operation } from './document.js'

/** A request as the examples of the document have it. */
export interface Request {
  readonly shows: string
  readonly address: string
  /** The media type of its body, where it has one. */
  readonly type?: string
  readonly body?: string
}

/** A body of many requests, one a line. */
export const lineByLine = 'application/x-ndjson'

/** The address with its parameters; all that have an example, or those alone without which nothing can be asked. */
function addressOf({ path, parameters }: Operation, wanted: 'all' | 'required'): string {
  const given = parameters.filter(({ example, required }) => example !== undefined && (required || wanted === 'all'))
  const query = new URLSearchParams(given.filter((one) => one.in === 'query').map(({ name, example }) => [name, String(example)]))
  const filled = given
    .filter((one) => one.in === 'path')
    .reduce((address, { name, example }) => address.replace(`{${name}}`, encodeURIComponent(String(example))), path)
  return query.size > 0 ? `${filled}?${query}` : filled
}

function bodiesOf({ reads }: Operation): readonly Pick<Request, 'shows' | 'type' | 'body'>[] {
  return Object.entries(reads).flatMap(([type, { examples = {} }]) =>
    Object.entries(examples).map(([shows, example]) => {
      const body = JSON.stringify('value' in example ? example.value : undefined)
      return { shows, type, body: type === lineByLine ? `${body}\n` : body }
    }),
  )
}

/** Every request that the document has an example of. */
export function requestsOf(operation: Operation): readonly Request[] {
  const [bare, full] = [addressOf(operation, 'required'), addressOf(operation, 'all')]
  if (Object.keys(operation.reads).length > 0) return bodiesOf(operation).map((body) => ({ ...body, address: full }))
  const least = { shows: 'with what it needs', address: bare }
  return full === bare ? [least] : [least, { shows: 'with every parameter', address: full }]
}

/** The options of `fetch` for a request, with what it wants to have back. */
export function initOf(
  { method }: Operation,
  { type, body }: Request,
  accept: string,
): RequestInit & { readonly headers: Record<string, string> } {
  return { method, headers: { accept, ...(type ? { 'content-type': type } : {}) }, ...(body === undefined ? {} : { body }) }
}
