import { z } from 'zod'
import {
  band,
  Caution,
  coverageField,
  dataset,
  EggParts,
  ModernValue,
  Range,
  Setting,
  SourceNote,
  Step,
  settingFields,
  Value,
} from './common.js'
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
    modern: z.array(ModernValue).describe('The value in every unit that a kitchen may want; by weight too where the density is known.'),
    senses: z.array(Sense).describe('The likeliest first; their likelihoods add up to 1.'),
    text: z.string().describe('The answer in a line of kitchen language.'),
    notes: z.array(z.string()).describe('What the reader should know before using the figure.'),
    cautions: z.array(Caution),
    sources: z.array(SourceNote),
    dataset,
  }),
)

/** What may be said beside the setting, in a query or a body. */
export const phraseFields = {
  phrase: z
    .string('give the words of a measure, such as "a pottle of cream"')
    .describe('The words as the book has them, at most 1,000 characters.')
    .meta({ examples: ['a pottle of cream'] }),
  thing: z.string().optional().describe('The thing measured, where the phrase does not name it.'),
  to: z.string().optional().describe('A modern unit, such as `g` or `cup-us`, or `mass` or `volume`.'),
  standard: z.string().optional().describe('A standard or sense to insist on: `gallon.ale`, `pint.wine`, `ale`.'),
}

export const ConvertRequest = named(
  'ConvertRequest',
  'A phrase with its setting and wishes; all but the phrase may be left out.',
  z.strictObject({ ...phraseFields, ...settingFields, coverage: coverageField }),
)
