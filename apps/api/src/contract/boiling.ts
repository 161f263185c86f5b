import * as z from 'zod'
import * as common from './common.js'
import { HeatName, heatName } from './heats.js'
import { named } from './named.js'

const year = z.int().describe('The year of the book.')

const sugar = {
  value: common.Value,
  modern: common.modern,
  printed: z
    .object({ degF: z.number().describe('The degree, in degF.'), year, source: common.source })
    .nullable()
    .describe('The degree that a book prints; null where none does, and the value is then our placing.'),
  test: z.string().describe('How a confectioner knew it.'),
  names: z
    .array(
      z.object({
        words: z.string().describe('Words for it.'),
        years: common.years,
        source: z.string().nullable().describe('Who calls it so, as a footnote.'),
      }),
    )
    .describe('What books call it; the same word has meant different heights.'),
  grade: common.grade,
  checked: common.checked,
  note: common.note,
  sources: common.sourceNotes,
}

export const SugarHeight = named('SugarHeight', 'A height to which sugar is boiled, at sea level.', z.object({ ...heatName, ...sugar }))

export const SugarHeightList = named(
  'SugarHeightList',
  'Every height of boiled sugar, from the small thread to caramel.',
  z.object({ heights: z.array(SugarHeight).describe('In their order.'), dataset: common.dataset }),
)

export const SugarReading = named(
  'SugarReading',
  'What words for a height of boiled sugar mean.',
  z.object({ phrase: common.phrase, setting: common.yearSetting, height: HeatName, ...sugar, dataset: common.dataset }),
)

const liquid = {
  value: common.Value,
  modern: common.modern,
  printed: z
    .array(z.object({ ...common.ends, year, source: common.source, note: common.note }))
    .describe('What dated books print, in degF.'),
  grade: common.grade,
  checked: common.checked,
  notes: common.notes,
  sources: common.sourceNotes,
}

export const LiquidHeat = named(
  'LiquidHeat',
  'The warmth of a liquid by its kitchen name, at sea level.',
  z.object({ ...heatName, ...liquid }),
)

export const LiquidHeatList = named(
  'LiquidHeatList',
  'Every name for the warmth of a liquid, from cold to boiling.',
  z.object({ heats: z.array(LiquidHeat).describe('In their order.'), dataset: common.dataset }),
)

export const LiquidReading = named(
  'LiquidReading',
  'What words for the warmth of a liquid mean.',
  z.object({ phrase: common.phrase, setting: common.yearSetting, heat: HeatName, ...liquid, dataset: common.dataset }),
)
