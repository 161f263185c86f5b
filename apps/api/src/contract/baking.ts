import { z } from 'zod'
import { Band, band, checked, dataset, grade, ModernValue, SourceNote } from './common.js'
import { HeatName } from './heats.js'
import { named } from './named.js'

const positive = z.number().positive().optional()

const dish = {
  shape: z.string().describe('`slab`, `cylinder`, `box` or `sphere`, or a kitchen name such as `tart`, `pie`, `tin`, `joint`.'),
  size: z
    .strictObject({ depth: positive, diameter: positive, length: positive, width: positive, volume: positive, mass: positive })
    .describe('Lengths in mm, `volume` in ml in place of a depth, `mass` in g of a joint or a bird.'),
}

export const BakePlanRequest = named(
  'BakePlanRequest',
  'A dish whose time is known, and the one whose time is wanted.',
  z.strictObject({
    food: z.string().describe('`batter`, `custard`, `bread`, `joint`, or a dish of that kind.'),
    from: z.strictObject({
      ...dish,
      minutes: z.number().positive(),
      celsius: z.number().describe('The oven that the time holds for, without a fan.'),
    }),
    to: z.strictObject({ ...dish, celsius: z.number().optional().describe('Where another oven is meant than that of `from`.') }),
    contains: z
      .array(z.enum(['egg', 'milk', 'poultry', 'meat', 'minced-meat', 'fish']))
      .optional()
      .describe('What is in it that decides how hot its middle must become.'),
    fan: z.boolean().optional(),
    fanRule: z.string().optional(),
  }),
)

export const OvenSettings = named(
  'OvenSettings',
  'What to set a modern oven to.',
  z.object({ degC: ModernValue, degF: ModernValue, gasMark: ModernValue, degCFan: ModernValue }),
)

export const CoreTemperature = named(
  'CoreTemperature',
  'A temperature that an authority states for the middle of a dish.',
  z.object({
    id: z.string(),
    label: z.string(),
    of: z.string(),
    degC: z.array(z.number()).length(2),
    degF: z.array(z.number()).length(2),
    restMinutes: z.number(),
    safe: z.boolean(),
    year: z.int(),
    source: z.string(),
    grade,
    checked,
    note: z.string().nullable(),
  }),
)

export const BakePlan = named(
  'BakePlan',
  'How long a dish bakes. `early` is when to look first, `late` when to look for what went wrong.',
  z.object({
    food: z.string(),
    minutes: z.object({ early: z.number(), nominal: z.number(), late: z.number() }),
    text: z.string(),
    celsius: z.number(),
    heat: HeatName,
    settings: OvenSettings,
    fan: z.boolean(),
    exponent: z.object(band).describe('The power of the thickness that the time was scaled by.'),
    ratio: z.number().describe('How many times as long heat needs to reach the middle, by conduction alone.'),
    signs: z.array(z.string()),
    core: CoreTemperature.nullable(),
    assumptions: z.array(z.string()),
    warnings: z.array(z.string()),
    sources: z.array(SourceNote),
    dataset,
  }),
)

const spread = z.strictObject(band)

export const BrickOvenRequest = named(
  'BrickOvenRequest',
  'A brick oven as it cools, and what is to be baked in it.',
  z.strictObject({
    start: z
      .union([z.number(), spread, z.string()])
      .optional()
      .describe('degC, a band in degC, or a heat phrase; after the bread is drawn where nothing is said.'),
    year: z.int().optional().describe('When the phrases were written.'),
    ambient: z.number().optional().describe('Of the room, in degC.'),
    timeConstant: z.union([z.number(), spread]).optional().describe('Hours in which the difference from the room falls to 37 %.'),
    batchMinutes: z.number().positive().optional().describe('Minutes that a full batch of dough is in the oven from the start.'),
    minutesAfter: z.number().min(0).max(4320).optional().describe('Minutes after the start at which `moment` is wanted.'),
    hours: z
      .number()
      .positive()
      .max(72)
      .optional()
      .describe('How long a stretch the curve covers, and the firing lasts; 12 where none is given.'),
    oneAtATime: z.boolean().optional().describe('True where the oven holds one thing at a time.'),
    bakes: z
      .array(
        z.strictObject({
          name: z.string().regex(/\S/, 'every receipt needs a name'),
          heat: z.union([z.string(), z.number()]).describe('A heat phrase, or degC.'),
          minutes: z.number().positive().optional(),
        }),
      )
      .max(50)
      .optional(),
  }),
)

export const OvenMoment = named(
  'OvenMoment',
  'The oven at one time; `heat` is the nearest step of the scale.',
  z.object({ hours: z.number(), value: Band, heat: HeatName, modern: OvenSettings }),
)

export const BakeWindow = named(
  'BakeWindow',
  'When one receipt goes in and comes out, in hours from the start; `wants` and `oven` in degC.',
  z.object({
    name: z.string(),
    heat: HeatName,
    wants: z.object(band),
    opens: z.number(),
    closes: z.number(),
    goesIn: z.number(),
    comesOut: z.number(),
    oven: z.number(),
  }),
)

export const BrickOven = named(
  'BrickOven',
  'A cooling oven: its curve in degC, when it passes the middle of each heat, and the order in which receipts bake in it.',
  z.object({
    setting: z.object({ year: z.int().nullable() }),
    start: Band,
    ambient: z.number(),
    timeConstant: z.object(band),
    batchMinutes: z.number(),
    moment: OvenMoment.nullable(),
    curve: z.array(z.object({ hours: z.number(), ...band })),
    falls: z.array(z.object({ heat: HeatName, celsius: z.number(), hours: Band })),
    bakes: z.array(BakeWindow).nullable(),
    notes: z.array(z.string()),
    sources: z.array(SourceNote),
    dataset,
  }),
)
