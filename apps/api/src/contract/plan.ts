import * as z from 'zod'
import * as common from './common.js'
import { named } from './named.js'

/** The longest receipt of the old books has some 6,000; a sheet of this many takes the server a third of a second. */
const mostText = 50_000

const inside = z.union([z.number(), z.string()]).optional()
const length = inside.describe('Inside the rim: a number in `unit`, or text with a unit of its own, such as `9 in`; from 10 to 2000 mm.')

const Dish = named(
  'Dish',
  'A dish by its name, or by its shape and measures.',
  z.strictObject({
    id: z.string().optional().describe('A common dish by its name: `small-tart`; it stands in place of a shape.'),
    shape: z
      .enum(['round', 'square', 'rectangle', 'oval', 'loaf', 'mould'])
      .optional()
      .describe(
        'Its shape. `round` needs `diameter` and `depth`; `square` needs `side` and `depth`; `rectangle`, `oval` and `loaf` need `length`, `width` and `depth`; `mould` needs `diameter` and `depth`, or its `volume`.',
      ),
    diameter: length,
    side: length,
    length,
    width: length,
    depth: length,
    taper: inside.describe('How much less across it is at the bottom than at the rim, given as lengths are; 0 where nothing is said.'),
    lining: inside.describe('How thick the paste is that lines it, given as lengths are; 0 where nothing is said.'),
    volume: z.number().optional().describe('Of a mould: ml to the brim, from 1 to 100,000.'),
    fill: z.number().optional().describe('The part of its depth that is filled, from 0.1 to 1; 0.9 where nothing is said.'),
    count: z
      .number()
      .optional()
      .describe('How many there are, a whole number up to 1,000; where none is said, as many as the batch fills, or one to scale by.'),
    unit: z.enum(['mm', 'cm', 'in']).optional().describe('The unit of its numbers; `mm` where none is said.'),
  }),
)

const size = {
  g: z.number().optional().describe('In g; or give `ml`.'),
  ml: z.number().optional().describe('In ml; or give `g`.'),
}

/** More than any receipt has measures, things or lines. */
const mostFixed = 200

/** Choices by name, or by number of line. */
function fixing<Value extends z.ZodType>(value: Value) {
  return z
    .record(z.string(), value)
    .refine((choices) => Object.keys(choices).length <= mostFixed, `fix at most ${mostFixed} at a time`)
    .optional()
}

const Fixed = named(
  'Fixed',
  "Choices that you take out of the tables' hands.",
  z.strictObject({
    standards: fixing(z.string()).describe('The standard that a measure goes by: `{"pint": "wine"}`.'),
    sizes: fixing(z.strictObject(size)).describe('What one of a measure comes to: `{"spoonful": {"ml": 15}}`.'),
    lines: fixing(z.strictObject({ ...size, standard: z.string().optional().describe('The standard that its measure goes by.') })).describe(
      'Lines by their numbers from 1; they rule over what is said of measures.',
    ),
    egg: z.number().optional().describe("What one of the cook's eggs weighs in its shell, in g, from 5 to 250; in place of an `eggClass`."),
    densities: fixing(z.number()).describe('g/ml by the name of the thing, from 0.02 to 20.'),
    oven: z.number().optional().describe('What the oven is set to, in degC, without a fan, from 40 to 350.'),
  }),
)

const Plan = named(
  'Plan',
  'What the kitchen has and wants. One of scale, guests and limit scales the receipt; a dish does where none of them is given.',
  z.strictObject({
    scale: z.union([z.number(), z.string()]).optional().describe('A factor from 0.001 to 1000: `0.5`, `"1/3"`.'),
    guests: z.number().optional().describe('How many are to be fed, a whole number up to 100,000.'),
    serves: z
      .number()
      .optional()
      .describe(
        'Beside `guests`: how many the receipt feeds, a whole number up to 100,000; by its own words, or else estimated from its weight, where nothing is said.',
      ),
    dish: z
      .union([z.string(), Dish, z.array(z.union([z.string(), Dish]))])
      .optional()
      .describe('The dish at hand, or up to 1,000: a common one by its name, or its shape and measures.'),
    limit: z
      .strictObject({
        thing: z.string().describe('What it is.'),
        amount: z.union([z.number(), z.string()]).describe('How much there is, above 0: `200`, `"1 1/2"`.'),
        unit: z.string().describe('A modern unit: `g`, `ml`, `cup-us`; `each` for eggs and for what is counted.'),
      })
      .optional()
      .describe('The one thing that there is least of.'),
    units: z.enum(['metric', 'us', 'uk']).optional().describe('What the cook measures with; `metric` where nothing is said.'),
    eggClass: z
      .string()
      .optional()
      .describe(
        'A modern class of egg, such as `egg-us-large`; that of the units where nothing is said: `egg-eu-m`, `egg-us-large`, `egg-uk-m`.',
      ),
    oven: z.enum(['conventional', 'fan', 'gas']).optional().describe("The cook's oven; `conventional` where nothing is said."),
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
      .describe('The words of the receipt, at most 50,000 characters.'),
    ...common.settingFields,
    title: z.string().optional().describe('What the sheet is headed, at most 300 characters; `A receipt` where nothing is said.'),
    plan: Plan.optional(),
    coverage: common.coverageField,
  }),
)
