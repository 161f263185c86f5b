import {
  dataset,
  drawLoafSeries,
  type Loaf,
  type LoafQuestion,
  type LoafSpan,
  loafSeries,
  loavesOver,
  mixtureBand,
  places,
  type Setting,
  settingOf,
} from '@pottle/core'
import { z } from 'zod'
import { coverageField, LoafAnswer, settingFields } from '../contract/index.js'
import type { Exact } from '../http/exact.js'
import { route } from '../http/route.js'
import { mass, plainStep, sourceNotes } from '../plain.js'

const shillings = z.coerce.number('give a number of shillings').optional()

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
    .describe('A year from 1266 to 1900, or a span in EDTF level 1, such as `1660/1710`, for a series.')
    .meta({ examples: ['1690'] }),
  place: settingFields.place,
  wheat: shillings.describe('Your own price of middle wheat, in shillings for a Winchester quarter.'),
  allowance: shillings.describe("Your own baker's allowance, in shillings a quarter."),
  crumb: z.enum(['true', 'false'], 'give true or false').optional().describe('`true` for the crumb alone.'),
  market: z.enum(['london', 'town', 'country']).optional().describe('The sort of market, where the place alone does not tell it.'),
  coverage: z.coerce.number('give a number from 0.5 to 0.999').min(0.5).max(0.999).optional().describe(coverageField.description!),
})

type Query = Exact<z.output<typeof query>>

/** The loaves that a date may mean, with the doubt that falls on each; the likeliest first. */
function loavesIn(asked: Omit<LoafQuestion, 'year'>, { moments, year }: Setting): readonly (LoafSpan & { readonly weight: number })[] {
  return loavesOver(asked, moments, year ?? 'undated')
    .map((span) => ({ ...span, weight: span.years.reduce((sum, { weight }) => sum + weight, 0) }))
    .sort((a, b) => b.weight - a.weight)
}

const exactOf = (loaf: Loaf, alone: boolean): string | null => (alone ? (loaf.exact ?? null) : null)

function weigh({ year, place, coverage = 0.9, crumb, ...rest }: Query) {
  const setting = settingOf(year, place)
  const question = { ...rest, place: setting.places, crumb: crumb === 'true' }
  const loaves = loavesIn(question, setting)
  const { loaf } = loaves[0]!
  const { from, to } = setting
  return {
    setting: { year: from === to ? from : setting.year, place: setting.places[0]! },
    loaf: { coin: loaf.coin, kind: loaf.kind, label: loaf.label },
    ...mass(
      mixtureBand(
        loaves.map((one) => ({ weight: one.weight, value: one.loaf.value })),
        coverage,
      ),
    ),
    exact: exactOf(loaf, loaves.length === 1),
    ...(from === to ? {} : { series: [...loafSeries({ ...question, from, to, coverage })] }),
    steps: loaf.steps.map(plainStep),
    sources: sourceNotes(loaves.flatMap((one) => one.loaf.steps.flatMap(({ sources }) => sources))),
    dataset,
  }
}

/** `GET /v1/loaves?coin=penny&kind=white&year=1690` */
export const loavesRoute = route({
  method: 'get',
  path: '/v1/loaves',
  operation: 'weighLoaf',
  tag: 'Loaves',
  summary: 'What a priced loaf weighed',
  description: 'Computed from the price of wheat through the Assize of Bread, with every step. A span of years gives a series.',
  query,
  answer: { description: 'The weight of the loaf.', media: { 'application/json': { schema: LoafAnswer } } },
  problems: ['no-answer'],
  example: '?coin=penny&kind=white&year=1690&place=london',
  handle: ({ query: asked }) => weigh(asked),
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
    const { loaf, series, value, setting } = weigh(asked)
    const place = places.find(({ id }) => id === setting.place)!.label
    const { low, best, high, coverage } = value
    const drawn = series ?? [{ year: Number(setting.year), low, best, high }]
    return drawLoafSeries(drawn, { coin: loaf.coin, kind: loaf.kind, place, coverage })
  },
})
