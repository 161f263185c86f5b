import { type Child, type Entry, gauge, h, print, sentence, type Tree, wordsOf } from '@pottle/embed/view'
import { type Reply, reasonsFor } from './asked.js'
import { face, inks } from './ink.js'

/** In pixels. */
const width = 480
const margin = 22
const inner = width - 2 * margin

/** The gauge takes its look from the same names as on a page. */
export const pictureStyle: string = [
  inks('svg'),
  'text{fill:var(--pottle-ink)}.paper{fill:var(--pottle-paper)}.rule,.sense,.tick,.end{stroke:var(--pottle-ink)}.end{stroke-width:2}',
  '.sense{stroke-dasharray:2 2}.band{fill:var(--pottle-ink);fill-opacity:.18}.best{fill:var(--pottle-accent)}',
  '.gauge{font-size:14px}.gauge text{text-anchor:middle}.letter{font-style:italic}',
].join('')

/** How much of the line an average letter of these faces takes, as a part of its size; generous, so that nothing is cut off. */
const letterWidth = 0.5

const widthOf = (text: string, size: number): number => text.length * size * letterWidth

/** Breaks a text into lines: a picture can't flow. */
export function linesOf(text: string, size: number, room: number = inner): string[] {
  const most = Math.floor(room / (size * letterWidth))
  const lines = ['']
  for (const word of text.split(' ')) {
    const last = lines.at(-1)!
    if (last !== '' && last.length + 1 + word.length > most) lines.push(word.slice(0, most))
    else lines[lines.length - 1] = `${last} ${word.slice(0, most)}`.trim()
  }
  return lines
}

/** A column of things down the page, each at the height where the last one ended. */
class Column {
  readonly drawn: Child[] = []
  height = margin

  /** Lines of text of one size, after a gap. */
  write(text: string, size: number, above = 0, part = 'text', room = inner): void {
    if (text === '') return
    this.height += above
    for (const line of linesOf(text, size, room)) {
      this.height += size * 1.35
      this.beside(line, size, 0, part, 'start')
    }
  }

  /** Something that stands level with the last line, so far from the left. */
  beside(text: string, size: number, across: number, part = 'text', anchor = 'end'): void {
    const place = { x: String(margin + across), y: this.#at(-size * 0.3), 'font-size': String(size), 'text-anchor': anchor }
    this.drawn.push(h('text', { class: part, ...place }, text))
  }

  /** A rule, or two close together, with air below. */
  rule(lines: 1 | 2 = 1): void {
    this.height += 6
    for (let i = 0; i < lines; i++) {
      const y = this.#at(3 * i)
      this.drawn.push(h('line', { class: 'rule', x1: String(margin), x2: String(width - margin), y1: y, y2: y }))
    }
    this.height += 3 * lines
  }

  place(picture: Tree): void {
    const placed = { ...picture.attributes, x: String(margin), y: this.#at(10), width: String(inner), 'aria-hidden': 'true' }
    this.drawn.push({ ...picture, attributes: placed })
    this.height += Number(picture.attributes.height) + 16
  }

  #at(above: number): string {
    return (this.height + above).toFixed(1)
  }
}

/** More would bury the answer; the whole working has them all. */
const mostSources = 5

/** The sources of the steps, each once, those of the statutes and standards first. */
function citedIn(steps: Entry['steps']): string {
  const firmFirst = [...steps].sort((a, b) => Number(/^sta/.test(b.grade)) - Number(/^sta/.test(a.grade)))
  const all = [...new Set(firmFirst.flatMap(({ sources }) => sources))]
  const rest = all.length - mostSources
  return [...all.slice(0, mostSources), ...(rest > 0 ? [`and ${rest} more`] : [])].join('; ')
}

/** Where a label begins, and the room that figures take at the other side. */
const label = { across: 22, beside: 190 } as const

function drawSenses(column: Column, senses: Entry['senses']): void {
  for (const sense of senses) {
    const [first, ...others] = linesOf(sense.label, 15, inner - label.beside)
    column.rule()
    column.write(sense.mark, 15, 0, 'letter')
    column.beside(first!, 15, label.across, 'text', 'start')
    column.beside(sense.text, 15, inner - 90)
    column.beside(sense.share, 15, inner)
    for (const line of others) {
      column.write(' ', 15)
      column.beside(line, 15, label.across, 'text', 'start')
    }
  }
  if (senses.length > 0) column.rule()
}

function drawAnswer(column: Column, { words, setting, ...entry }: Entry): void {
  const { short, also, band, senses, steps, notes, dataset } = entry
  column.write(words, 20, 4, 'letter', inner - widthOf(setting, 15))
  column.beside(setting, 15, inner)
  column.write(short, 34)
  column.write(also.join(', '), 17)
  column.write(band ? sentence(band.text) : 'Exact.', 15, 6)
  const picture = gauge({ words, setting, ...entry })
  if (picture) column.place(picture)
  drawSenses(column, senses)
  for (const note of notes.slice(0, 2)) column.write(note, 14, 6)
  const cited = citedIn(steps)
  if (cited) column.write(`By ${cited}.`.replace(/\.\.$/, '.'), 14, 6)
  column.write(`Pottle, tables ${dataset}.`, 14, 6)
}

function drawFault(column: Column, words: string, reasons: readonly string[]): void {
  column.write(words, 20, 4, 'letter')
  for (const reason of reasons) column.write(reason, 15)
}

/** A picture for hosts that take neither frames nor scripts: all that the card says but for the steps. */
export function pictureFor(reply: Reply): string {
  const { question, entry, fault } = reply
  const words = entry?.words ?? (wordsOf(question) || 'No measure is named')
  const reasons = fault ? reasonsFor(fault) : []
  const column = new Column()
  column.rule(2)
  if (entry) drawAnswer(column, entry)
  else drawFault(column, words, reasons)
  column.height += 4
  column.rule(2)
  const height = Math.ceil(column.height + margin / 2)
  const said = entry ? `${entry.setting}: ${[entry.short, ...entry.also].join(', ')}; ${entry.band?.text ?? 'exact'}.` : reasons.join('; ')
  const size = { width: String(width), height: String(height), viewBox: `0 0 ${width} ${height}` }
  const names = { role: 'img', 'aria-labelledby': 'words said', 'font-family': face }
  return print(
    h(
      'svg',
      { xmlns: 'http://www.w3.org/2000/svg', ...size, ...names },
      h('title', { id: 'words' }, words),
      h('desc', { id: 'said' }, said),
      h('style', {}, pictureStyle),
      h('rect', { class: 'paper', width: '100%', height: '100%' }),
      column.drawn,
    ),
  )
}
