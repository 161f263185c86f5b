import * as z from 'zod'
import * as common from './common.js'
import { named } from './named.js'

export const MeasureSense = named(
  'MeasureSense',
  'One dated and placed meaning of a measure.',
  z.object({
    id: common.id,
    label: common.label,
    standard: z.string().describe('The id of the standard that it rests on.'),
    ratio: z.string().describe('How many of the standard it is: a whole number, a decimal or a fraction.'),
    years: common.years,
    place: z.string().nullable().describe('The id of the place that it is confined to; null for any.'),
    unit: common.unit,
    value: z.number().describe('What one comes to, in `unit`.'),
    things: z.array(z.string()).nullable().describe('Goods or classes that the sense is confined to; null for any.'),
    grade: common.grade,
    checked: common.checked,
    sources: common.sources,
  }),
)

export const Measure = named(
  'Measure',
  'A measure as the tables have it.',
  z.object({
    id: common.id,
    label: common.label,
    kind: z.string().describe('`weight`, `capacity` or `count`.'),
    names: z.array(z.string()).describe('Listed spellings and plurals; others are read by rule.'),
    senses: z.array(MeasureSense).describe('Every meaning that the tables have of it.'),
    dataset: common.dataset,
  }),
)

export const MeasureList = named(
  'MeasureList',
  'The measures of the tables.',
  z.object({ measures: z.array(Measure).describe('In the order of the tables.'), dataset: common.dataset }),
)

/** CSL-JSON has many more fields than a client of ours must know; all of them pass through. */
export const Source = named(
  'Source',
  'A source as CSL-JSON; it may have more fields of that format.',
  z.looseObject({
    id: common.id,
    type: z.string().describe('`book`, `chapter`, `legislation` and others of CSL.'),
    title: z.string().describe('The title as it is printed.'),
    custom: z
      .looseObject({
        short: z.string().describe('What a footnote prints.'),
        seen: z.string().describe('Where its text was read, or that it was not.'),
      })
      .describe('What CSL has no field for.'),
  }),
)

export const SourceList = named('SourceList', 'Every source as CSL-JSON.', z.array(Source))
