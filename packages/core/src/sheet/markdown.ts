import { stretchesOf } from './marks.js'
import { reasonBeside, sayBand, sayBatch, sayChosen, sayLines, saySetting, sayThing, sayUnmeasured, sayWorking } from './say.js'
import type { Sheet, SheetLine } from './sheet.js'

/** Characters that Markdown or HTML would read as their own, anywhere in a line. */
const plain = (text: string): string =>
  text.replace(/[\\`*_{}[\]<>|#~&]/g, (mark) => (mark === '&' ? '&amp;' : mark === '<' ? '&lt;' : `\\${mark}`))

/** Text on one line, with nothing at its head that would begin a list. */
const inline = (text: string): string =>
  plain(text)
    .replace(/\s+/g, ' ')
    .trim()
    .replace(/^([-+]|\d{1,9}[.)])(?=\s)/, '\\$1')

const notes = (numbers: readonly number[]): string => numbers.map((number) => `[^${number}]`).join('')

const sentence = (text: string): string => (text === '' || /[.!?]$/.test(text) ? text : `${text}.`)

function row(line: SheetLine): string {
  const { number, phrase, working, note, sources } = line
  const between = working ? sayBand(working.value) : ''
  const sense = [sentence(inline(sayChosen(line))), inline(reasonBeside(line)), note ? `*${inline(note)}*` : ''].filter(Boolean).join(' ')
  return `| ${number} | ${inline(sayWorking(line))} | ${inline(sayThing(line))} | ${inline(phrase)} | ${between} | ${sense}${notes(sources)} |`
}

function table(sheet: Sheet): string {
  if (sheet.lines.length === 0) return ''
  const head = '| no. | measure off | thing | as written | between | taken as, and why |\n| --: | --- | --- | --- | --- | --- |'
  return [head, ...sheet.lines.map(row)].join('\n')
}

/** The text with its measures set off and numbered, each line of it kept. */
function quoted(sheet: Sheet): string {
  const words = stretchesOf(sheet).map(({ text, numbers, heat }) => {
    if (numbers.length === 0 && !heat) return plain(text)
    return numbers.length > 0 ? `**${plain(text)}** (${numbers.join(', ')})` : `*${plain(text)}*`
  })
  return words
    .join('')
    .split(/\r\n|\r|\n/)
    .map((line) => `> ${line}`)
    .join('\n')
}

const list = (items: readonly string[]): string => items.map((item) => `- ${item}`).join('\n')
const section = (title: string, body: string): string => (body === '' ? '' : `## ${title}\n\n${body}`)

function heatLines({ oven, warmths, bake }: Sheet): readonly string[] {
  return [
    ...oven.map(({ phrase, label, set, text, note, sources }) => {
      const words = phrase ? `“${inline(phrase)}” (${inline(label)})` : inline(label)
      return `${words}: **${set}**; ${text}${note ? `. ${inline(note)}` : ''}${notes(sources)}`
    }),
    ...warmths.map(
      ({ phrase, label, text, test, sources }) =>
        `“${inline(phrase)}” (${inline(label)}): **${inline(text)}**${test ? `; ${inline(test)}` : ''}${notes(sources)}`,
    ),
    ...bake.map(({ dish, text, core, sources }) => `${inline(dish)}: ${inline([text, core].filter(Boolean).join('; '))}${notes(sources)}`),
    ...new Set(bake.flatMap(({ note }) => (note ? [inline(note)] : []))),
  ]
}

/**
 * A sheet as Markdown, with a table of the lines and the sources as footnotes.
 *
 * @example sheetToMarkdown(workSheet('Take a pint of cream', { title: 'A Whip' })).slice(0, 8)   // '# A Whip'
 */
export function sheetToMarkdown(sheet: Sheet): string {
  const { title, order, cautions, sources, fixed, notes: remarks, dataset } = sheet
  const parts = [
    `# ${inline(title)}`,
    `*${inline(saySetting(sheet))}; ${inline(sheet.scale.text)}; tables ${dataset}*`,
    list(remarks.map(inline)),
    section('To measure off', table(sheet)),
    section('Named without an amount', sayUnmeasured(sheet).map(inline).join(', ')),
    section('The batch', list(sayBatch(sheet).map(inline))),
    section('Heat', list(heatLines(sheet))),
    section(
      'Order of work',
      order.map(({ number, text, lines }) => `${number}. ${inline(text)}${lines.length > 0 ? ` *(${sayLines(lines)})*` : ''}`).join('\n'),
    ),
    section('Fixed by you', list(fixed.map(({ what, value, lines }) => inline(`${what}: ${value} (${sayLines(lines)})`)))),
    section(
      'Cautions',
      list(cautions.map((caution) => `**${inline(caution.title)}.** ${inline(caution.text)} (${inline(caution.sources.join('; '))})`)),
    ),
    section('The receipt', quoted(sheet)),
    sources.map(({ number, citation }) => `[^${number}]: ${inline(citation)}`).join('\n'),
  ]
  return `${parts.filter(Boolean).join('\n\n')}\n`
}
