import { type Fault, PottleError } from '@pottle/core'
import { FileError, NoAnswer, UsageError } from './fault.js'

/** Members of RFC 9457 that make sense without HTTP, with the words of a phrase where those are what went wrong. */
export interface Problem {
  readonly type: string
  readonly title: string
  readonly detail: string
  readonly errors?: readonly (Fault | { readonly pointer: string; readonly detail: string })[]
  readonly understood?: readonly string[]
  readonly unread?: readonly string[]
  readonly nearest?: readonly string[]
}

/** Every kind of problem; `unreadable` and `no-answer` are those of the HTTP API. */
const titles = {
  'bad-option': 'An option is missing, unknown or out of range',
  'bad-line': 'The line is not a question that can be answered',
  'too-long': 'The line is too long',
  file: 'A file could not be read or written',
  unreadable: 'The words could not be read as a measure',
  'no-answer': 'The words were read, but the question has no answer',
  internal: 'Something went wrong on our side',
} as const

export type ProblemKind = keyof typeof titles

export function problem(kind: ProblemKind, detail: string, rest: Omit<Problem, 'type' | 'title' | 'detail'> = {}): Problem {
  return { type: `/problems/${kind}`, title: titles[kind], detail, ...rest }
}

type Told = NonNullable<Problem['errors']>[number]
type FaultAs = (fault: Fault) => Told

const asItIs: FaultAs = (fault) => fault

const sayFault = (told: Told): string => {
  const place = 'pointer' in told ? told.pointer : told.parameter
  return place === '' ? told.detail : `${place}: ${told.detail}`
}

const faulty = (kind: ProblemKind, errors: readonly Told[], words?: PottleError['words']): Problem =>
  problem(kind, errors.map(sayFault).join('; '), { errors, ...words })

/** Whatever was thrown, as a problem. `ofOptions` is what a wrong option is called here; `as` puts a fault in the form that fits. */
export function problemFrom(thrown: unknown, ofOptions: ProblemKind, as: FaultAs = asItIs): Problem {
  if (thrown instanceof PottleError) {
    const { code, faults, words } = thrown
    return faulty(code === 'bad-option' ? ofOptions : code, faults.map(as), words)
  }
  if (thrown instanceof UsageError) return faulty(ofOptions, [as({ parameter: thrown.at, detail: thrown.detail })])
  if (thrown instanceof NoAnswer) return problem('no-answer', thrown.message)
  if (thrown instanceof FileError) return problem('file', thrown.message)
  return problem('internal', thrown instanceof Error ? thrown.message : String(thrown))
}
