import { settingOf } from '@pottle/core'

/** A year as one number, and what to say where the date left several open. */
export interface OneYear {
  readonly year: number | null
  readonly notes: readonly string[]
}

/**
 * The one year that stands for a date, for questions that take one: the year itself, or the middle of a span in EDTF.
 *
 * @throws PottleError `bad-option` for what is no date
 */
export function oneYear(date: string | undefined): OneYear {
  if (date === undefined) return { year: null, notes: [] }
  if (/^\d{4}$/.test(date)) return { year: Number(date), notes: [] }
  const { from, to } = settingOf(date)
  const year = Math.floor((from + to) / 2)
  return { year, notes: from === to ? [] : [`The words are taken as those of ${year}, the middle of ${date}.`] }
}
