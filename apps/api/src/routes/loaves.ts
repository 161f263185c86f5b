import { drawLoafSeries, places, weighLoaf } from '@pottle/core'
import * as z from 'zod'
import * as contract from '../contract/index.js'
import { route } from '../http/route.js'

const shillings = z.coerce.number('give a number of shillings').optional()

/** True or false, as a query spells them. */
const flag = (example: boolean) =>
  z.preprocess(
    (text) => (text === 'true' || text === 'false' ? text === 'true' : text),
    z
      .boolean('give true or false')
      .optional()
      .meta({ examples: [example] }),
  )

const query = z.strictObject({
  coin: z
    .string()
    .optional()
    .describe('The price that names it, `farthing` to `eighteenpenny`, or a fixed size such as `quartern`; `penny` where nothing is said.'),
  kind: z
    .string()
    .optional()
    .describe('`white`, `wheaten`, `household`, `manchet` and others; the common loaf of the year where nothing is said.'),
  year: z
    .string('give the year of the loaf')
    .describe('A year from 1266 to 1900, or a span in EDTF level 1, such as `1660/1710`, for a series.'),
  place: contract.settingFields.place.meta({ examples: ['london'] }),
  wheat: shillings.describe('Your own price of middle wheat, in shillings for a Winchester quarter, up to 1000.').meta({ examples: [40] }),
  allowance: shillings.describe("Your own baker's allowance, in shillings a quarter.").meta({ examples: [12] }),
  crumb: flag(true).describe('True for the crumb alone; false where nothing is said.'),
  market: z
    .enum(['london', 'town', 'country'])
    .optional()
    .describe('The sort of market, where the place alone does not tell it.')
    .meta({ examples: ['town'] }),
  coverage: z.coerce
    .number('give a number from 0.5 to 0.999')
    .min(0.5)
    .max(0.999)
    .optional()
    .describe(contract.coverageField.description!)
    .meta({ examples: [0.95] }),
})

/** `GET /v1/loaves?coin=penny&kind=white&year=1690` */
export const loavesRoute = route({
  method: 'get',
  path: '/v1/loaves',
  operation: 'weighLoaf',
  tag: 'Loaves',
  summary: 'What a priced loaf weighed',
  description: 'Computed from the price of wheat through the Assize of Bread, with every step. A span of years gives a series.',
  query,
  answer: { description: 'The weight of the loaf.', media: { 'application/json': { schema: contract.LoafAnswer } } },
  problems: ['no-answer'],
  example: '?coin=penny&kind=white&year=1690&place=london',
  handle: ({ query: asked }) => weighLoaf(asked),
})

/** `GET /v1/loaves.svg?coin=penny&kind=white&year=1660/1710` */
export const loavesPictureRoute = route({
  method: 'get',
  path: '/v1/loaves.svg',
  operation: 'drawLoaves',
  tag: 'Loaves',
  summary: 'The weight of a loaf against the year, as a picture',
  description: 'The same question as /v1/loaves; best with a span of years.',
  query,
  answer: { description: 'A standalone picture.', media: { 'image/svg+xml': { schema: z.string() } } },
  problems: ['no-answer'],
  example: '?coin=penny&kind=white&year=1660/1710',
  handle: ({ query: asked }) => {
    const { loaf, series, value, setting } = weighLoaf(asked)
    const place = places.find(({ id }) => id === setting.place)!.label
    const { low, best, high, coverage } = value
    const drawn = series ?? [{ year: Number(setting.year), low, best, high }]
    return drawLoafSeries(drawn, { coin: loaf.coin, kind: loaf.kind, place, coverage })
  },
})
