import { z } from 'zod'
import { Caution, coverageField, dataset, EggParts, quantity, Range, Setting, settingFields, Value } from './common.js'
import { readingKind, Sense } from './convert.js'
import { named } from './named.js'
import { FoundThing } from './readings.js'

/** The longest receipt of the old books has some 6,000; a sheet of this many takes the server a third of a second. */
const mostText = 50_000

const notes = z.array(z.int()).describe('Numbers of the sheet’s sources.')
const length = z.union([z.number(), z.string()]).optional()

const dish = z.strictObject({
  id: z.string().optional().describe('A common dish by its name: `small-tart`.'),
  shape: z.enum(['round', 'square', 'rectangle', 'oval', 'loaf', 'mould']).optional(),
  diameter: length,
  side: length,
  length,
  width: length,
  depth: length,
  taper: length.describe('How much less across it is at the bottom than at the rim.'),
  lining: length.describe('How thick the paste is that lines it.'),
  volume: z.number().optional().describe('Of a mould: ml to the brim.'),
  fill: z.number().optional().describe('The part of its depth that is filled.'),
  count: z.number().optional(),
  unit: z.enum(['mm', 'cm', 'in']).optional(),
})

const size = { g: z.number().optional(), ml: z.number().optional() }

/** More than any receipt has measures, things or lines. */
const mostFixed = 200

/** Choices by name, or by number of line. */
function fixing<Value extends z.ZodType>(value: Value) {
  return z
    .record(z.string(), value)
    .refine((choices) => Object.keys(choices).length <= mostFixed, `fix at most ${mostFixed} at a time`)
    .optional()
}

export const Fixed = named(
  'Fixed',
  "Choices that you take out of the tables' hands.",
  z.strictObject({
    standards: fixing(z.string()).describe('The standard that a measure goes by: `{"pint": "wine"}`.'),
    sizes: fixing(z.strictObject(size)).describe('What one of a measure comes to: `{"spoonful": {"ml": 15}}`.'),
    lines: fixing(z.strictObject({ ...size, standard: z.string().optional() })).describe('Lines by their numbers.'),
    egg: z.number().optional().describe("What one of the cook's eggs weighs in its shell, in g."),
    densities: fixing(z.number()).describe('g/ml by the name of the thing.'),
    oven: z.number().optional().describe('What the oven is set to, in degC, without a fan.'),
  }),
)

export const Plan = named(
  'Plan',
  'What the kitchen has and wants. One of scale, guests and limit scales the receipt; a dish does where none of them is given.',
  z.strictObject({
    scale: z.union([z.number(), z.string()]).optional().describe('A factor: `0.5`, `"1/3"`.'),
    guests: z.number().optional(),
    serves: z.number().optional().describe('How many the receipt feeds.'),
    dish: z.union([z.string(), dish, z.array(z.union([z.string(), dish]))]).optional(),
    limit: z
      .strictObject({ thing: z.string(), amount: z.union([z.number(), z.string()]), unit: z.string() })
      .optional()
      .describe('The one thing that there is least of.'),
    units: z.enum(['metric', 'us', 'uk']).optional(),
    eggClass: z.string().optional().describe('A modern class of egg: `egg-us-large`.'),
    oven: z.enum(['conventional', 'fan', 'gas']).optional(),
    fixed: Fixed.optional(),
  }),
)

export const SheetRequest = named(
  'SheetRequest',
  'A receipt with its setting, and the plan of the kitchen.',
  z.strictObject({
    text: z
      .string()
      .max(mostText, `a sheet is of one receipt, with at most ${mostText} characters; /v1/readings takes longer texts`)
      .describe('The words of the receipt.'),
    ...settingFields,
    title: z.string().optional().describe('What the sheet is headed; at most 300 characters.'),
    plan: Plan.optional(),
    coverage: coverageField,
  }),
)

export const Working = named(
  'Working',
  'What a cook measures off. `moved` is how much rounding moved it, as a part of it; `metric` is null where `text` is metric.',
  z.object({
    amount: z.number(),
    unit: z.string(),
    text: z.string(),
    metric: z.string().nullable(),
    value: Value,
    moved: z.number(),
  }),
)

