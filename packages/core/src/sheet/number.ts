import { badOption, show } from '../error.js'

/** What was given as the name of something in the tables; nothing is near to what is no text. */
export const nameIn = (value: unknown): string => (typeof value === 'string' ? value : '')

const fractionForm = /^(?:(\d{1,6}) )?(\d{1,6})\/(\d{1,6})$|^(\d{1,9}(?:\.\d{1,9})?)$/

/** A number as a person writes it: `0.5`, `1/3`, `1 1/2`; undefined for anything else. */
function readNumber(text: string): number | undefined {
  const [, whole, over, under, plain] = fractionForm.exec(text.trim()) ?? []
  if (plain !== undefined) return Number(plain)
  if (over === undefined || Number(under) === 0) return undefined
  return Number(whole ?? 0) + Number(over) / Number(under)
}

/**
 * A number between two ends, given as one or as text.
 *
 * @throws PottleError `bad-option` that names the parameter, the ends and what they are in
 */
export function numberIn(parameter: string, value: unknown, low: number, high: number, what = ''): number {
  const given = typeof value === 'string' ? readNumber(value) : value
  if (typeof given === 'number' && given >= low && given <= high) return given
  throw badOption(parameter, `${show(value)} won't do; give a number from ${low} to ${high}${what ? ` ${what}` : ''}`)
}

/** @throws PottleError `bad-option` where it is not a whole number from 1 to `high` */
export function countUpTo(parameter: string, value: unknown, high: number): number {
  if (typeof value === 'number' && Number.isInteger(value) && value >= 1 && value <= high) return value
  throw badOption(parameter, `${show(value)} won't do; give a whole number from 1 to ${high}`)
}

/** @throws PottleError `bad-option` where it is not an object with fields */
export function requireObject(parameter: string, value: unknown): asserts value is Readonly<Record<string, unknown>> {
  if (typeof value !== 'object' || value === null || Array.isArray(value))
    throw badOption(parameter, `${show(value)} is not an object with fields`)
}

/** @throws PottleError `bad-option` for a field that nothing reads */
export function refuseUnknown(parameter: string, value: object, known: readonly string[]): void {
  const unknown = Object.keys(value).find((key) => !known.includes(key))
  if (unknown !== undefined)
    throw badOption(`${parameter}.${unknown.slice(0, 40)}`, `there is no such field; there are ${known.join(', ')}`)
}
