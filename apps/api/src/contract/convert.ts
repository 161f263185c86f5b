import { z } from 'zod'
import { band, Caution, dataset, EggParts, ModernValue, Range, Setting, SourceNote, Step, Value } from './common.js'
import { named } from './named.js'

export const Sense = named(
  'Sense',
  'One meaning of the phrase in its setting, for the whole amount. `exact` has all the digits where the law was exact.',
  z.object({
    id: z.string(),
    label: z.string(),
    likelihood: z.number(),
    unit: z.string(),
    ...band,
    exact: z.string().nullable(),
    steps: z.array(Step),
  }),
)

export const readingKind = z.enum([
  'measured',
  'counted',
  'eggparts',
  'priced',
  'comparison',
  'vague',
  'heat',
  'time',
  'length',
  'consistency',
])

export const Reading = named(
  'Reading',
  'What the words say, before anyone asks what they meant. `unread` lists words that gave nothing.',
  z.object({
    kind: readingKind,
    amount: Range.nullable(),
    measure: z.string().nullable(),
    thing: z.string().nullable(),
    qualifier: z.string().nullable(),
    eggs: EggParts.nullable(),
    unread: z.array(z.string()),
  }),
)

export const Answer = named(
  'Answer',
  'Everything there is to say about a phrase.',
  z.object({
    phrase: z.string(),
    setting: Setting,
    reading: Reading,
    value: Value,
    modern: z.array(ModernValue),
    senses: z.array(Sense),
    text: z.string().describe('The answer in a line of kitchen language.'),
    notes: z.array(z.string()),
    cautions: z.array(Caution),
    sources: z.array(SourceNote),
    dataset,
  }),
)

export const ConvertRequest = named(
  'ConvertRequest',
  'A phrase with its setting and wishes; all but the phrase may be left out.',
  z.strictObject({
    phrase: z.string(),
    year: z.union([z.number(), z.string()]).nullable().optional(),
    place: z.string().optional(),
    thing: z.string().optional(),
    to: z.string().optional(),
    coverage: z.number().optional(),
    standard: z.string().optional(),
  }),
)
