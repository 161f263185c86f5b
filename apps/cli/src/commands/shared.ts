import { settingOf } from '@pottle/core'
import type { Options } from '../options.js'

export const yearOption = {
  year: { value: 'YEAR', short: 'y', says: 'When the words were used: 1690, about then (1690~), a decade (169X) or a span (1650/1700).' },
} as const satisfies Options

export const settingOptions = {
  ...yearOption,
  place: { value: 'PLACE', short: 'p', says: 'Where: england (where none is given), london, scotland, america, a county or a town.' },
} as const satisfies Options

export const jsonOption = { json: { says: 'Write JSON for other programs.' } } as const satisfies Options

export const toJson = (value: unknown): string => `${JSON.stringify(value, null, 2)}\n`

/** The words of a command line as the phrase that they were before the shell divided them. */
export const phraseOf = (words: readonly string[]): string => words.join(' ').trim()

/** The one year that stands for a date, for questions that take one: the year itself, or the middle of a span. */
export function oneYear(date: string | undefined): number | null {
  if (date === undefined) return null
  if (/^\d{4}$/.test(date)) return Number(date)
  const { from, to } = settingOf(date)
  return Math.floor((from + to) / 2)
}
