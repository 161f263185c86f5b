import * as z from 'zod'
import * as common from './common.js'
import { HeatName } from './heats.js'
import { named } from './named.js'

const millimetres = z.number().positive().optional().describe('In mm, up to 2000.')

const dish = {
  shape: z
    .string()
    .describe(
      '`slab`, which needs a `depth`; `cylinder` (`round`, `tart`, `pie`, `cake`, `basin`, `cup`), which needs `diameter` and `depth`; `box` (`tin`, `loaf`, `dish`, `rectangle`), which needs `length`, `width` and `depth`; or `sphere` (`joint`, `bird`, `ball`), which needs a `diameter` or its `mass`.',
    ),
  size: z
    .strictObject({
      depth: millimetres,
      diameter: millimetres,
      length: millimetres,
      width: millimetres,
      volume: z.number().positive().optional().describe('Of a cylinder or a box: in ml, in place of a depth.'),
      mass: z.number().positive().optional().describe('Of a joint or a bird, in g.'),
    })
    .describe('What the shape needs.'),
}

export const BakePlanRequest = named(
  'BakePlanRequest',
  'A dish whose time is known, and the one whose time is wanted.',
  z.strictObject({
    food: z.string().describe('`batter`, `custard`, `bread`, `joint` and others, or a dish of that kind, such as `cheesecake`.'),
    from: z
      .strictObject({
        ...dish,
        minutes: z.number().positive().describe('How long it bakes.'),
        celsius: z.number().describe('The oven that the time holds for, without a fan.'),
      })
      .describe('The dish whose time is known.'),
    to: z
      .strictObject({ ...dish, celsius: z.number().optional().describe('Where another oven is meant than that of `from`.') })
      .describe('The dish whose time is wanted.'),
    contains: z
      .array(z.enum(['egg', 'milk', 'poultry', 'meat', 'minced-meat', 'fish']))
      .optional()
      .describe('What is in it that decides how hot its middle must become.'),
    fan: z.boolean().optional().describe('True where the oven that is meant has a fan.'),
    fanRule: z.string().optional().describe('The id of the rule by which a fan oven is set; 20 degC less where none is named.'),
  }),
)

export const OvenSettings = named(
  'OvenSettings',
  'What to set a modern oven to.',
  z.object({
    degC: common.ModernValue,
    degF: common.ModernValue,
    gasMark: common.ModernValue,
    degCFan: common.ModernValue,
  }),
)

export const CoreTemperature = named(
  'CoreTemperature',
  'A temperature that an authority states for the middle of a dish.',
  z.object({
    id: common.id,
    label: common.label,
    of: z.string().describe('Where it is taken.'),
    degC: z.array(z.number()).length(2).describe('The ends in degC.'),
    degF: z.array(z.number()).length(2).describe('The ends in degF.'),
    restMinutes: z.number().describe('How long the dish has to rest at it.'),
    safe: z.boolean().describe('Whether it is stated for safety; else for how well it is done.'),
    year: z.int().describe('The year of the statement.'),
    source: common.source,
    grade: common.grade,
    checked: common.checked,
    note: common.note,
  }),
)

export const BakePlan = named(
  'BakePlan',
  'How long a dish bakes.',
  z.object({
    food: z.string().describe('The kind of food that was reckoned with.'),
    minutes: z
      .object({
        early: z.number().describe('When to look first.'),
        nominal: z.number().describe('When it is likeliest done.'),
        late: z.number().describe('When to look for what went wrong.'),
      })
      .describe('From when it goes in.'),
    text: z.string().describe('The times in a sentence.'),
    celsius: z.number().describe('The oven without a fan, in degC.'),
    heat: HeatName,
    settings: OvenSettings,
    fan: z.boolean().describe('Whether an oven with a fan was asked for.'),
    exponent: z.object(common.band).describe('The power of the thickness that the time was scaled by.'),
    ratio: z.number().describe('How many times as long heat needs to reach the middle, by conduction alone.'),
    signs: z.array(z.string()).describe('How to tell that it is done.'),
    core: CoreTemperature.nullable().describe('How hot its middle must become; null where nothing in it calls for that.'),
    assumptions: z.array(z.string()).describe('What was taken for granted.'),
    warnings: z.array(z.string()).describe('Why the figures may mislead here.'),
    sources: common.sourceNotes,
    dataset: common.dataset,
  }),
)

const Spread = named('Spread', 'A best value between two ends, as you give it; the three may be alike.', z.strictObject(common.band))

export const BrickOvenRequest = named(
  'BrickOvenRequest',
  'A brick oven as it cools, and what is to be baked in it.',
  z.strictObject({
    start: z
      .union([z.number(), Spread, z.string()])
      .optional()
      .describe('degC, a band in degC, or a heat phrase; after the bread is drawn where nothing is said.'),
    year: z.int().optional().describe('When the phrases were written, from 1000 to 2100.'),
    ambient: z.number().optional().describe('Of the room, in degC.'),
    timeConstant: z.union([z.number(), Spread]).optional().describe('Hours in which the difference from the room falls to 37 %.'),
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
          name: z.string().regex(/\S/, 'every receipt needs a name').describe('What it is called.'),
          heat: z.union([z.string(), z.number()]).describe('A heat phrase, or degC.'),
          minutes: z.number().positive().optional().describe('How long it bakes; no time at all where nothing is said.'),
        }),
      )
      .max(50)
      .optional()
      .describe('The receipts that are to go in, in any order.'),
  }),
)

const hours = z.number().describe('Hours from the start.')

export const OvenMoment = named(
  'OvenMoment',
  'The oven at one time.',
  z.object({ hours, value: common.Band, heat: HeatName, modern: OvenSettings }),
)

export const BakeWindow = named(
  'BakeWindow',
  'When one receipt goes in and comes out, in hours from the start.',
  z.object({
    name: z.string().describe('What it is called.'),
    heat: HeatName,
    wants: z.object(common.band).describe('The oven that it wants, in degC.'),
    opens: z.number().describe('When the oven is no longer too hot for it.'),
    closes: z.number().describe('When the oven becomes too cool for it.'),
    goesIn: z.number().describe('When it goes in.'),
    comesOut: z.number().describe('When it comes out.'),
    oven: z.number().describe('The oven when it goes in, in degC.'),
  }),
)

export const BrickOven = named(
  'BrickOven',
  'A cooling oven.',
  z.object({
    setting: z
      .object({ year: z.int().nullable().describe('As it was given; null where none was.') })
      .describe('When the phrases were written.'),
    start: common.Band,
    ambient: z.number().describe('Of the room, in degC.'),
    timeConstant: z.object(common.band).describe('Hours in which the difference from the room falls to 37 %.'),
    batchMinutes: z.number().describe('Minutes that a full batch of dough is in the oven from the start.'),
    moment: OvenMoment.nullable().describe('The oven at the time that was asked for; null where none was.'),
    curve: z.array(z.object({ hours, ...common.band })).describe('The oven as it cools, in degC.'),
    falls: z
      .array(z.object({ heat: HeatName, celsius: z.number().describe('The middle of the heat, in degC.'), hours: common.Band }))
      .describe('When it passes the middle of each heat, the hottest first.'),
    bakes: z.array(BakeWindow).nullable().describe('The order in which receipts go in; null where none were given.'),
    notes: common.notes,
    sources: common.sourceNotes,
    dataset: common.dataset,
  }),
)
