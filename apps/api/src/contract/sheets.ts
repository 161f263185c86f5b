import * as z from 'zod'
import * as common from './common.js'
import { readingKind, Sense } from './convert.js'
import { named } from './named.js'
import { FoundThing, place, warmthOf } from './readings.js'

const footnotes = z.array(z.int()).describe('Numbers of the sheet’s sources.')
const lines = z.array(z.int()).describe('Numbers of the lines that it bears on.')
const phrase = z.string().describe('The words of the text.')
const said = z.string().describe('The same in words.')

const Working = named(
  'Working',
  'What a cook measures off.',
  z.object({
    amount: z.number().describe('In `unit`; of eggs, how many are cracked.'),
    unit: z.string().describe('A modern unit: `g`, `cup-us`, `egg-uk-m`.'),
    text: z.string().describe('What a cook reads: `1 cup and 2 tbsp`.'),
    metric: z.string().nullable().describe('The same in metric; null where `text` is metric.'),
    value: common.Value,
    moved: z.number().describe('How much rounding moved it, as a part of it: 0.01 is one in a hundred more.'),
  }),
)

const SheetLine = named(
  'SheetLine',
  'One measured thing: its period words, the sense chosen and why, what the words come to, and what to measure off.',
  z.object({
    number: z.int().describe('From 1, in the order of the text.'),
    ...place,
    phrase,
    kind: readingKind,
    thing: common.thing,
    part: z.string().nullable().describe('Which part of the thing: `juice`, `crumb`; null for the whole of it.'),
    amount: common.Range.nullable().describe('How many of the measure; null where the words give no number.'),
    measure: common.measure,
    eggs: common.EggParts.nullable().describe('Of eggs: their parts.'),
    chosen: z
      .object({
        id: common.id,
        label: common.label,
        likelihood: common.likelihood,
        reason: z.string().describe('Why it was chosen.'),
      })
      .nullable()
      .describe('The sense that the line was worked with.'),
    senses: z.array(Sense).describe('Every meaning of the words, the likeliest first.'),
    value: common.Value.nullable().describe("What the words come to as they stand; null where they can't be turned into a figure."),
    working: Working.nullable().describe('What to measure off for this plan.'),
    estimate: z.boolean().describe('True where the receipt leaves the quantity open and it was worked out from the rest.'),
    note: z.string().nullable().describe('What the reader must choose or know.'),
    sources: footnotes,
  }),
)

const Total = named(
  'Total',
  'A sum over the lines.',
  z.object({
    quantity: common.quantity,
    unit: common.unit,
    ...common.band,
    coverage: common.coverage,
    without: z.array(z.int()).describe('Numbers of the lines that could not be counted in.'),
    sources: footnotes,
  }),
)

const DishFit = named(
  'DishFit',
  'How many of one dish the batch fills.',
  z.object({
    id: z.string().nullable().describe('Its id; null for a dish that the plan measures.'),
    label: common.label,
    volume: z.number().describe('ml that one is filled with.'),
    fills: z.number().describe('How many the batch fills, unrounded.'),
    count: z.number().describe('How many to set out.'),
    full: z.number().describe('How full each then stands, as a part of what it is filled with.'),
    deep: z.number().nullable().describe('How deep in mm the batch then stands in each; null for a mould of unknown form.'),
    text: said,
    sources: footnotes,
  }),
)

const SheetEggs = named(
  'SheetEggs',
  'Eggs to crack for the whole sheet.',
  z.object({
    unit: z.string().describe('The class of egg, by its id.'),
    label: z.string().describe('The class of egg, by its name.'),
    whole: z.number().describe('Whole eggs that go in.'),
    yolks: z.number().describe('Yolks alone that go in.'),
    whites: z.number().describe('Whites alone that go in.'),
    cracked: z.number().describe('How many to crack.'),
    left: z.object({ yolks: z.number().describe('Yolks.'), whites: z.number().describe('Whites.') }).describe('What is left over.'),
    text: said,
  }),
)

