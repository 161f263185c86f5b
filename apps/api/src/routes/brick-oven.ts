import {
  allHeats,
  type Bake,
  type BakeWindow,
  type BrickOven,
  type BrickOvenOptions,
  bakingOrder,
  brickOven,
  brickOvenRecords,
  dataset,
  drawCoolingCurve,
  findHeat,
  type OvenMoment,
} from '@pottle/core'
import * as z from 'zod'
import * as contract from '../contract/index.js'
import type { Exact } from '../http/exact.js'
import { renameFaults } from '../http/faults.js'
import { route } from '../http/route.js'
import { sourceNotes } from '../plain.js'

type Request = Exact<z.output<typeof contract.BrickOvenRequest>>

const usualHours = 12
const curvePoints = 25

/** The likeliest degC that a receipt wants; its faults are named by its place in the list. */
function wanted({ heat }: Bake, index: number, year: number | undefined): number {
  const phrase = typeof heat === 'number' ? `${heat} C` : heat
  const own = `bakes.${index}.heat`
  return renameFaults({ phrase: own, celsius: own }, () => findHeat(phrase, year === undefined ? {} : { year })).value.best
}

function fired({ bakes, hours = usualHours, oneAtATime, ...options }: Request): {
  readonly oven: BrickOven
  readonly bakes: readonly BakeWindow[] | null
  readonly hours: number
} {
  const hottest = bakes && bakes.length > 0 ? Math.max(...bakes.map((bake, i) => wanted(bake, i, options.year))) : undefined
  const firing: BrickOvenOptions = { ...(hottest === undefined ? {} : { start: hottest }), ...options }
  const oven = renameFaults({ phrase: 'start', hours: 'minutesAfter' }, () => brickOven(firing))
  const order = bakes ? bakingOrder(bakes, { ...firing, hours, ...(oneAtATime === undefined ? {} : { oneAtATime }) }) : null
  return { oven, bakes: order, hours }
}

/** When the oven passes the middle of each heat, the hottest first. */
function fallsOf(oven: BrickOven, hours: number) {
  return [...allHeats()].reverse().flatMap(({ id, rank, label, core }) => {
    const celsius = Number(((core.low + core.high) / 2).toPrecision(6))
    const at = celsius <= oven.start.best ? oven.reaches(celsius) : null
    return at && at.best <= hours ? [{ heat: { id, rank, label }, celsius, hours: at }] : []
  })
}

const pointOf = ({ hours, value: { low, best, high } }: OvenMoment) => ({ hours, low, best, high })

/** `POST /v1/brick-oven` with `{"start": "as hot as for bread", "bakes": [{"name": "tarts", "heat": "a moderate oven"}]}` */
export const brickOvenRoute = route({
  method: 'post',
  path: '/v1/brick-oven',
  operation: 'coolBrickOven',
  tag: 'Heats',
  summary: 'A brick oven as it cools, and what bakes in it when',
  description:
    'Its curve with a band, when it passes each heat, and the order in which receipts go in. Ask for image/svg+xml to have it drawn. With receipts and no start, it begins at the hottest that they want.',
  query: z.strictObject({}),
  body: {
    description: 'The oven and the receipts.',
    media: {
      'application/json': {
        schema: contract.BrickOvenRequest,
        examples: {
          'A firing': {
            start: 'as hot as for bread',
            year: 1750,
            minutesAfter: 240,
            bakes: [
              { name: 'household bread', heat: 'as hot as for bread', minutes: 90 },
              { name: 'cheesecakes', heat: 'a moderate oven', minutes: 30 },
            ],
          },
        },
      },
    },
  },
  answer: {
    description: 'The oven, as data or as a standalone picture.',
    media: { 'application/json': { schema: contract.BrickOven }, 'image/svg+xml': { schema: z.string() } },
  },
  problems: ['unreadable', 'no-answer'],
  example: '',
  handle: async ({ media, read }) => {
    const asked = await read(contract.BrickOvenRequest)
    const { oven, bakes, hours } = fired(asked)
    if (media === 'image/svg+xml') return drawCoolingCurve(oven, { hours, bakes: bakes ?? [] })
    return {
      setting: { year: asked.year ?? null },
      start: oven.start,
      ambient: oven.ambient,
      timeConstant: oven.timeConstant,
      batchMinutes: oven.batchMinutes,
      moment: oven.moment,
      curve: oven.curve(hours, curvePoints).map(pointOf),
      falls: fallsOf(oven, hours),
      bakes: bakes && [...bakes],
      notes: [...oven.notes],
      sources: sourceNotes(brickOvenRecords().flatMap(({ source }) => source)),
      dataset,
    }
  },
})

/** A number where the words are one: degrees, not a phrase. */
const numberOrPhrase = (text: string): number | string => (/^-?\d{1,4}(\.\d{1,6})?$/.test(text.trim()) ? Number(text) : text)

/** `GET /v1/brick-oven.svg?start=as+hot+as+for+bread` */
export const brickOvenPictureRoute = route({
  method: 'get',
  path: '/v1/brick-oven.svg',
  operation: 'drawBrickOven',
  tag: 'Heats',
  summary: 'A cooling brick oven as a picture',
  description: 'The likeliest curve, its band, and the heats that it falls through.',
  query: z.strictObject({
    start: z.string().optional().describe('degC, or a heat phrase; after the bread is drawn where nothing is said.'),
    year: z.coerce.number('give a year').int().optional().describe('When the phrase was written.'),
    ambient: z.coerce
      .number('give degC')
      .optional()
      .describe('Of the room, in degC.')
      .meta({ examples: [15] }),
    timeConstant: z.coerce
      .number('give hours')
      .positive()
      .optional()
      .describe('Hours in which the difference from the room falls to 37 %.')
      .meta({ examples: [9] }),
    batchMinutes: z.coerce
      .number('give minutes')
      .positive()
      .optional()
      .describe('Minutes that a full batch is in the oven from the start.')
      .meta({ examples: [90] }),
    hours: z.coerce
      .number('give hours')
      .positive()
      .max(72)
      .optional()
      .describe('How long a stretch is drawn; 12 where none is given.')
      .meta({ examples: [8] }),
  }),
  answer: { description: 'A standalone picture.', media: { 'image/svg+xml': { schema: z.string() } } },
  problems: ['unreadable'],
  example: '?start=as+hot+as+for+bread&year=1750',
  handle: ({ query: { start, ...rest } }) => {
    const { oven, hours } = fired({ ...rest, ...(start === undefined ? {} : { start: numberOrPhrase(start) }) })
    return drawCoolingCurve(oven, { hours })
  },
})
