/** What kind of mistake it was: a malformed option, words that could not be read, or a question that has no answer. */
export type ErrorCode = 'bad-option' | 'unreadable' | 'no-answer'

/** One thing that was wrong, and where. */
export interface Fault {
  /** The option, field or parameter at fault: `year`, `phrase`, `dish.diameter`. */
  readonly parameter: string
  /** What was wrong and what would be right. */
  readonly detail: string
}

/** Words of a phrase, so that a reader sees what was understood. */
export interface WordsRead {
  readonly understood: readonly string[]
  readonly unread: readonly string[]
  /** Measures with a name like the words that were not understood. */
  readonly nearest: readonly string[]
}

/**
 * The one error that Pottle throws.
 *
 * @example new PottleError('bad-option', [{ parameter: 'year', detail: '3000 lies outside the tables' }]).message   // 'year: 3000 lies outside the tables'
 */
export class PottleError extends Error {
  override readonly name = 'PottleError'

  constructor(
    readonly code: ErrorCode,
    readonly faults: readonly Fault[],
    readonly words?: WordsRead | undefined,
  ) {
    super(faults.map((fault) => `${fault.parameter}: ${fault.detail}`).join('; '))
  }
}

/** An option that is out of range or of the wrong form. */
export function badOption(parameter: string, detail: string): PottleError {
  return new PottleError('bad-option', [{ parameter, detail }])
}

/** What a caller gave, short enough to print in an error; whatever it is, printing it does not fail. */
export function show(value: unknown): string {
  if (typeof value === 'string') return `"${value.slice(0, 40)}"`
  if (typeof value === 'number') return Number.isNaN(value) ? 'not-a-number' : String(value)
  if (typeof value === 'bigint') return `${value}n`.slice(0, 60)
  if (typeof value === 'symbol' || typeof value === 'function') return `a ${typeof value}`
  try {
    return String(JSON.stringify(value)).slice(0, 60)
  } catch {
    return 'an object that has no JSON'
  }
}

/** Refuses what is no text, for callers whose compiler did not. */
export function requireWord(parameter: string, value: unknown): string {
  if (typeof value !== 'string') throw badOption(parameter, `give it as text, not as ${value === null ? 'null' : typeof value}`)
  return value
}

/** Refuses what has no fields, for callers whose compiler did not. */
export function requireFields<Fields extends object>(parameter: string, value: Fields): Fields {
  if (typeof value !== 'object' || value === null) {
    throw badOption(parameter, `give an object with fields, not ${value === null ? 'null' : typeof value}`)
  }
  return value
}

/** A question that is well put but has no answer: a loaf of 1200, a pound of something measured in hours. */
export function noAnswer(parameter: string, detail: string): PottleError {
  return new PottleError('no-answer', [{ parameter, detail }])
}
