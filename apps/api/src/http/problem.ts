import type { PottleError } from '@pottle/core'
import { type ProblemCase, type ProblemFault, type ProblemKind, problemKinds, tellFaults } from './problemKinds.js'

export { type KindOfProblem, type ProblemCase, type ProblemFault, type ProblemKind, problemKinds } from './problemKinds.js'

/** Problem details for HTTP APIs: RFC 9457, section 3, with the words of a phrase beside them where that is what went wrong. */
export interface Problem extends ProblemCase {
  readonly type: string
  readonly title: string
  readonly status: number
}

/** Nobody mends more at a time; and a long list of faults would make a long answer of a short request. */
const mostErrors = 50
const mostDetail = 2000

export function problem(kind: ProblemKind, detail: string, { errors, ...rest }: Omit<ProblemCase, 'detail'> = {}): Problem {
  const { status, title } = problemKinds[kind]
  const shown = detail.length > mostDetail ? `${detail.slice(0, mostDetail)} …` : detail
  return { type: `/problems/${kind}`, title, status, detail: shown, ...(errors ? { errors: errors.slice(0, mostErrors) } : {}), ...rest }
}

/** A JSON pointer (RFC 6901) from the names that lead to a place. */
export function pointerTo(path: readonly PropertyKey[]): string {
  return path.map((key) => `/${String(key).replaceAll('~', '~0').replaceAll('/', '~1')}`).join('')
}

/** What went wrong in the library, as a problem: the same facts, with the status that fits, named as the request has them. */
export function problemFrom(error: PottleError, where: 'query' | 'body'): Problem {
  const { code, faults, words } = error
  const inBody = where === 'body'
  const errors = inBody ? faults.map(({ parameter, detail }) => ({ pointer: pointerTo(parameter.split('.')), detail })) : faults
  const badOption = inBody ? 'bad-body' : 'bad-parameter'
  return problem(code === 'bad-option' ? badOption : code, tellFaults(errors), { errors, ...words })
}

/** A problem that is no more than the faults that are named. */
export function faulty(kind: ProblemKind, errors: readonly ProblemFault[]): ProblemError {
  return new ProblemError(problem(kind, tellFaults(errors), { errors }))
}

/** A query parameter that is wrong by itself or beside the others. */
export function badParameter(parameter: string, detail: string): ProblemError {
  return faulty('bad-parameter', [{ parameter, detail }])
}

/** Thrown by routes; the app turns it into a response in one place. */
export class ProblemError extends Error {
  constructor(readonly problem: Problem) {
    super(problem.detail)
  }
}
