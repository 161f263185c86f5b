import * as z from 'zod'
import { badParameter } from '../http/problem.js'

/** The words of a heat with their year, or nothing for the whole list. */
export const wordsQuery = (what: string) =>
  z.strictObject({
    phrase: z.string().optional().describe(what),
    year: z.string().optional().describe('When the words were written, from 1000 to 2100, or a date in EDTF level 1.'),
  })

/** @throws ProblemError 400 for a year without words */
export function refuseYearAlone(year: string | undefined): void {
  if (year !== undefined) throw badParameter('phrase', 'give words with the year, or neither for the whole list')
}
