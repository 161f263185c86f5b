import { dataset, type LiquidHeat, liquidHeat, liquidHeats, oneYear, type SugarHeight, sugarHeight, sugarHeights } from '@pottle/core'
import { z } from 'zod'
import { LiquidHeatList, LiquidReading, SugarHeightList, SugarReading } from '../contract/index.js'
import { badParameter } from '../http/problem.js'
import { route } from '../http/route.js'
import { sourceNotes, temperature, withoutRecords } from '../plain.js'

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

function plainLiquid({ value, modern, printed, notes, sources, ...row }: LiquidHeat) {
  return {
    ...row,
    value: temperature(value),
    modern: [...modern],
    printed: printed.map(withoutRecords),
    notes: [...notes],
    sources: sourceNotes([...sources, ...printed.flatMap((one) => one.sources)]),
  }
}

const query = (what: string, example: string) =>
  z.strictObject({
    phrase: z
      .string()
      .optional()
      .describe(what)
      .meta({ examples: [example] }),
    year: z.string().optional().describe('When the words were written, from 1000 to 2100, or a date in EDTF level 1.'),
  })

function refuseYearAlone(year: string | undefined): void {
  if (year !== undefined) throw badParameter('phrase', 'give words with the year, or neither for the whole list')
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
  query: query('The words of a height: `boil it to a candy height`, `feathered`.', 'a candy height'),
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

/** `GET /v1/liquid-heats?phrase=blood-warm`, or without a phrase for all of them */
export const liquidHeatsRoute = route({
  method: 'get',
  path: '/v1/liquid-heats',
  operation: 'readLiquidHeat',
  tag: 'Heats',
  summary: 'How warm a liquid is by its kitchen name; or every name',
  description: 'With a phrase: its degrees with a band and what dated books print. Without one: every name, from cold to boiling.',
  query: query('The words for a warmth: `blood-warm`, `scalding`, `a walm or two`.', 'blood-warm'),
  answer: {
    description: 'The reading of the phrase, or the list.',
    media: { 'application/json': { schema: z.union([LiquidReading, LiquidHeatList]) } },
  },
  problems: ['unreadable'],
  example: '?phrase=blood-warm&year=1690',
  handle: ({ query: { phrase, year: date } }) => {
    if (phrase === undefined) {
      refuseYearAlone(date)
      return { heats: liquidHeats().map(plainLiquid), dataset }
    }
    const { year } = oneYear(date)
    const { id, rank, label, ...row } = plainLiquid(liquidHeat(phrase, year))
    return { phrase, setting: { year }, heat: { id, rank, label }, ...row, dataset }
  },
})
