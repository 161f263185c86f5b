import { z } from 'zod'
import { band, dataset, ModernValue, Setting, SourceNote, Step, Value } from './common.js'
import { named } from './named.js'

export const LoafYear = named('LoafYear', 'The weight of a loaf in one year, in g.', z.object({ year: z.int(), ...band }))

export const LoafAnswer = named(
  'LoafAnswer',
  'The computed weight of a loaf as sold, and every step of it. Where the year is a span, `series` has each of its years.',
  z.object({
    setting: Setting,
    loaf: z.object({ coin: z.string(), kind: z.string(), label: z.string() }),
    value: Value,
    exact: z.string().nullable().describe('Grams in all their digits, for a loaf whose weight the law fixed.'),
    modern: z.array(ModernValue),
    series: z.array(LoafYear).optional(),
    steps: z.array(Step),
    sources: z.array(SourceNote),
    dataset,
  }),
)
