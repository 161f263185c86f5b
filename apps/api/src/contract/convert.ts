import * as z from 'zod'
import * as common from './common.js'
import { named } from './named.js'

export const Sense = named(
  'Sense',
  'One meaning of the phrase in its setting, for the whole amount.',
  z.object({
    id: common.id,
    label: common.label,
    likelihood: common.likelihood,
    unit: common.unit,
    ...common.band,
    exact: z.string().nullable().describe('All the digits, where the law was exact and the amount is one number.'),
    steps: common.steps(common.Step),
  }),
)

export const readingKind = z
  .enum(['measured', 'counted', 'eggparts', 'priced', 'comparison', 'vague', 'heat', 'time', 'length', 'consistency'])
  .describe('What sort of statement the words are.')

export const Reading = named(
  'Reading',
  'What the words say, before anyone asks what they meant.',
  z.object({
    kind: readingKind,
    amount: common.Range.nullable().describe('How many of the measure; null where the words give no number.'),
    measure: common.measure,
    thing: common.thing,
    qualifier: z.string().nullable().describe('What the words say of how it is measured: `heaped`, `scant`.'),
    eggs: common.EggParts.nullable().describe('Of eggs: their parts.'),
    unread: common.unread,
  }),
)

export const Answer = named(
  'Answer',
  'Everything there is to say about a phrase.',
  z.object({
    phrase: common.phrase,
    setting: common.Setting,
    reading: Reading,
    value: common.Value,
    modern: z
      .array(common.ModernValue)
      .describe('The value in every unit that a kitchen may want; by weight too where the density is known.'),
    senses: z.array(Sense).describe('The likeliest first; their likelihoods add up to 1.'),
    text: z.string().describe('The answer in a line of kitchen language.'),
    notes: common.notes,
    cautions: common.cautions,
    sources: common.sourceNotes,
    dataset: common.dataset,
  }),
)

export const PhraseValue = named(
  'PhraseValue',
  'What a phrase comes to, without the working.',
  Answer.pick({ phrase: true, setting: true, value: true, text: true, notes: true, cautions: true, dataset: true }),
)

/** What may be said beside the setting, in a query or a body. */
export const phraseFields = {
  phrase: z
    .string('give the words of a measure, such as "a pottle of cream"')
    .describe('The words as the book has them, at most 1,000 characters.')
    .meta({ examples: ['a pottle of cream'] }),
  thing: z
    .string()
    .optional()
    .describe('The thing measured, where the phrase does not name it.')
    .meta({ examples: ['cream'] }),
  to: z
    .string()
    .optional()
    .describe(
      'A modern unit, such as `g` or `cup-us`: `text` is then in it, and `modern` has it alone; or `mass` or `volume`, which `value` is then of.',
    )
    .meta({ examples: ['g'] }),
  standard: z
    .string()
    .optional()
    .describe('A standard or sense to insist on, alone: `gallon.ale`, `pint.wine`, `ale`. /v1/measures has them all.')
    .meta({ examples: ['ale'] }),
}

export const ConvertRequest = named(
  'ConvertRequest',
  'A phrase with its setting and wishes; all but the phrase may be left out.',
  z.strictObject({ ...phraseFields, ...common.settingFields, coverage: common.coverageField }),
)
