import {
  allHeats,
  cautionsFor,
  dataset,
  drawHeatScale,
  findHeat,
  type HeatReading,
  heatById,
  type OvenHeat,
  oneYear,
  PottleError,
  tellStep,
} from '@pottle/core'
import * as z from 'zod'
import * as contract from '../contract/index.js'
import { badParameter, ProblemError, problem } from '../http/problem.js'
import { route } from '../http/route.js'
import { shortly, sourceNotes, temperature, withoutRecords } from '../plain.js'

const yearField = z.string().optional().describe('When the words were written, from 1000 to 2100, or a date in EDTF level 1.')

const citationsOf = ({ claims, goods, tests }: Pick<OvenHeat, 'claims' | 'goods' | 'tests'>) =>
  [...claims, ...goods, ...tests].flatMap(({ sources }) => sources)

const evidenceOf = ({ claims, goods, tests }: Pick<OvenHeat, 'claims' | 'goods' | 'tests'>) => ({
  claims: claims.map(withoutRecords),
  goods: goods.map(withoutRecords),
  tests: tests.map((test) => ({ ...withoutRecords(test), degF: test.degF && [...test.degF] })),
})

function plainHeat({ id, rank, label, aliases, band, core, modern, method, ...rest }: OvenHeat) {
  return {
    id,
    rank,
    label,
    aliases: aliases.map(({ words, years }) => ({ words, years: years && [...years] })),
    value: temperature(band),
    core,
    modern: [...modern],
    ...evidenceOf(rest),
    method,
    sources: sourceNotes(citationsOf(rest)),
    dataset,
  }
}

let heats: readonly ReturnType<typeof plainHeat>[] | undefined

/** The whole scale, written out when it is first asked for. */
function everyHeat(): readonly ReturnType<typeof plainHeat>[] {
  heats ??= allHeats().map(plainHeat)
  return heats
}

function plainReading({ then: _, claims, goods, tests, steps, ...rest }: HeatReading, notes: readonly string[]) {
  return {
    ...rest,
    modern: [...rest.modern],
    ...evidenceOf({ claims, goods, tests }),
    others: [...rest.others],
    steps: steps.map(tellStep),
    notes: [...notes, ...rest.notes],
    unread: [...rest.unread],
  }
}

function readHeat(phrase: string, date: string | undefined) {
  const { year, notes } = oneYear(date)
  const reading = findHeat(phrase, year === null ? {} : { year })
  const all = reading.then ? [reading, reading.then] : [reading]
  const cautions = cautionsFor({ heat: phrase })
  const citations = all.flatMap((one) => [...one.steps.flatMap(({ sources }) => sources), ...citationsOf(one)])
  return {
    ...plainReading(reading, notes),
    afterwards: reading.then && plainReading(reading.then, []),
    cautions: cautions.map(({ id, title, text, source }) => ({ id, title, text, sources: shortly(source) })),
    sources: sourceNotes([...citations, ...cautions.flatMap(({ source }) => source)]),
    dataset,
  }
}

/** `GET /v1/oven-heats?phrase=a+slack+oven&year=1690`, or `GET /v1/oven-heats` for all of them */
export const ovenHeatsRoute = route({
  method: 'get',
  path: '/v1/oven-heats',
  operation: 'readOvenHeat',
  tag: 'Heats',
  summary: 'What a heat phrase means; or every oven heat',
  description:
    'With a phrase: its place on the scale, degrees with a band, modern settings, tests, goods baked at it, and what dated books print. Without one: the scale, from drying to scorching.',
  query: z.strictObject({
    phrase: z.string().optional().describe('The words of a heat: `a slack oven`, `as hot as for manchet`, `after the bread is drawn`.'),
    year: yearField,
  }),
  answer: {
    description: 'The reading of the phrase, or the list.',
    media: { 'application/json': { schema: z.union([contract.HeatReading, contract.OvenHeatList]) } },
  },
  problems: ['unreadable'],
  example: '?phrase=a+slack+oven&year=1690',
  handle: ({ query: { phrase, year } }) => {
    if (phrase !== undefined) return readHeat(phrase, year)
    if (year !== undefined) throw badParameter('phrase', 'give the words of a heat with the year, or neither for the whole scale')
    return { heats: [...everyHeat()], dataset }
  },
})

/** `GET /v1/oven-heats/slow` */
export const ovenHeatRoute = route({
  method: 'get',
  path: '/v1/oven-heats/{id}',
  operation: 'describeOvenHeat',
  tag: 'Heats',
  summary: 'One oven heat',
  description: 'By its id: degrees for words without a year, modern settings, claims of dated books, goods and tests.',
  pathParameters: z.strictObject({ id: z.string().describe('The id of a heat, such as `slow`.') }),
  query: z.strictObject({}),
  answer: { description: 'The heat.', media: { 'application/json': { schema: contract.OvenHeat } } },
  problems: ['not-found'],
  example: 'slow',
  handle: ({ path }) => {
    try {
      const { id } = heatById(path.id)
      return everyHeat().find((heat) => heat.id === id)!
    } catch (error) {
      if (error instanceof PottleError) throw new ProblemError(problem('not-found', error.faults[0]!.detail))
      throw error
    }
  },
})

/** `GET /v1/oven-heats.svg?year=1690` */
export const ovenHeatsPictureRoute = route({
  method: 'get',
  path: '/v1/oven-heats.svg',
  operation: 'drawOvenHeats',
  tag: 'Heats',
  summary: 'The scale of oven heats as a picture',
  description: 'Each heat with its ends, what its books agree on, and what each of them prints.',
  query: z.strictObject({ year: yearField }),
  answer: { description: 'A standalone picture.', media: { 'image/svg+xml': { schema: z.string() } } },
  problems: [],
  example: '?year=1796',
  handle: ({ query }) => {
    const { year } = oneYear(query.year)
    return drawHeatScale(year === null ? {} : { year })
  },
})
