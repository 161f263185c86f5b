import * as z from 'zod'
import * as common from './common.js'
import { named } from './named.js'

export const heatName = { id: common.id, rank: z.int().describe('Its place in the order, the least heat first.'), label: common.label }
const year = z.int().describe('The year of the book.')

export const HeatName = named('HeatName', 'A heat by name, in the order of all of its kind.', z.object(heatName))

export const HeatClaim = named(
  'HeatClaim',
  'What one dated book prints for a heat, in its own unit.',
  z.object({
    id: common.id,
    duty: z.string().describe('The case that the book puts degrees to.'),
    low: z.number().describe('The lower end that it prints.'),
    high: z.number().nullable().describe('The upper end; null where the book gives only a lower one.'),
    unit: z.enum(['degC', 'degF']).describe('The unit that it prints.'),
    year,
    source: common.source,
    grade: common.grade,
    checked: common.checked,
    votes: z.boolean().describe('Whether it counts towards the ends.'),
    note: common.note,
  }),
)

export const HeatGoods = named(
  'HeatGoods',
  'What a dated book baked at a heat.',
  z.object({
    id: common.id,
    phrase: z.string().describe('What the book calls the heat.'),
    goods: z.string().describe('What it baked.'),
    year,
    source: common.source,
  }),
)

export const OvenTest = named(
  'OvenTest',
  "A cook's test of an oven, as a dated book has it.",
  z.object({
    id: common.id,
    kind: z.string().describe('With what it is tried: `hand`, `paper`, `flour`.'),
    observation: z.string().describe('What the cook sees or feels.'),
    meaning: z.string().describe('What the book says that it means.'),
    heat: z.string().describe('The id of the heat that it means.'),
    degF: z.array(z.number()).length(2).nullable().describe('The ends in degF, where the book prints degrees.'),
    year,
    source: common.source,
    grade: common.grade,
    checked: common.checked,
    note: common.note,
  }),
)

const evidence = {
  claims: z.array(HeatClaim).describe('What dated books print, the nearest in time first.'),
  goods: z.array(HeatGoods).describe('What was baked at it.'),
  tests: z.array(OvenTest).describe('How cooks tried it without a thermometer.'),
}
const method = z.string().describe('How the ends were come by.')

export const OvenHeat = named(
  'OvenHeat',
  'One step of the scale of oven heats; `value` is for words without a year.',
  z.object({
    ...heatName,
    aliases: z
      .array(z.object({ words: z.string().describe('Words for it.'), years: common.years }))
      .describe('What else old books call it.'),
    value: common.Value,
    core: z
      .object({ ...common.ends, byVote: z.boolean().describe('True where the ends are the middle of what books print.') })
      .describe('The ends before they were widened for age, in degC.'),
    modern: common.modern,
    ...evidence,
    method,
    sources: common.sourceNotes,
    dataset: common.dataset,
  }),
)

export const OvenHeatList = named(
  'OvenHeatList',
  'Every oven heat, from drying to scorching.',
  z.object({ heats: z.array(OvenHeat).describe('In their order.'), dataset: common.dataset }),
)

const meaning = {
  phrase: common.phrase,
  setting: common.yearSetting,
  heat: HeatName,
  value: common.Value,
  core: z.object(common.ends).describe('The ends before they were widened for the year, in degC.'),
  modern: common.modern,
  ...evidence,
  relation: z
    .object({ id: common.id, label: common.label, falling: z.boolean().describe('True where the oven cools from that heat.') })
    .nullable()
    .describe('Set where the words tell the heat by what else is baked.'),
  of: z.enum(['oven', 'fire']).describe('Whether the words are of an oven or of a fire, which has no degrees of its own.'),
  likelihood: common.likelihood,
  others: z
    .array(z.object({ ...heatName, likelihood: common.likelihood, value: common.Band, note: common.note }))
    .describe('What else the words may mean.'),
  steps: common.steps(common.Step),
  weakest: common.grade.describe('The grade of the weakest step: no derivation is surer.'),
  notes: common.notes,
  unread: common.unread,
  method,
}

export const HeatMeaning = named('HeatMeaning', 'What one heat of a phrase means.', z.object(meaning))

export const HeatReading = named(
  'HeatReading',
  'What a heat phrase means.',
  z.object({
    ...meaning,
    afterwards: HeatMeaning.nullable().describe('The second heat of *quick at first, then slow*.'),
    cautions: common.cautions,
    sources: common.sourceNotes,
    dataset: common.dataset,
  }),
)
