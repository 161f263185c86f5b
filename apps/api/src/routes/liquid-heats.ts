import { dataset, type LiquidHeat, liquidHeat, liquidHeats, oneYear } from '@pottle/core'
import * as z from 'zod'
import { LiquidHeatList, LiquidReading } from '../contract/index.js'
import { route } from '../http/route.js'
import { sourceNotes, temperature, withoutRecords } from '../plain.js'
import { refuseYearAlone, wordsQuery } from './words.js'

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

/** `GET /v1/liquid-heats?phrase=blood-warm`, or without a phrase for all of them */
export const liquidHeatsRoute = route({
  method: 'get',
  path: '/v1/liquid-heats',
  operation: 'readLiquidHeat',
  tag: 'Heats',
  summary: 'How warm a liquid is by its kitchen name; or every name',
  description: 'With a phrase: its degrees with a band and what dated books print. Without one: every name, from cold to boiling.',
  query: wordsQuery('The words for a warmth: `blood-warm`, `scalding`, `a walm or two`.'),
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
