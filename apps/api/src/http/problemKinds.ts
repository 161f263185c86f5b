/** One thing that was wrong: a query parameter by name, or a place in the body by JSON pointer (RFC 6901). */
export interface ProblemFault {
  readonly parameter?: string
  readonly pointer?: string
  readonly detail: string
}

/** What is said of a problem beside its kind. */
export interface ProblemCase {
  readonly detail: string
  readonly errors?: readonly ProblemFault[]
  readonly understood?: readonly string[]
  readonly unread?: readonly string[]
  readonly nearest?: readonly string[]
}

/** A kind of problem: its status, what a client should make of it, and a case of it. */
export interface KindOfProblem {
  readonly status: number
  readonly title: string
  /** What leads to it. */
  readonly cause: string
  /** What to do about it. */
  readonly advice: string
  readonly example: ProblemCase
}

/** What is said of several faults in one breath, each after the name of its place. */
export function tellFaults(faults: readonly ProblemFault[]): string {
  return faults.map(({ parameter, pointer, detail }) => `${parameter ?? (pointer || 'the body')}: ${detail}`).join('; ')
}

/** A case with one fault. */
function oneFault(where: { readonly parameter: string } | { readonly pointer: string }, detail: string): ProblemCase {
  const errors = [{ ...where, detail }]
  return { detail: tellFaults(errors), errors }
}

const kinds = {
  'bad-parameter': {
    status: 400,
    title: 'A parameter is missing, unknown or out of range',
    cause: 'A query parameter lacks, is not one of the route’s, is given twice, or has a value that the tables do not reach.',
    advice:
      'Each entry of `errors` names one and says what would be right, up to fifty. Values are weighed only where all parameters are known and well formed, so that a second request may find more.',
    example: oneFault({ parameter: 'year' }, '3000 lies outside the tables, which cover 1266 to 1914'),
  },
  'bad-body': {
    status: 400,
    title: 'The body is not what the route takes',
    cause: 'The body is not JSON, or a field of it lacks, is not one of the request’s, or has a value that will not do.',
    advice:
      'Each entry of `errors` points at the place (RFC 6901) and says what would be right, up to fifty. Values are weighed only where all fields are known and well formed, so that a second request may find more.',
    example: oneFault({ pointer: '/plan/scale' }, '0 won\'t do; give a number from 0.001 to 1000 or a fraction such as "1/3"'),
  },
  malformed: {
    status: 400,
    title: 'The request is not HTTP',
    cause: 'The request line, a header or the address breaks the rules of HTTP (RFC 9110 and 9112), or there is no Host header.',
    advice: 'Let a library make the request; write odd characters of the address as percent and two digits.',
    example: { detail: 'the request could not be read' },
  },
  'not-found': {
    status: 404,
    title: 'There is nothing at this address',
    cause: 'No route has this address, or the tables have no row of this id.',
    advice: 'Lists such as /v1/measures give the ids that exist; /openapi.json lists the routes.',
    example: { detail: 'there is no measure "potle"; /v1/measures lists those that there are' },
  },
  'method-not-allowed': {
    status: 405,
    title: 'This address does not answer that method',
    cause: 'The address exists, but not for the method of the request.',
    advice: 'The Allow header lists the methods it answers.',
    example: { detail: '/v1/measures answers GET, HEAD, OPTIONS' },
  },
  'not-acceptable': {
    status: 406,
    title: 'None of the media types asked for can be had',
    cause: 'The Accept header rules out every media type that the route has.',
    advice: 'Ask for one of those that `errors` lists, or send no Accept header.',
    example: oneFault({ parameter: 'Accept' }, 'ask for one of application/json'),
  },
  'too-slow': {
    status: 408,
    title: 'The request took too long to arrive',
    cause: 'The headers, or a body that is read as a whole, were not there in time.',
    advice: 'Send it again, which does no harm; send long work as NDJSON, which may take as long as it likes.',
    example: { detail: 'the body was not there after 30 seconds' },
  },
  'too-large': {
    status: 413,
    title: 'The body is too large',
    cause: 'A body that is read as a whole has more than 2 MiB, or a line of NDJSON more than 65,536 characters.',
    advice: 'Send long work as NDJSON, a line at a time, or in parts.',
    example: { detail: 'the body has more than 2097152 bytes' },
  },
  'address-too-long': {
    status: 414,
    title: 'The address is too long',
    cause: 'The address and the headers together have more than 16 kB, most of it the address.',
    advice: 'POST the words instead: /v1/convert, /v1/readings and /v1/sheets read them from the body.',
    example: { detail: 'the address and the headers have more than 16384 bytes, most of it the address' },
  },
  'unsupported-media-type': {
    status: 415,
    title: 'The body has a media type that the route does not read',
    cause: 'The Content-Type header lacks or names a media type that the route does not read, or the body is compressed.',
    advice: 'Send one of those that `errors` lists, as it is.',
    example: oneFault({ parameter: 'Content-Type' }, 'send application/json, not text/csv'),
  },
  unreadable: {
    status: 422,
    title: 'The words could not be read as a measure',
    cause: 'The request is well formed, but its words name no measure, heat or loaf that is known here.',
    advice: '`understood` and `unread` divide the words; `nearest` lists names like those that were not understood.',
    example: {
      ...oneFault({ parameter: 'phrase' }, 'states no measure, count or heat that can be read'),
      understood: ['a'],
      unread: ['prottle'],
      nearest: ['pottle', 'bottle', 'prune'],
    },
  },
  'no-answer': {
    status: 422,
    title: 'The words were read, but the question has no answer',
    cause: 'What was asked has no sense in that year, place or unit: a loaf before the assize, a weight without a density.',
    advice: 'Each entry of `errors` says why, and what to ask instead.',
    example: oneFault({ parameter: 'year' }, 'these tables of bread end with 1900, so they give no loaf of 1905; ask for 1266 to 1900'),
  },
  'too-many-headers': {
    status: 431,
    title: 'The headers are too long',
    cause: 'The headers and the address together have more than 16 kB.',
    advice:
      'Send fewer: beside those that HTTP itself needs, Accept, Accept-Encoding, Content-Type, If-None-Match and X-Request-Id are read. Where the address is long, POST the words instead.',
    example: { detail: 'the headers and the address have more than 16384 bytes' },
  },
  'too-many-requests': {
    status: 429,
    title: 'Too many requests',
    cause: 'More requests came from one address in a minute than this server answers.',
    advice: 'Retry-After says how many seconds to wait. A batch or a stream is one request, however long.',
    example: { detail: 'at most 600 requests a minute are answered; wait as Retry-After says' },
  },
  draining: {
    status: 503,
    title: 'The server is going down',
    cause: 'The server finishes what it has begun and takes no new work.',
    advice: 'Ask again after a moment; another server takes over.',
    example: { detail: 'no new requests are taken' },
  },
  internal: {
    status: 500,
    title: 'Something went wrong on our side',
    cause: 'A fault of the server that no request should be able to cause.',
    advice: 'Tell whoever runs the server the X-Request-Id of the answer: the log has it.',
    example: { detail: 'the fault is ours and has been logged' },
  },
} satisfies Readonly<Record<string, KindOfProblem>>

export type ProblemKind = keyof typeof kinds

/** Every kind of problem that the API answers with. */
export const problemKinds: Readonly<Record<ProblemKind, KindOfProblem>> = kinds