const SheetOven = named(
  'SheetOven',
  'A heat that the text asks for, on a modern oven.',
  z.object({
    start: z
      .int()
      .nullable()
      .describe('Where the text says so, in UTF-16 code units; null where the plan fixed a heat that the text does not name.'),
    end: z.int().nullable().describe('Where those words end.'),
    phrase,
    heat: z.string().describe('The id of the heat.'),
    label: common.label,
    value: common.Value,
    set: z.string().describe("The setting for the cook's own oven."),
    text: z.string().describe('Every setting.'),
    note: common.note,
    sources: footnotes,
  }),
)

const SheetWarmth = named(
  'SheetWarmth',
  'A height of boiled sugar or the warmth of a liquid that the text asks for, as a thermometer shows it.',
  z.object({
    ...place,
    phrase,
    of: warmthOf,
    heat: z.string().describe('The id of the height or warmth.'),
    label: common.label,
    value: common.Value,
    text: said,
    test: z.string().nullable().describe('How a cook tells it without a thermometer.'),
    sources: footnotes,
  }),
)

const SheetBake = named(
  'SheetBake',
  'How long to bake one dish of the plan.',
  z.object({
    dish: z.string().describe('The dish, in words.'),
    minutes: z
      .object({
        early: z.number().describe('When to look first.'),
        best: z.number().describe('When it is likeliest done.'),
        late: z.number().describe('When to look for what went wrong.'),
      })
      .describe('From when it goes in.'),
    text: said,
    core: z.string().nullable().describe('How hot the middle must be, where what is in it calls for that.'),
    signs: z.array(z.string()).describe('How to tell that it is done.'),
    note: common.note,
    sources: footnotes,
  }),
)

const SheetStep = named(
  'SheetStep',
  'A stretch of the text that tells one thing to do.',
  z.object({
    number: z.int().describe('From 1, in the order of the text.'),
    ...place,
    text: z.string().describe('The words of the text.'),
    lines,
    minutes: common.Range.nullable().describe('How long it takes, where the words say so.'),
  }),
)

export const Sheet = named(
  'Sheet',
  'A whole receipt as a kitchen can cook it and a scholar can check it.',
  z.object({
    title: z.string().describe('What it is headed.'),
    setting: common.Setting,
    units: z.enum(['metric', 'us', 'uk']).describe('What the cook measures with.'),
    scale: z
      .object({
        factor: z.number().describe('What every amount was multiplied by.'),
        by: z.enum(['nothing', 'factor', 'guests', 'dish', 'limit']).describe('What decided that.'),
        text: said,
      })
      .describe('How the plan scales the receipt.'),
    lines: z.array(SheetLine).describe('Every measured thing, in the order of the text.'),
    unmeasured: z.array(FoundThing).describe('Things without an amount.'),
    totals: z
      .object({
        mass: Total.nullable().describe('By weight, as far as it is known.'),
        volume: Total.nullable().describe('By volume, as far as it is known.'),
      })
      .describe('Sums over the lines, in which the same pint stays the same pint.'),
    dishes: z
      .object({ fits: z.array(DishFit).describe('Each dish.'), text: z.string().nullable().describe('All of them in words.') })
      .describe('The dishes that the batch fills.'),
    eggs: SheetEggs.nullable().describe('Null where there are none.'),
    oven: z.array(SheetOven).describe('Heats of the oven, in the order of the text.'),
    warmths: z.array(SheetWarmth).describe('Heights of boiled sugar and warmths of liquids that the text asks for.'),
    bake: z.array(SheetBake).describe('How long each dish bakes.'),
    order: z.array(SheetStep).describe('The work, step by step.'),
    rounding: z.string().nullable().describe('How far rounding moved the lines from one another.'),
    notes: common.notes,
    cautions: common.cautions,
    sources: z
      .array(
        z.object({
          number: z.int().describe('The number that lines refer to it by.'),
          id: common.id,
          short: z.string().describe('The source as a footnote has it, with the places in it.'),
          citation: z.string().describe('The whole reference, on one line.'),
        }),
      )
      .describe('Numbered footnotes.'),
    fixed: z
      .array(z.object({ what: z.string().describe('What was fixed.'), value: z.string().describe('What it was fixed to.'), lines }))
      .describe("What the plan took out of the tables' hands."),
    text: z.string().describe('The receipt as it was given, to the last character.'),
    dataset: common.dataset,
  }),
)
