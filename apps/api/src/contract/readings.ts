import * as z from 'zod'
import * as common from './common.js'
import { readingKind } from './convert.js'
import { named } from './named.js'

/** A stretch of the text. */
export const place = {
  start: z.int().describe('Where it begins in the text, in UTF-16 code units.'),
  end: z.int().describe('Where it ends; the unit at this place is not part of it.'),
}

const span = { ...place, phrase: z.string().describe('The words that stand there.') }

export const FoundMeasure = named(
  'FoundMeasure',
  'A measure that prose states, and where.',
  z.object({
    ...span,
    kind: readingKind,
    amount: common.Range.nullable().describe('How many of the measure; null where the words give no number.'),
    measure: common.measure,
    thing: common.thing,
    qualifier: z.string().nullable().describe('What the words say of how it is measured: `heaped`, `scant`.'),
    eggs: common.EggParts.nullable().describe('Of eggs: their parts.'),
    part: z.string().optional().describe('Which part of the thing: `juice`, `crumb`.'),
    portions: z.array(z.string()).optional().describe('Every part where the words name more than one: the rind and juice of two lemons.'),
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
  z.object({
    ...span,
    heat: z.string().describe('A family of heats: `moderate`, `as-for-bread`.'),
    words: z.string().describe('The words of the heat alone.'),
  }),
)

/** What a warmth is of. */
export const warmthOf = z.enum(['sugar', 'liquid']).describe('What is to be so hot.')

export const FoundWarmth = named(
  'FoundWarmth',
  'A height of boiled sugar or the warmth of a liquid that prose names, and where.',
  z.object({ ...span, of: warmthOf, words: z.string().describe('The words of the height or warmth alone.') }),
)

export const FoundTime = named(
  'FoundTime',
  'A length of time that prose states, and where.',
  z.object({ ...span, minutes: common.Range.nullable().describe('Null for a time that no clock measures.') }),
)

export const FoundThing = named(
  'FoundThing',
  'A thing that prose names without an amount.',
  z.object({ ...span, thing: z.string().describe('The name of the thing.') }),
)

export const FoundServes = named(
  'FoundServes',
  'How many persons prose says that a receipt is enough for.',
  z.object({ ...span, amount: common.Range.describe('How many; both ends are the same where the words give one number.') }),
)

export const ReceiptReading = named(
  'ReceiptReading',
  'Everything that prose states, each list in the order of the text.',
  z.object({
    setting: common.Setting,
    measures: z.array(FoundMeasure).describe('Weights, volumes, counts, eggs, priced things and likenesses.'),
    heats: z.array(FoundHeat).describe('Heats of ovens.'),
    warmths: z.array(FoundWarmth).describe('Heights of boiled sugar, and warmths of liquids.'),
    times: z.array(FoundTime).describe('Lengths of time.'),
    lengths: z.array(FoundMeasure).describe('Lengths and breadths.'),
    consistencies: z.array(FoundMeasure).describe('How thick something is to be: `as thick as cream`.'),
    unmeasured: z.array(FoundThing).describe('Things without an amount.'),
    serves: FoundServes.nullable().describe('How many it is enough for; null where it says nothing of them.'),
  }),
)

export const ReadingRequest = named(
  'ReadingRequest',
  'Prose in period spelling, with its setting.',
  z.strictObject({
    text: z.string().describe('The words of a receipt, as long as the body may be.'),
    ...common.settingFields,
  }),
)
