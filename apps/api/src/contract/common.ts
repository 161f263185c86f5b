import { z } from 'zod'
import { named } from './named.js'

export const grade = z.enum(['statute', 'standard', 'measured', 'handbook', 'scholarship', 'practice', 'judgement'])
export const checked = z.enum(['read', 'memory', 'none'])
export const quantity = z.enum(['mass', 'volume', 'count', 'length', 'time', 'temperature', 'ratio'])
export const band = { low: z.number(), best: z.number(), high: z.number() }
export const dataset = z.string().describe('The version of the tables that the answer was computed from.')

/** First and last year of a row; null where it is not dated. */
export const years = z.array(z.int()).length(2).nullable()

export const Range = named(
  'Range',
  'Both ends are the same where the words give one number.',
  z.object({ low: z.number(), high: z.number() }),
)

export const EggParts = named(
  'EggParts',
  'Whole eggs, yolks without their white, whites without their yolk.',
  z.object({ whole: z.number(), yolks: z.number(), whites: z.number() }),
)

export const Step = named(
  'Step',
  'One factor of a derivation, with who says so: `checked` tells whether the figure was read in its source or comes from memory.',
  z.object({ text: z.string(), factor: z.string(), grade, checked, sources: z.array(z.string()) }),
)

export const Band = named(
  'Band',
  'A best value between two ends that hold so much of the probability.',
  z.object({ ...band, coverage: z.number() }),
)

export const Value = named(
  'Value',
  'The best value of the likeliest sense, between the ends of the mixture of all senses at a coverage.',
  z.object({ quantity, unit: z.string(), ...band, coverage: z.number() }),
)

export const GasMark = named(
  'GasMark',
  'A mark on the dial of a gas oven. `printed` is what British books print beside it, in degC.',
  z.object({
    mark: z.string(),
    degC: z.number(),
    degF: z.number(),
    printed: z.array(z.number()).length(2),
    words: z.string(),
  }),
)

export const ModernValue = named(
  'ModernValue',
  'The value in one modern unit, with its UCUM code where it has one. `rounding` is how much kitchen rounding moved it, as a part of it.',
  z.object({
    unit: z.string(),
    ucum: z.string().nullable(),
    ...band,
    text: z.string(),
    rounding: z.number(),
    nearest: GasMark.nullable().optional().describe('Of a gas mark: the nearest on the dial; null beyond both ends of it.'),
    exact: z.number().optional().describe('Of a gas mark: by the rule, with its fraction.'),
  }),
)

export const Caution = named(
  'Caution',
  'A warning that belongs beside the answer.',
  z.object({ id: z.string(), title: z.string(), text: z.string(), sources: z.array(z.string()) }),
)

export const SourceNote = named('SourceNote', 'A source that a step rests on.', z.object({ id: z.string(), citation: z.string() }))

export const Setting = named(
  'Setting',
  'When and where the words were used.',
  z.object({ year: z.union([z.number(), z.string()]).nullable(), place: z.string() }),
)

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
    .describe('The slug of a place, such as `england` (where none is given), `london`, `scotland`, `ireland`, `america`.'),
}

export const coverageField = z
  .number()
  .optional()
  .describe('How much of the probability the band holds, from 0.5 to 0.999; 0.9 where none is given.')
