import { type Found, readReceipt, settingOf } from '@pottle/core'
import * as z from 'zod'
import { ReadingRequest, ReceiptReading } from '../contract/index.js'
import { route } from '../http/route.js'

/** What is told of each, in this order. */
const told = [
  'start',
  'end',
  'phrase',
  'kind',
  'amount',
  'measure',
  'thing',
  'qualifier',
  'eggs',
  'part',
  'portions',
  'things',
  'each',
  'standard',
  'tale',
  'contradiction',
] as const satisfies readonly (keyof Found)[]

const found = (one: Found): object => Object.fromEntries(told.flatMap((name) => (one[name] === undefined ? [] : [[name, one[name]]])))

/** `POST /v1/readings` with `{"text": "Take a pint of cream", "year": 1690}` */
export const readingsRoute = route({
  method: 'post',
  path: '/v1/readings',
  operation: 'readReceipt',
  tag: 'Receipts',
  summary: 'Find the measures, heats and times in prose',
  description: 'Each with the place in the text where it stands, in UTF-16 code units. The text may be as long as the body.',
  query: z.strictObject({}),
  body: {
    description: 'A receipt, or any stretch of prose, in period spelling.',
    media: {
      'application/json': {
        schema: ReadingRequest,
        examples: {
          'A receipt': {
            text: 'Take a pottle of cream, the yolks of vj eggs and half a pound of sugar; bake it in a slack oven half an hour.',
            year: 1690,
          },
        },
      },
    },
  },
  answer: { description: 'What the text states.', media: { 'application/json': { schema: ReceiptReading } } },
  problems: [],
  example: '',
  handle: async ({ read }) => {
    const { text, year = null, place } = await read(ReadingRequest)
    const setting = settingOf(year, place)
    const { measures, heats, warmths, times, lengths, consistencies, unmeasured, serves } = readReceipt(text)
    return {
      setting: { year: setting.from === setting.to ? setting.from : setting.year, place: setting.places[0]! },
      measures: measures.map(found),
      heats: [...heats],
      warmths: [...warmths],
      times: [...times],
      lengths: lengths.map(found),
      consistencies: consistencies.map(found),
      unmeasured: [...unmeasured],
      serves,
    }
  },
})