export const SheetLine = named(
  'SheetLine',
  'One measured thing: its period words, the sense chosen and why, what the words come to, and what to measure off.',
  z.object({
    number: z.int(),
    start: z.int(),
    end: z.int(),
    phrase: z.string(),
    kind: readingKind,
    thing: z.string().nullable(),
    part: z.string().nullable(),
    amount: Range.nullable(),
    measure: z.string().nullable(),
    eggs: EggParts.nullable(),
    chosen: z.object({ id: z.string(), label: z.string(), likelihood: z.number(), reason: z.string() }).nullable(),
    senses: z.array(Sense),
    value: Value.nullable(),
    working: Working.nullable(),
    estimate: z.boolean().describe('True where the receipt leaves the quantity open and it was worked out from the rest.'),
    note: z.string().nullable(),
    sources: notes,
  }),
)

export const Total = named(
  'Total',
  'A sum over the lines, and the lines that could not be counted in.',
  z.object({
    quantity,
    unit: z.string(),
    low: z.number(),
    best: z.number(),
    high: z.number(),
    coverage: z.number(),
    without: z.array(z.int()),
    sources: notes,
  }),
)

const place = { start: z.int(), end: z.int() }

export const Sheet = named(
  'Sheet',
  'A whole receipt as a kitchen can cook it and a scholar can check it.',
  z.object({
    title: z.string(),
    setting: Setting,
    units: z.enum(['metric', 'us', 'uk']),
    scale: z.object({ factor: z.number(), by: z.enum(['nothing', 'factor', 'guests', 'dish', 'limit']), text: z.string() }),
    lines: z.array(SheetLine),
    unmeasured: z.array(FoundThing),
    totals: z.object({ mass: Total.nullable(), volume: Total.nullable() }),
    dishes: z.object({
      fits: z.array(
        z.object({
          id: z.string().nullable(),
          label: z.string(),
          volume: z.number(),
          fills: z.number(),
          count: z.number(),
          full: z.number(),
          deep: z.number().nullable().describe('How deep in mm the batch then stands in each.'),
          text: z.string(),
          sources: notes,
        }),
      ),
      text: z.string().nullable(),
    }),
    eggs: z
      .object({
        unit: z.string(),
        label: z.string(),
        whole: z.number(),
        yolks: z.number(),
        whites: z.number(),
        cracked: z.number(),
        left: z.object({ yolks: z.number(), whites: z.number() }),
        text: z.string(),
      })
      .nullable(),
    oven: z.array(
      z.object({
        start: z.int().nullable(),
        end: z.int().nullable(),
        phrase: z.string(),
        heat: z.string(),
        label: z.string(),
        value: Value,
        set: z.string(),
        text: z.string(),
        note: z.string().nullable(),
        sources: notes,
      }),
    ),
    warmths: z
      .array(
        z.object({
          ...place,
          phrase: z.string(),
          of: z.enum(['sugar', 'liquid']),
          heat: z.string(),
          label: z.string(),
          value: Value,
          text: z.string(),
          test: z.string().nullable().describe('How a cook tells it without a thermometer.'),
          sources: notes,
        }),
      )
      .describe('Heights of boiled sugar and warmths of liquids that the text asks for.'),
    bake: z.array(
      z.object({
        dish: z.string(),
        minutes: z.object({ early: z.number(), best: z.number(), late: z.number() }),
        text: z.string(),
        core: z.string().nullable(),
        signs: z.array(z.string()),
        note: z.string().nullable(),
        sources: notes,
      }),
    ),
    order: z.array(z.object({ number: z.int(), ...place, text: z.string(), lines: z.array(z.int()), minutes: Range.nullable() })),
    rounding: z.string().nullable(),
    notes: z.array(z.string()),
    cautions: z.array(Caution),
    sources: z.array(z.object({ number: z.int(), id: z.string(), short: z.string(), citation: z.string() })),
    fixed: z.array(z.object({ what: z.string(), value: z.string(), lines: z.array(z.int()) })),
    text: z.string(),
    dataset,
  }),
)
