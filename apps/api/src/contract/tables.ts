import { z } from 'zod'
import { checked, dataset, grade, years } from './common.js'
import { named } from './named.js'

export const MeasureSense = named(
  'MeasureSense',
  'One dated and placed meaning of a measure.',
  z.object({
    id: z.string(),
    label: z.string(),
    standard: z.string(),
    ratio: z.string(),
    years,
    place: z.string().nullable(),
    unit: z.string(),
    value: z.number(),
    things: z.array(z.string()).nullable().describe('Goods or classes that the sense is confined to; null for any.'),
    grade,
    checked,
    sources: z.array(z.string()),
  }),
)

export const Measure = named(
  'Measure',
  'A measure as the tables have it.',
  z.object({
    id: z.string(),
    label: z.string(),
    kind: z.string(),
    names: z.array(z.string()),
    senses: z.array(MeasureSense),
    dataset,
  }),
)

export const MeasureList = named('MeasureList', 'The measures of the tables.', z.object({ measures: z.array(Measure), dataset }))

/** CSL-JSON has many more fields than a client of ours must know; all of them pass through. */
export const Source = named(
  'Source',
  'A source as CSL-JSON. `custom.seen` says where its text was read, or that it was not.',
  z.looseObject({
    id: z.string(),
    type: z.string(),
    title: z.string(),
    custom: z.looseObject({ short: z.string(), seen: z.string() }),
  }),
)

export const SourceList = named('SourceList', 'Every source as CSL-JSON.', z.array(Source))
