import type { PottleError } from '@pottle/core'

/** One thing that was wrong: a query parameter by name, or a place in the body by JSON pointer (RFC 6901). */
export interface ProblemFault {
  readonly parameter?: string
  readonly pointer?: string
  readonly detail: string
}

/** Problem details for HTTP APIs: RFC 9457, section 3, with the words of a phrase beside them where that is what went wrong. */
export interface Problem {
  readonly type: string
  readonly title: string
  readonly status: number
  readonly detail: string
  readonly errors?: readonly ProblemFault[]
  readonly understood?: readonly string[]
  readonly unread?: readonly string[]
  readonly nearest?: readonly string[]
}

/** Every kind of problem the API answers with: its status, and what a client should make of it. */
export const problemKinds = {
  'bad-parameter': {
    status: 400,
    title: 'A parameter is missing, unknown or out of range',
    advice: 'Each entry of `errors` names one and says what would be right.',
  },
  'bad-body': {
    status: 400,
    title: 'The body is not what the route takes',
    advice: 'Each entry of `errors` points at the place (RFC 6901) and says what would be right.',
  },
  'not-found': { status: 404, title: 'There is nothing at this address', advice: 'Lists such as /v1/measures give the ids that exist.' },
  'method-not-allowed': {
    status: 405,
    title: 'This address does not answer that method',
    advice: 'The Allow header lists the methods it answers.',
  },
  'not-acceptable': {
    status: 406,
    title: 'None of the media types asked for can be had',
    advice: 'Ask for one of those that `errors` lists.',
  },
  'too-large': { status: 413, title: 'The body is too large', advice: 'Send long work as NDJSON, a line at a time.' },
  'unsupported-media-type': {
    status: 415,
    title: 'The body has a media type that the route does not read',
    advice: 'Send one of those that `errors` lists.',
  },
  unreadable: {
    status: 422,
    title: 'The words could not be read as a measure',
    advice: '`understood` and `unread` divide the words; `nearest` lists measures with names like them.',
  },
  'no-answer': {
    status: 422,
    title: 'The words were read, but the question has no answer',
    advice: 'Each entry of `errors` says why, and what to ask instead.',
  },
  'too-many-requests': { status: 429, title: 'Too many requests', advice: 'Retry-After says how many seconds to wait.' },
  draining: { status: 503, title: 'The server is going down', advice: 'Ask again; another server takes over.' },
  internal: {
    status: 500,
    title: 'Something went wrong on our side',
    advice: 'The request can be tried again; the log has the request id.',
  },
} as const

export type ProblemKind = keyof typeof problemKinds

export function problem(kind: ProblemKind, detail: string, rest: Omit<Problem, 'type' | 'title' | 'status' | 'detail'> = {}): Problem {
  const { status, title } = problemKinds[kind]
  return { type: `/problems/${kind}`, title, status, detail, ...rest }
}

/** A JSON pointer (RFC 6901) from the names that lead to a place. */
export function pointerTo(path: readonly PropertyKey[]): string {
  return path.map((key) => `/${String(key).replaceAll('~', '~0').replaceAll('/', '~1')}`).join('')
}

/** What went wrong in the library, as a problem: the same facts, with the status that fits, named as the request has them. */
export function problemFrom(error: PottleError, where: 'query' | 'body'): Problem {
  const { code, faults, message, words } = error
  if (where === 'query') return problem(code === 'bad-option' ? 'bad-parameter' : code, message, { errors: faults, ...words })
  const errors = faults.map(({ parameter, detail }) => ({ pointer: pointerTo(parameter.split('.')), detail }))
  return problem(code === 'bad-option' ? 'bad-body' : code, message, { errors, ...words })
}

/** A query parameter that is wrong by itself or beside the others. */
export function badParameter(parameter: string, detail: string): ProblemError {
  return new ProblemError(problem('bad-parameter', `${parameter}: ${detail}`, { errors: [{ parameter, detail }] }))
}

/** Thrown by routes; the app turns it into a response in one place. */
export class ProblemError extends Error {
  constructor(readonly problem: Problem) {
    super(problem.detail)
  }
}
