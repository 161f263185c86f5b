import { type Sheet, type SheetLine, stretchesOf, type Value } from '@pottle/core'
import { hang, table, wrap } from '../layout/index.js'
import type { Page } from '../terminal.js'
import { chance, sayBest, sayEnds, times } from './amount.js'
import { bullets, cautionLines, heading, indented, joined, section } from './parts.js'
import { saySetting } from './place.js'

/** The period words with their measures numbered, paragraph by paragraph. */
function wordLines(sheet: Sheet, page: Page): readonly string[] {
  const marked = stretchesOf(sheet).map(({ text, numbers }) => (numbers.length === 0 ? text : `${text} [${numbers.join(', ')}]`))
  return marked
    .join('')
    .split(/\n\s*\n/)
    .flatMap((paragraph, i) => [...(i > 0 ? [''] : []), ...indented(paragraph, page)])
}

const sayThing = ({ thing, part }: SheetLine): string => [thing ?? 'not named', part ? `the ${part}` : ''].filter(Boolean).join(', ')

function sayWorking({ working }: SheetLine): string {
  if (!working) return 'as you judge'
  return working.metric ? `${working.text} (${working.metric})` : working.text
}

/** What to measure off; eggs name themselves. */
function ledger({ lines }: Sheet, page: Page): readonly string[] {
  const rows = lines.map((line) => {
    const named = line.eggs && line.working ? '' : sayThing(line)
    return [String(line.number), [sayWorking(line), named].filter(Boolean).join('  '), line.working ? sayEnds(line.working.value) : '']
  })
  return table([{ align: 'right' }, { wraps: true, ink: page.bold }, { align: 'right' }], rows, page.width)
}

/** What the ledger is for, and what the ends in it say. */
function under({ scale, lines }: Sheet, page: Page): readonly string[] {
  const coverage = lines.find(({ value }) => value)?.value?.coverage ?? 0.9
  return indented(`Scale: ${scale.text}. The ends at the right hold the true amount ${times(coverage)}.`, page).map(page.quiet)
}

/** Why each line was taken as it was, in the words that it was written with. */
function reasonLines({ number, phrase, chosen, note, estimate, sources }: SheetLine, page: Page, digits: number): readonly string[] {
  const sure = chosen && chosen.likelihood < 0.995 ? ` (${chance(chosen.likelihood)})` : ''
  const head = `  ${String(number).padStart(digits)}  `
  const blank = ' '.repeat(head.length)
  const reason =
    chosen && !chosen.reason.startsWith(chosen.label)
      ? chosen.reason
      : chosen?.reason.slice(chosen.label.length).replace(/^[.;, ]{1,3}/, '')
  const cited = sources.length > 0 ? ` [${sources.join(', ')}]` : ''
  return [
    ...hang(head, `“${phrase}”: ${estimate ? 'an estimate; ' : ''}${chosen ? `${chosen.label}${sure}` : 'no figure'}`, page.width),
    ...(note ? hang(blank, note, page.width) : []),
    ...hang(blank, `${reason ?? ''}${cited}`, page.width).map(page.quiet),
  ]
}

const lineNumbers = (numbers: readonly number[]): string => `line${numbers.length === 1 ? '' : 's'} ${numbers.join(', ')}`

function sayTotal(value: Value): string {
  return value.low === value.high ? sayBest(value) : `about ${sayBest(value)} (${sayEnds(value)})`
}

function batchRows({ totals: { mass, volume }, dishes, eggs, unmeasured, fixed, rounding }: Sheet): readonly (readonly string[])[] {
  const without = mass && mass.without.length > 0 ? `, without ${lineNumbers(mass.without)}` : ''
  const besides = [...new Set(unmeasured.map(({ thing }) => thing))]
  const rows: readonly (readonly [string, string])[] = [
    ['weight', mass ? `${sayTotal(mass)}${without}` : ''],
    ['volume', volume ? `${sayTotal(volume)}, without the air in dry things` : ''],
    ['fills', dishes.text ?? ''],
    ['eggs', eggs?.text ?? ''],
    ['besides', besides.length > 0 ? `${besides.join(', ')}: named without an amount` : ''],
    ...fixed.map(({ what, value, lines }) => ['fixed', `${what}: ${value}${lines.length > 0 ? ` (${lineNumbers(lines)})` : ''}`] as const),
    ['rounding', rounding ?? ''],
  ]
  return rows.filter(([, text]) => text !== '')
}

function ovenLines({ oven, bake }: Sheet, page: Page): readonly string[] {
  const heats = oven.flatMap(({ phrase, label, set, text, note }) => [
    ...wrap(`${phrase ? `“${phrase}”, ${label}` : label}: ${set}`, page.width - 2).map((line) => `  ${page.bold(line)}`),
    ...hang('      ', text, page.width),
    ...(note ? hang('      ', note, page.width) : []),
  ])
  const [first] = bake
  const times = bake.flatMap(({ dish, text }) => indented(`${dish}: ${text}`, page))
  const ends = first ? [...first.signs, first.core].filter((sign) => sign !== null) : []
  return [
    ...heats,
    ...times,
    ...(ends.length > 0 ? indented(`Done when ${ends.join('; ')}.`, page) : []),
    ...(first?.note ? indented(first.note, page) : []),
  ]
}

function orderLines({ order, lines }: Sheet, page: Page): readonly string[] {
  if (order.length < 2) return []
  const digits = String(order.length).length
  const byNumber = new Map(lines.map((line) => [line.number, line]))
  return order.flatMap(({ number, text, lines: used }) => {
    const head = `  ${String(number).padStart(digits)}. `
    const goes = used
      .map((one) => byNumber.get(one)!)
      .map((line) => (line.eggs && line.working ? sayWorking(line) : `${sayThing(line)} ${sayWorking(line)}`))
    return [...hang(head, text, page.width), ...hang(' '.repeat(head.length), goes.join('; '), page.width).map(page.bold)]
  })
}

/** A sheet for a terminal: what to measure off first, why below, and the period words with their measures numbered. */
export function showSheet(sheet: Sheet, page: Page): string {
  const { title, setting, lines, notes, cautions, sources, dataset } = sheet
  const digits = String(lines.length).length
  return joined([
    ...heading(title, saySetting(setting), page),
    ...section('As it was written', wordLines(sheet, page), page),
    ...section('Worth knowing', bullets(notes, page), page),
    ...section('To measure off', lines.length === 0 ? [] : [...under(sheet, page), ...ledger(sheet, page)], page),
    ...section('The batch', table([{}, { wraps: true }], batchRows(sheet), page.width), page),
    ...section('The oven', ovenLines(sheet, page), page),
    ...section('Order of work', orderLines(sheet, page), page),
    ...section('Care', cautionLines(cautions, page), page),
    ...section(
      'Taken as, and why',
      lines.flatMap((line) => reasonLines(line, page, digits)),
      page,
    ),
    ...section(
      'Sources',
      table(
        [{ align: 'right' }, { wraps: true }],
        sources.map(({ number, short }) => [String(number), short]),
        page.width,
      ),
      page,
    ),
    '',
    ...wrap(`Tables ${dataset}.`, page.width).map(page.quiet),
  ])
}
