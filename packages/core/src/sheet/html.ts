import type { AnswerCaution } from '../answer.js'
import { stretchesOf } from './marks.js'
import {
  capital,
  reasonBeside,
  runsOf,
  sayBand,
  sayChosen,
  sayGoing,
  sayLines,
  saySetting,
  sayThing,
  sayTotal,
  sayUnmeasured,
} from './say.js'
import type { Sheet, SheetBake, SheetLine, SheetOven, SheetStep, SheetWarmth } from './sheet.js'
import { style } from './style.js'

const marks: Readonly<Record<string, string>> = { '&': '&amp;', '<': '&lt;', '>': '&gt;', '"': '&quot;', "'": '&#39;' }

/** Text as HTML; characters that no document may hold are shown as the sign for them. */
function escaped(text: string): string {
  // biome-ignore lint/suspicious/noControlCharactersInRegex: these are the characters that are sought
  return text.replace(/[&<>"']/g, (mark) => marks[mark]!).replace(/[\u0000-\u0008\u000b\u000e-\u001f\u007f]/g, '\ufffd')
}

function footnotes(numbers: readonly number[]): string {
  const links = runsOf(numbers).map(({ first, text }) => `<a href="#source-${first}">${text}</a>`)
  return links.length > 0 ? `<sup>${links.join(', ')}</sup>` : ''
}

function words(sheet: Sheet): string {
  const body = stretchesOf(sheet).map(({ text, numbers, heat }) => {
    if (heat) return `<em>${escaped(text)}</em>`
    if (numbers.length === 0) return escaped(text)
    const links = numbers.map((number) => `<a href="#line-${number}" id="said-${number}">${number}</a>`)
    return `<u>${escaped(text)}</u><sup>${links.join(', ')}</sup>`
  })
  return `<section aria-labelledby="words"><h2 id="words">As it was written</h2>\n<p class="words">${body.join('')}</p></section>`
}

/** Words that an earlier line has told are not told again: this line is as that one. */
function once(words: string | null, { number }: SheetLine, told: Map<string, number>, wrap: (words: string) => string): string {
  if (!words) return ''
  const earlier = told.get(words)
  told.set(words, earlier ?? number)
  return wrap(earlier === undefined ? escaped(words) : `As line ${earlier}.`)
}

const why = (words: string): string => ` <span class="why">${words}</span>`
const remark = (words: string): string => `<span class="note">${words}</span>`

function row(line: SheetLine, told: Map<string, number>): string {
  const { number, phrase, working, note, sources } = line
  const metric = working?.metric ? ` <small>${escaped(working.metric)}</small>` : ''
  const cells = [
    `<th scope="row"><a href="#said-${number}">${number}</a></th>`,
    `<td class="off">${working ? `${escaped(working.text)}${metric}` : 'as you judge'}</td>`,
    `<td class="thing">${escaped(sayThing(line))}</td>`,
    `<td class="said">${escaped(phrase)}</td>`,
    `<td class="between">${working ? escaped(sayBand(working.value)) : ''}</td>`,
    `<td class="sense">${escaped(sayChosen(line))}${footnotes(sources)}${once(reasonBeside(line), line, told, why)}${once(note, line, told, remark)}</td>`,
  ]
  return `<tr id="line-${number}">${cells.join('')}</tr>`
}

const columns = ['no.', 'measure off', 'of', 'as written', 'between', 'taken as, and why']

function ledger(sheet: Sheet): string {
  if (sheet.lines.length === 0) return ''
  const coverage = sheet.lines.find(({ value }) => value)?.value?.coverage ?? 0.9
  const told = new Map<string, number>()
  const between = `<i>Between</i> gives the two ends that hold the true amount ${Math.round(coverage * 100)} times in 100.`
  return `<section aria-label="To measure off">
<table><caption><strong>To measure off</strong>${escaped(capital(sheet.scale.text))}. ${between}</caption>
<thead><tr>${columns.map((name) => `<th scope="col">${name}</th>`).join('')}</tr></thead>
<tbody>
${sheet.lines.map((line) => row(line, told)).join('\n')}
</tbody></table></section>`
}

const entry = (term: string, words: string | null): string => (words ? `<dt>${term}</dt><dd>${words}</dd>` : '')

function section(id: string, title: string, body: string): string {
  return body === '' ? '' : `<section aria-labelledby="${id}"><h2 id="${id}">${title}</h2>\n${body}</section>`
}

/** The footnotes of several parts, each once. */
const cited = (parts: readonly { readonly sources: readonly number[] }[]): readonly number[] =>
  [...new Set(parts.flatMap(({ sources }) => sources))].sort((a, b) => a - b)

function batch(sheet: Sheet): string {
  const { totals, dishes, eggs, fixed, rounding } = sheet
  const missing = totals.mass && totals.mass.without.length > 0 ? `, without ${sayLines(totals.mass.without)}` : ''
  const unmeasured = sayUnmeasured(sheet)
  const given = fixed.map(({ what, value, lines }) => `${what}: ${value} (${sayLines(lines)})`)
  const entries = [
    entry('weight', totals.mass && `${escaped(`${sayTotal(totals.mass)}${missing}`)}${footnotes(totals.mass.sources)}`),
    entry('volume', totals.volume && `${escaped(sayTotal(totals.volume))}${footnotes(totals.volume.sources)}`),
    entry('fills', dishes.text && `${escaped(dishes.text)}${footnotes(cited(dishes.fits))}`),
    entry('eggs', eggs && escaped(eggs.text)),
    entry('besides', unmeasured.length > 0 ? escaped(`${unmeasured.join(', ')}: named without an amount`) : null),
    entry('fixed', given.length > 0 ? escaped(given.join('; ')) : null),
    entry('rounding', rounding && escaped(rounding)),
  ].join('')
  return entries ? `<dl>${entries}</dl>` : ''
}

function heat({ phrase, label, set, text, note, sources }: SheetOven): string {
  const said = phrase ? `<i>${escaped(phrase)}</i>, ` : ''
  return `<p>${said}${escaped(label)}: <b>${escaped(set)}</b>${footnotes(sources)}<br><small>${escaped(text)}</small>${note ? `<span class="note">${escaped(note)}</span>` : ''}</p>`
}

function warmth({ phrase, label, text, test, sources }: SheetWarmth): string {
  return `<p><i>${escaped(phrase)}</i>, ${escaped(label)}: <b>${escaped(text)}</b>${footnotes(sources)}${test ? `<br><small>${escaped(test)}</small>` : ''}</p>`
}

function bakes(plans: readonly SheetBake[]): string {
  const [first] = plans
  if (!first) return ''
  const times = plans.map(({ dish, text, sources }) => `<p><i>${escaped(dish)}</i>: ${escaped(text)}${footnotes(sources)}</p>`).join('')
  const ends = [...first.signs, first.core].filter((sign) => sign !== null)
  const done = ends.length > 0 ? `Done when ${escaped(ends.join('; '))}. ` : ''
  return `${times}<p><small>${done}${escaped(first.note ?? '')}</small></p>`
}

/** A step in the words of the text, with the amounts that go in. */
function step({ text, lines }: SheetStep, byNumber: ReadonlyMap<number, SheetLine>): string {
  const used = lines.map((number) => escaped(sayGoing(byNumber.get(number)!)))
  return `<li>${escaped(text)}${used.length > 0 ? `<br><small>${used.join('; ')}</small>` : ''}</li>`
}

function order({ order: steps, lines }: Sheet): string {
  const byNumber = new Map(lines.map((line) => [line.number, line]))
  return steps.length > 1 ? `<ol class="order">${steps.map((one) => step(one, byNumber)).join('\n')}</ol>` : ''
}

const caution = ({ title, text, sources }: AnswerCaution): string =>
  `<li><b>${escaped(title)}.</b> ${escaped(text)} <small>(${escaped(sources.join('; '))})</small></li>`

const items = (list: readonly string[]): string => (list.length > 0 ? `<ul>${list.join('\n')}</ul>` : '')

/**
 * A sheet as a whole HTML page that prints on a sheet or two of A4: the period text with its measures underlined and numbered, a ledger of
 * what to measure off, the batch, the heat, the order of work, and the sources as footnotes. It fetches nothing.
 *
 * @example sheetToHtml(workSheet('Take a pint of cream')).slice(0, 15)   // '<!DOCTYPE html>'
 */
export function sheetToHtml(sheet: Sheet): string {
  const { title, oven, warmths, bake, cautions, sources, notes, dataset } = sheet
  const numbered = sources
    .map(({ number, short, citation }) => `<li id="source-${number}" title="${escaped(citation)}">${escaped(short)}</li>`)
    .join('\n')
  const heats = [...oven.map(heat), ...warmths.map(warmth), bakes(bake)].join('')
  const pair = [section('batch', 'The batch', batch(sheet)), section('heat', 'The heat', heats)].join('\n')
  const parts = [
    `<header><h1>${escaped(title)}</h1><p>${escaped(saySetting(sheet))}; ${escaped(sheet.scale.text)}</p></header>`,
    notes.map((note) => `<p class="note">${escaped(note)}</p>`).join('\n'),
    words(sheet),
    ledger(sheet),
    pair.trim() ? `<div class="pair">${pair}</div>` : '',
    section('order', 'Order of work', order(sheet)),
    section('cautions', 'Cautions', items(cautions.map(caution))),
    section('sources', 'Sources', numbered ? `<ol class="sources">${numbered}</ol>` : ''),
    `<footer>Worked from the tables of ${escaped(dataset)}. Amounts are what the words most likely meant; the ends and the notes say how sure that is.</footer>`,
  ]
  return `<!DOCTYPE html>
<html lang="en">
<head>
<meta charset="utf-8">
<meta name="viewport" content="width=device-width, initial-scale=1">
<title>${escaped(title)}</title>
<style>${style}</style>
</head>
<body>
${parts.filter(Boolean).join('\n')}
</body>
</html>
`
}
