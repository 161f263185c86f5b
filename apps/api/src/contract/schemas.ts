import { z } from 'zod'

/**
 * The bodies of the contract. These schemas are the one truth for validation, for TypeScript types and for the OpenAPI document.
 * Names given here become the document's components.
 */
export const components: z.core.$ZodRegistry<{ id: string; description?: string }> = z.registry()

function named<Schema extends z.ZodType>(id: string, description: string, schema: Schema): Schema {
  components.add(schema, { id, description })
  return schema
}

const grade = z.enum(['statute', 'standard', 'measured', 'handbook', 'scholarship', 'practice', 'judgement'])
const checked = z.enum(['read', 'memory', 'none'])
const quantity = z.enum(['mass', 'volume', 'count', 'length', 'time', 'temperature', 'ratio'])
const band = { low: z.number(), best: z.number(), high: z.number() }

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

export const Value = named(
  'Value',
  'The best value of the likeliest sense, between the ends of the mixture of all senses at a coverage.',
  z.object({ quantity, unit: z.string(), ...band, coverage: z.number() }),
)

export const ModernValue = named(
  'ModernValue',
  'The value in one modern unit, with its UCUM code where it has one. `rounding` is how much kitchen rounding moved it, as a part of it.',
  z.object({ unit: z.string(), ucum: z.string().nullable(), ...band, text: z.string(), rounding: z.number() }),
)

export const Caution = named(
  'Caution',
  'A warning that belongs beside the answer.',
  z.object({ id: z.string(), title: z.string(), text: z.string(), sources: z.array(z.string()) }),
)

export const SourceNote = named('SourceNote', 'A source that a step rests on.', z.object({ id: z.string(), citation: z.string() }))

export const Reading = named(
  'Reading',
  'What the words say, before anyone asks what they meant. `unread` lists words that gave nothing.',
  z.object({
    kind: z.enum(['measured', 'counted', 'eggparts', 'priced', 'comparison', 'vague', 'heat', 'time', 'length', 'consistency']),
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
    setting: z.object({ year: z.union([z.number(), z.string()]).nullable(), place: z.string() }),
    reading: Reading,
    value: Value,
    modern: z.array(ModernValue),
    senses: z.array(Sense),
    text: z.string(),
    notes: z.array(z.string()),
    cautions: z.array(Caution),
    sources: z.array(SourceNote),
    dataset: z.string(),
  }),
)

export const MeasureSense = named(
  'MeasureSense',
  'One dated and placed meaning of a measure.',
  z.object({
    id: z.string(),
    label: z.string(),
    standard: z.string(),
    ratio: z.string(),
    years: z.tuple([z.number(), z.number()]).nullable(),
    place: z.string().nullable(),
    unit: z.string(),
    value: z.number(),
    things: z.array(z.string()).nullable(),
    grade,
    checked,
    sources: z.array(z.string()),
  }),
)

export const Measure = named(
  'Measure',
  'A measure as the tables have it.',
  z.object({
    id: z.string(),
    label: z.string(),
    kind: z.string(),
    names: z.array(z.string()),
    senses: z.array(MeasureSense),
    dataset: z.string(),
  }),
)

export const MeasureList = named(
  'MeasureList',
  'The measures of the tables.',
  z.object({ measures: z.array(Measure), dataset: z.string() }),
)

/** CSL-JSON has many more fields than a client of ours must know; all of them pass through. */
export const Source = named(
  'Source',
  'A source as CSL-JSON. `custom.seen` says where its text was read, or that it was not.',
  z.looseObject({
    id: z.string(),
    type: z.string(),
    title: z.string(),
    custom: z.looseObject({ short: z.string(), seen: z.string() }),
  }),
)

export const SourceList = named('SourceList', 'Every source as CSL-JSON.', z.array(Source))

export const Health = named(
  'Health',
  'That the server lives, and what it serves.',
  z.object({ status: z.literal('ok'), dataset: z.string(), version: z.string() }),
)

export const Problem = named(
  'Problem',
  'What went wrong: problem details by RFC 9457. `errors` names each parameter, or points into the body, and says what would be right.',
  z.object({
    type: z.string(),
    title: z.string(),
    status: z.int(),
    detail: z.string(),
    errors: z.array(z.object({ parameter: z.string().optional(), pointer: z.string().optional(), detail: z.string() })).optional(),
    understood: z.array(z.string()).optional(),
    unread: z.array(z.string()).optional(),
    nearest: z.array(z.string()).optional(),
    line: z.int().optional().describe('In a stream: the line of the input, from 1.'),
    index: z.int().optional().describe('In an array: the index of the request, from 0.'),
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
