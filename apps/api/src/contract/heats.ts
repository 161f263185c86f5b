import { z } from 'zod'
import { Band, Caution, checked, dataset, grade, ModernValue, SourceNote, Step, Value, years } from './common.js'
import { named } from './named.js'

const name = { id: z.string(), rank: z.int(), label: z.string() }
const setting = z.object({ year: z.union([z.number(), z.string()]).nullable() })

export const HeatName = named('HeatName', '`rank` orders all heats from drying to scorching.', z.object(name))

export const HeatClaim = named(
  'HeatClaim',
  'What one dated book prints for a heat, in its own unit. `votes` tells whether it counts towards the ends.',
  z.object({
    id: z.string(),
    duty: z.string(),
    low: z.number(),
    high: z.number().nullable(),
    unit: z.enum(['degC', 'degF']),
    year: z.int(),
    source: z.string(),
    grade,
    checked,
    votes: z.boolean(),
    note: z.string().nullable(),
  }),
)

export const HeatGoods = named(
  'HeatGoods',
  'What a dated book baked at a heat.',
  z.object({ id: z.string(), phrase: z.string(), goods: z.string(), year: z.int(), source: z.string() }),
)

export const OvenTest = named(
  'OvenTest',
  "A cook's test of an oven, as a dated book has it. `degF` only where the book prints degrees.",
  z.object({
    id: z.string(),
    kind: z.string(),
    observation: z.string(),
    meaning: z.string(),
    heat: z.string(),
    degF: z.array(z.number()).length(2).nullable(),
    year: z.int(),
    source: z.string(),
    grade,
    checked,
    note: z.string().nullable(),
  }),
)

const evidence = { claims: z.array(HeatClaim), goods: z.array(HeatGoods), tests: z.array(OvenTest) }
const ends = { low: z.number(), high: z.number() }

export const OvenHeat = named(
  'OvenHeat',
  'One step of the scale of oven heats. `value` is for words without a year; `core` has the ends before that widens them, in degC.',
  z.object({
    ...name,
    aliases: z.array(z.object({ words: z.string(), years })),
    value: Value,
    core: z.object({ ...ends, byVote: z.boolean() }),
    modern: z.array(ModernValue),
    ...evidence,
    method: z.string(),
    sources: z.array(SourceNote),
    dataset,
  }),
)

export const OvenHeatList = named(
  'OvenHeatList',
  'Every oven heat, from drying to scorching.',
  z.object({ heats: z.array(OvenHeat), dataset }),
)

const meaning = {
  phrase: z.string(),
  setting,
  heat: HeatName,
  value: Value,
  core: z.object(ends).describe('The ends before they were widened for the year, in degC.'),
  modern: z.array(ModernValue),
  ...evidence,
  relation: z
    .object({ id: z.string(), label: z.string(), falling: z.boolean() })
    .nullable()
    .describe('Set where the words tell the heat by what else is baked.'),
  of: z.enum(['oven', 'fire']),
  likelihood: z.number(),
  others: z.array(z.object({ ...name, likelihood: z.number(), value: Band, note: z.string().nullable() })),
  steps: z.array(Step),
  weakest: grade.describe('The grade of the weakest step: no derivation is surer.'),
  notes: z.array(z.string()),
  unread: z.array(z.string()),
  method: z.string(),
}

export const HeatMeaning = named('HeatMeaning', 'What one heat of a phrase means.', z.object(meaning))

export const HeatReading = named(
  'HeatReading',
  'What a heat phrase means; `afterwards` is the second heat of *quick at first, then slow*.',
  z.object({ ...meaning, afterwards: HeatMeaning.nullable(), cautions: z.array(Caution), sources: z.array(SourceNote), dataset }),
)

const printedSugar = z.object({ degF: z.number(), year: z.int(), source: z.string() })
const periodName = z.object({ words: z.string(), years, source: z.string().nullable() })

const sugar = {
  value: Value,
  modern: z.array(ModernValue),
  printed: printedSugar.nullable().describe('The degree that a book prints; null where none does, and the value is then our placing.'),
  test: z.string(),
  names: z.array(periodName),
  grade,
  checked,
  note: z.string().nullable(),
  sources: z.array(SourceNote),
}

export const SugarHeight = named('SugarHeight', 'A height to which sugar is boiled, at sea level.', z.object({ ...name, ...sugar }))

export const SugarHeightList = named(
  'SugarHeightList',
  'Every height of boiled sugar, from the small thread to caramel.',
  z.object({ heights: z.array(SugarHeight), dataset }),
)

export const SugarReading = named(
  'SugarReading',
  'What words for a height of boiled sugar mean.',
  z.object({ phrase: z.string(), setting, height: HeatName, ...sugar, dataset }),
)

const liquid = {
  value: Value,
  modern: z.array(ModernValue),
  printed: z
    .array(z.object({ ...ends, year: z.int(), source: z.string(), note: z.string().nullable() }))
    .describe('What dated books print, in degF.'),
  grade,
  checked,
  notes: z.array(z.string()),
  sources: z.array(SourceNote),
}

export const LiquidHeat = named('LiquidHeat', 'The warmth of a liquid by its kitchen name, at sea level.', z.object({ ...name, ...liquid }))

export const LiquidHeatList = named(
  'LiquidHeatList',
  'Every name for the warmth of a liquid, from cold to boiling.',
  z.object({ heats: z.array(LiquidHeat), dataset }),
)

export const LiquidReading = named(
  'LiquidReading',
  'What words for the warmth of a liquid mean.',
  z.object({ phrase: z.string(), setting, heat: HeatName, ...liquid, dataset }),
)
