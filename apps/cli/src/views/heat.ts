import { type Caution, citeShort, dataset, type HeatReading, type OvenHeat } from '@pottle/core'
import { hang, table, wrap } from '../layout/index.js'
import type { Page } from '../terminal.js'
import { chance, sayEnds } from './amount.js'
import { inDegrees } from './degrees.js'
import { bandLines, bandTable, bullets, cautionLines, heading, indented, joined, section, stepLines } from './parts.js'

/** A dial is marked in fives: no finer setting can be kept. */
const onDial = (celsius: number): string => `${Math.round(celsius / 5) * 5} °C`

const plainStep = (step: HeatReading['steps'][number]) => ({ ...step, sources: step.sources.map(citeShort) })

/** How many claims, tests and goods are told where not all are asked for: the nearest in time come first. */
const few = 4

function claimRows({ claims }: HeatReading, full: boolean): readonly (readonly string[])[] {
  return claims
    .slice(0, full ? undefined : few)
    .map(({ year, low, high, unit, source, duty, votes }) => [
      String(year),
      `${high === null ? `${low} and more` : low === high ? low : `${low} to ${high}`} ${unit === 'degF' ? '°F' : '°C'}`,
      `${duty}; ${source}${votes ? '' : ' (no vote)'}`,
    ])
}

function lesser({ others }: HeatReading): readonly string[] {
  return others.map(
    ({ label, likelihood, value, note }) => `${chance(likelihood)} ${label}: ${sayEnds(inDegrees(value))}${note ? `. ${note}` : ''}`,
  )
}

function reading(one: HeatReading, page: Page, full: boolean): readonly string[] {
  const { heat, value, modern, steps, goods, tests, notes, of, likelihood, unread } = one
  const settings = [onDial(value.best), ...modern.map(({ text }) => text)]
  const rank = `${heat.label}${likelihood < 1 ? ` (${chance(likelihood)})` : ''}: ${heat.rank} on the scale from 0, drying, to 11, scorching`
  const missed = unread.length > 0 ? [`Not read: ${unread.join(', ')}.`] : []
  return [
    ...wrap(settings.join('; '), page.width - 2).map((line) => `  ${page.bold(line)}`),
    ...indented(of === 'fire' ? `${rank}, of an oven` : rank, page),
    ...bandLines(inDegrees(value), page),
    ...section('Worth knowing', bullets([...notes, ...missed], page), page),
    ...section('It may also have meant', bullets(lesser(one), page), page),
    ...section('How it is reckoned', stepLines(steps.map(plainStep), page, full), page),
    ...section('What books print', table([{ align: 'right' }, {}, { wraps: true }], claimRows(one, full), page.width), page),
    ...section(
      'How cooks tried it',
      bullets(
        tests.slice(0, full ? undefined : few).map(({ observation, year, source }) => `${observation}; ${year}, ${source}`),
        page,
      ),
      page,
    ),
    ...section(
      'What was baked at it',
      bullets(
        goods.slice(0, full ? undefined : few).map((one) => `${one.year}, ${one.phrase}: ${one.goods}; ${one.source}`),
        page,
      ),
      page,
    ),
  ]
}

/** What a heat phrase means, for people; where it names two heats, one after the other. */
export function showHeat(one: HeatReading, cautions: readonly Caution[], page: Page, full: boolean): string {
  const { year } = one.setting
  const care = cautions.map(({ id, title, text, source }) => ({ id, title, text, sources: source.map(citeShort) }))
  return joined([
    ...heading(one.phrase, year === null ? 'no year given' : `words of ${year}`, page),
    '',
    ...reading(one, page, full),
    ...(one.then ? section('And after that', reading(one.then, page, full), page) : []),
    ...section('Care', cautionLines(care, page), page),
    ...(full ? section('Method', indented(one.method, page), page) : []),
    '',
    ...hang('', `Tables ${dataset}.${full ? '' : ' --full tells every claim, test and kind of goods.'}`, page.width).map(page.quiet),
  ])
}

/** The scale of oven heats, the hottest first, as it stands in a book. */
export function showScale(heats: readonly OvenHeat[], page: Page): string {
  const rows = [...heats].reverse().map(({ rank, label, band, modern }) => ({
    key: String(rank),
    band,
    text: `${label}: ${sayEnds(inDegrees(band))}; ${modern.find(({ unit }) => unit === 'gas-mark')?.text ?? ''}`.replace(/; $/, ''),
  }))
  return joined([
    ...heading('Oven heats', 'words without a year', page),
    '',
    ...bandTable(rows, page),
    '',
    ...hang('', `Between these ends nine times in ten, for an oven without a fan. Tables ${dataset}.`, page.width).map(page.quiet),
  ])
}
