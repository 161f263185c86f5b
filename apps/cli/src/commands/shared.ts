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
