import { z } from 'zod'
import { EggParts, Range, Setting, settingFields } from './common.js'
import { readingKind } from './convert.js'
import { named } from './named.js'

const span = {
  start: z.int().describe('Where it begins in the text, in UTF-16 code units.'),
  end: z.int().describe('Where it ends; the unit at this place is not part of it.'),
  phrase: z.string(),
}

export const FoundMeasure = named(
  'FoundMeasure',
  'A measure that prose states, and where.',
  z.object({
    ...span,
    kind: readingKind,
    amount: Range.nullable(),
    measure: z.string().nullable(),
    thing: z.string().nullable(),
    qualifier: z.string().nullable(),
    eggs: EggParts.nullable(),
    part: z.string().optional().describe('Which part of the thing: `juice`, `crumb`.'),
    things: z.array(z.string()).optional().describe('Every thing that the amount is stated of, where there are several.'),
    each: z.boolean().optional().describe('True where the amount holds for each of the things.'),
    standard: z.string().optional().describe('The standard that the words name: `wine`, `troy`.'),
    tale: z.string().optional().describe('The number word that the things are told by, which may have meant more than it says: `hundred`.'),
    contradiction: z.string().optional().describe("Why the words can't all be true; no figure is then given for them."),
  }),
)

export const FoundHeat = named(
  'FoundHeat',
  'An oven heat that prose names, and where.',
  z.object({ ...span, heat: z.string().describe('A family of heats: `moderate`, `as-for-bread`.'), words: z.string() }),
)

export const FoundWarmth = named(
  'FoundWarmth',
  'A height of boiled sugar or the warmth of a liquid that prose names, and where.',
  z.object({ ...span, of: z.enum(['sugar', 'liquid']), words: z.string() }),
)

export const FoundTime = named(
  'FoundTime',
  'A length of time that prose states, and where; `minutes` is null for one that no clock measures.',
  z.object({ ...span, minutes: Range.nullable() }),
)

export const FoundThing = named('FoundThing', 'A thing that prose names without an amount.', z.object({ ...span, thing: z.string() }))

export const ReceiptReading = named(
  'ReceiptReading',
  'Everything that prose states, each list in the order of the text.',
  z.object({
    setting: Setting,
    measures: z.array(FoundMeasure),
    heats: z.array(FoundHeat),
    warmths: z.array(FoundWarmth),
    times: z.array(FoundTime),
    lengths: z.array(FoundMeasure),
    consistencies: z.array(FoundMeasure),
    unmeasured: z.array(FoundThing),
  }),
)

export const ReadingRequest = named(
  'ReadingRequest',
  'Prose in period spelling, with its setting.',
  z.strictObject({
    text: z.string().describe('The words of a receipt, as long as the body may be.'),
    ...settingFields,
  }),
)
