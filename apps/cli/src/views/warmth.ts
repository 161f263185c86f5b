import { citeShort, dataset, type LiquidHeat, type SugarHeight } from '@pottle/core'
import { wrap } from '../layout/index.js'
import type { Page } from '../terminal.js'
import { sayEnds } from './amount.js'
import { bothScales, inDegrees } from './degrees.js'
import { attested, bandLines, bandTable, bullets, heading, indented, joined, section } from './parts.js'

const foot = (page: Page): readonly string[] => [
  '',
  ...wrap(`Degrees are those at sea level. Tables ${dataset}.`, page.width).map(page.quiet),
]

type Row = Pick<SugarHeight, 'label' | 'rank' | 'value' | 'modern' | 'grade' | 'checked' | 'sources'>

function headOf({ label, value, modern, ...row }: Row, phrase: string, page: Page): readonly string[] {
  const said = attested({ ...row, sources: row.sources.map(citeShort) }, true)
  return [
    ...heading(phrase, label, page),
    '',
    ...wrap(bothScales(value, modern), page.width - 2).map((line) => `  ${page.bold(line)}`),
    ...bandLines(inDegrees(value), page),
    ...indented(said, page).map(page.quiet),
  ]
}

const years = (span: readonly [number, number] | null): string => (span ? `, ${span[0]} to ${span[1]}` : '')

/** A height of boiled sugar for people. */
export function showSugar(height: SugarHeight, phrase: string, page: Page): string {
  const { test, names, printed, note } = height
  const called = names.map(({ words, years: span, source }) => `${words}${years(span)}${source ? `; ${source}` : ''}`)
  const book = printed ? [`${printed.degF} °F; ${printed.source}`] : ['No book prints a degree; the figure is our placing.']
  return joined([
    ...headOf(height, phrase, page),
    ...section('How it was known', indented(test, page), page),
    ...section('What books print', bullets(book, page), page),
    ...section('Called', bullets(called, page), page),
    ...section('Worth knowing', note ? indented(note, page) : [], page),
    ...foot(page),
  ])
}

/** The warmth of a liquid for people. */
export function showLiquid(heat: LiquidHeat, phrase: string, page: Page): string {
  const printed = heat.printed.map(
    ({ low, high, year, source, note }) => `${year}: ${low === high ? low : `${low} to ${high}`} °F; ${source}${note ? `; ${note}` : ''}`,
  )
  return joined([
    ...headOf(heat, phrase, page),
    ...section('What books print', bullets(printed, page), page),
    ...section('Worth knowing', bullets(heat.notes, page), page),
    ...foot(page),
  ])
}

/** The hottest first, as a thermometer stands. */
function showAll(title: string, rows: readonly (Row & { readonly words?: string })[], page: Page): string {
  const lines = bandTable(
    [...rows].reverse().map(({ label, value, modern, words }) => ({
      key: `${Math.round(value.best)} °C`,
      band: value,
      text: `${label}: ${sayEnds(inDegrees(value))}; ${modern.map(({ text }) => text).join('; ')}${words ? `; ${words}` : ''}`,
    })),
    page,
  )
  return joined([...heading(title, 'hottest first', page), '', ...lines, ...foot(page)])
}

export function showSugars(heights: readonly SugarHeight[], page: Page): string {
  return showAll(
    'Heights of boiled sugar',
    heights.map((height) => ({ ...height, words: height.test })),
    page,
  )
}

export function showLiquids(heats: readonly LiquidHeat[], page: Page): string {
  return showAll('The warmth of liquids', heats, page)
}
