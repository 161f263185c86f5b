import type { LoafAnswer } from '@pottle/core'
import { wrap } from '../layout/index.js'
import type { Page } from '../terminal.js'
import { sayBest, sayEnds } from './amount.js'
import { bandLines, bandTable, heading, joined, section, stepLines } from './parts.js'
import { saySetting } from './place.js'

const inGrams = <Ends>(ends: Ends): Ends & { readonly unit: string } => ({ ...ends, unit: 'g' })

/** Units that a baker weighs in. */
const told = new Set(['g', 'oz', 'lb'])

/** The weight of a loaf for people; a line a year where a span was asked for. */
export function showLoaf({ loaf, setting, value, modern, exact, series, steps, dataset }: LoafAnswer, page: Page, full: boolean): string {
  const texts = modern.filter(({ unit }) => told.has(unit)).map(({ text }) => text)
  const years = (series ?? []).map((row) => ({
    key: String(row.year),
    band: row,
    text: `${sayBest(inGrams(row))} (${sayEnds(inGrams(row))})`,
  }))
  const fixed = exact === null ? [] : wrap(`Exactly ${exact} g by law`, page.width - 2).map((line) => `  ${line}`)
  return joined([
    ...heading(`a ${loaf.label}`.replace(/^a (?=[aeiou])/, 'an '), saySetting(setting), page),
    '',
    ...wrap(`about ${texts.join('; ')}`, page.width - 2).map((line) => `  ${page.bold(line)}`),
    ...bandLines(value, page),
    ...fixed,
    ...section('Year by year', bandTable(years, page), page),
    ...(series && !full ? [] : section('How it is reckoned', stepLines(steps, page, full), page)),
    '',
    ...wrap(`Baked weight, as sold. Tables ${dataset}.${full ? '' : ' --full tells every step and source.'}`, page.width).map(page.quiet),
  ])
}
