import * as z from 'zod'
import { named } from './named.js'

/** Fields that many bodies have, each said once. */
export const id = z.string().describe('Its id, as addresses and requests have it.')
export const label = z.string().describe('Its name, for people.')
export const phrase = z.string().describe('The words, as they were given.')
export const unread = z.array(z.string()).describe('Words that gave nothing.')
export const likelihood = z.number().describe('How likely it is, from 0 to 1.')
export const sources = z.array(z.string()).describe('Who says so, as footnotes.')
export const source = z.string().describe('Who says so, as a footnote.')
export const steps = <Step extends z.ZodType>(step: Step) => z.array(step).describe('The reckoning, factor by factor.')
export const notes = z.array(z.string()).describe('What the reader should know before using the figure.')
export const note = z.string().nullable().describe('What else the reader should know.')
export const coverage = z.number().describe('How much of the probability lies between the ends.')
export const coin = z.string().describe('The price that names it, or its fixed size.')
export const measure = z.string().nullable().describe('The id of the measure; null where the words name none.')
export const thing = z.string().nullable().describe('What is measured; null where the words do not say.')
export const dataset = z.string().describe('The version of the tables that the answer was computed from.')

export const grade = z
  .enum(['statute', 'standard', 'measured', 'handbook', 'scholarship', 'practice', 'judgement'])
  .describe('How well it is attested, the best first.')
export const checked = z
  .enum(['read', 'memory', 'none'])
  .describe('Whether the figure was read in its source, comes from memory, or has no source to be read.')
export const quantity = z.enum(['mass', 'volume', 'count', 'length', 'time', 'temperature', 'ratio']).describe('What the figures are of.')
export const unit = z
  .string()
  .describe('The unit of the figures, the base of its quantity: `g`, `ml`, `each`, `mm`, `s`, `degC`; `1` of a ratio.')

const low = z.number().describe('The lower end.')
const high = z.number().describe('The upper end.')
export const ends = { low, high }
export const band = { low, best: z.number().describe('The likeliest.'), high }

export const years = z
  .array(z.int())
  .length(2)
  .nullable()
  .describe('The first and the last year that it holds for; null where it is not dated.')

export const Range = named('Range', 'Both ends are the same where the words give one number.', z.object(ends))

export const EggParts = named(
  'EggParts',
  'The eggs that the words come to.',
  z.object({
    whole: z.number().describe('Whole eggs.'),
    yolks: z.number().describe('Yolks without their white.'),
    whites: z.number().describe('Whites without their yolk.'),
  }),
)

export const Step = named(
  'Step',
  'One factor of a derivation, with who says so.',
  z.object({
    text: z.string().describe('What the factor is.'),
    factor: z.string().describe('Its figure, exact where the law was exact.'),
    grade,
    checked,
    sources,
  }),
)

export const Band = named('Band', 'A best value between two ends.', z.object({ ...band, coverage }))

export const Value = named(
  'Value',
  'The best value of the likeliest sense, between the ends of the mixture of all senses at a coverage.',
  z.object({ quantity, unit, ...band, coverage }),
)

export const GasMark = named(
  'GasMark',
  'A mark on the dial of a gas oven.',
  z.object({
    mark: z.string().describe('As the dial has it: `1/4` to `9`.'),
    degC: z.number().describe('The middle of the mark, in degC.'),
    degF: z.number().describe('The middle of the mark, in degF.'),
    printed: z.array(z.number()).length(2).describe('What British books print beside it, in degC.'),
    words: z.string().describe('What British books call it.'),
  }),
)

export const ModernValue = named(
  'ModernValue',
  'The value in one modern unit.',
  z.object({
    unit: z.string().describe('The unit by its id: `g`, `cup-us`, `degC-fan`; or a class of egg: `egg-eu-m`.'),
    ucum: z.string().nullable().describe('Its UCUM code; null where UCUM has none.'),
    ...band,
    text: z.string().describe('The best value as a cook reads it, rounded as kitchens round.'),
    rounding: z.number().describe('How much that rounding moved it, as a part of it: 0.01 is one in a hundred more.'),
    nearest: GasMark.nullable().optional().describe('Of a gas mark: the nearest on the dial; null beyond both ends of it.'),
    exact: z.number().optional().describe('Of a gas mark: by the rule, with its fraction.'),
  }),
)

export const modern = z.array(ModernValue).describe('The value in every unit that a kitchen may want.')

export const Caution = named(
  'Caution',
  'A warning that belongs beside the answer.',
  z.object({ id, title: z.string().describe('What it warns of.'), text: z.string().describe('The warning.'), sources }),
)

export const cautions = z.array(Caution).describe('What here can hurt someone.')

export const SourceNote = named(
  'SourceNote',
  'A source that a step rests on.',
  z.object({ id, citation: z.string().describe('The whole reference, on one line.') }),
)

export const sourceNotes = z.array(SourceNote).describe('Every source that the answer rests on, once.')

const year = z.union([z.number(), z.string()]).nullable().describe('The year or the date, as it was given; null where none was.')

export const Setting = named(
  'Setting',
  'When and where the words were used.',
  z.object({ year, place: z.string().describe('The id of the place.') }),
)

/** When words were used that no place changes the meaning of. */
export const yearSetting = z.object({ year }).describe('When the words were used.')

/** Fields that many requests have, as a body gives them; a query gives each as text. */
export const settingFields = {
  year: z
    .union([z.number(), z.string()])
    .nullable()
    .optional()
    .describe('A year from 1266 to 1914, in EDTF level 1: `1690`, `1690~`, `169X`, `1650/1700`. Without one every period weighs in.'),
  place: z
    .string()
    .optional()
    .describe(
      'The id of a place, in lower case: `england` (where none is given), `london`, `scotland`, `ireland`, `america`, or a county or town.',
    ),
}

export const coverageField = z
  .number()
  .optional()
  .describe('How much of the probability the band holds, from 0.5 to 0.999; 0.9 where none is given.')
