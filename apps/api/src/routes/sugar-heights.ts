import { dataset, oneYear, type SugarHeight, sugarHeight, sugarHeights } from '@pottle/core'
import * as z from 'zod'
import { SugarHeightList, SugarReading } from '../contract/index.js'
import { route } from '../http/route.js'
import { sourceNotes, temperature, withoutRecords } from '../plain.js'
import { refuseYearAlone, wordsQuery } from './words.js'

function plainSugar({ value, modern, printed, names, sources, ...row }: SugarHeight) {
  return {
    ...row,
    value: temperature(value),
    modern: [...modern],
    printed: printed && withoutRecords(printed),
    names: names.map((name) => ({ ...name, years: name.years && [...name.years] })),
    sources: sourceNotes([...sources, ...(printed?.sources ?? [])]),
  }
}

/** `GET /v1/sugar-heights?phrase=boiled+to+a+candy+height`, or without a phrase for all of them */
export const sugarHeightsRoute = route({
  method: 'get',
  path: '/v1/sugar-heights',
  operation: 'readSugarHeight',
  tag: 'Heats',
  summary: 'What a height of boiled sugar means; or every height',
  description:
    'With a phrase: its degrees with a band, the test for it, its names by date and who prints a figure. Without one: all heights.',
  query: wordsQuery('The words of a height: `boil it to a candy height`, `feathered`.'),
  answer: {
    description: 'The reading of the phrase, or the list.',
    media: { 'application/json': { schema: z.union([SugarReading, SugarHeightList]) } },
  },
  problems: ['unreadable'],
  example: '?phrase=a+candy+height&year=1690',
  handle: ({ query: { phrase, year: date } }) => {
    if (phrase === undefined) {
      refuseYearAlone(date)
      return { heights: sugarHeights().map(plainSugar), dataset }
    }
    const { year } = oneYear(date)
    const { id, rank, label, ...row } = plainSugar(sugarHeight(phrase, year))
    return { phrase, setting: { year }, height: { id, rank, label }, ...row, dataset }
  },
})
