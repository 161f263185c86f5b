import * as z from 'zod'
import * as common from './common.js'
import { named } from './named.js'

export const LoafYear = named(
  'LoafYear',
  'The weight of a loaf in one year, in g.',
  z.object({ year: z.int().describe('The year.'), ...common.band }),
)

export const LoafAnswer = named(
  'LoafAnswer',
  'The computed weight of a loaf as sold, and every step of it.',
  z.object({
    setting: common.Setting,
    loaf: z
      .object({ coin: common.coin, kind: z.string().describe('The kind of bread.'), label: common.label })
      .describe('Which loaf was meant, with what the tables take where nothing was said.'),
    value: common.Value,
    exact: z.string().nullable().describe('Grams in all their digits, for a loaf whose weight the law fixed.'),
    modern: common.modern,
    series: z.array(LoafYear).optional().describe('Year by year, where the date leaves several open.'),
    steps: common.steps(common.Step),
    sources: common.sourceNotes,
    dataset: common.dataset,
  }),
)
