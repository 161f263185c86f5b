import type { Entry, EntrySense, EntryStep } from './entry.js'
import { gauge } from './gauge.js'
import { type Child, type Content, h, type Tree } from './tree.js'

/**
 * A sentence out of words that do not begin or end one.
 *
 * @example sentence('nine times in ten')   // 'Nine times in ten.'
 */
export const sentence = (text: string): string => `${text.charAt(0).toUpperCase()}${text.slice(1)}.`

function senseRow({ mark, label, text, share }: EntrySense): Tree {
  return h(
    'li',
    {},
    h('b', { class: 'letter' }, mark),
    h('span', { class: 'meaning' }, label),
    h('span', { class: 'value' }, text),
    h('span', { class: 'share' }, share),
  )
}

/** The meanings with the letters of the picture, the likeliest first. */
function senseList({ senses }: Entry): Content {
  return senses.length === 0 ? null : h('ol', { class: 'senses', part: 'senses' }, senses.map(senseRow))
}

function stepRow({ text, factor, grade, sources }: EntryStep): Tree {
  return h(
    'li',
    {},
    `${text}: `,
    h('span', { class: 'factor' }, factor),
    '. ',
    h('cite', { part: 'source' }, `${sources.length > 0 ? `${sources.join('; ')} ` : ''}(${grade})`),
  )
}

/**
 * Each factor of the likeliest meaning with who says so, the exact digits last.
 *
 * @example stepList(entryOfMeasure(convert('half an hour'))).children.length   // 2
 */
export function stepList({ steps, exact }: Entry): Tree {
  const last = exact ? [h('li', {}, 'In all its digits: ', h('span', { class: 'factor' }, exact))] : []
  return h('ol', { class: 'steps', part: 'steps' }, steps.map(stepRow), last)
}

/** What a reader needs before the figure is used: the band and the notes, with the picture between. */
function grounds(entry: Entry): Child[] {
  const { band, notes } = entry
  const certain = band ? sentence(band.text) : 'Exact.'
  const content: Content[] = [
    h('p', { class: 'band-text', part: 'band' }, certain),
    gauge(entry),
    senseList(entry),
    notes.map((note) => h('p', { class: 'remark', part: 'remark' }, note)),
  ]
  return h('div', {}, ...content).children as Child[]
}

/** Where the whole working can be read, and which tables it came from. */
function imprint({ dataset }: Entry, address: string | undefined): Tree {
  const whole = 'The whole working'
  return h(
    'p',
    { class: 'imprint', part: 'imprint' },
    address ? h('a', { href: address, target: '_blank', rel: 'noopener' }, whole) : null,
    `${address ? '. ' : ''}Pottle, tables ${dataset}.`,
  )
}

/**
 * What stands behind an inline answer: everything but the words and the answer themselves.
 *
 * @param address of the page with the whole working
 * @example print(note(entryOfMeasure(convert('half an hour')))[1])   // '<p class="band-text" part="band">Exact.</p>'
 */
export function note(entry: Entry, address?: string): Child[] {
  return [
    h('p', { class: 'setting', part: 'setting' }, sentence(entry.setting)),
    ...grounds(entry),
    stepList(entry),
    imprint(entry, address),
  ]
}

/**
 * An answer as a card: the words as the book has them, the answer large, the band, and the steps with their sources behind a disclosure.
 *
 * @param words the words, or the place where a page puts its own
 * @param address of the page with the whole working
 * @example card(entryOfMeasure(convert('half an hour')), 'half an hour').children[1]   // h('p', { class: 'answer', part: 'answer' }, '30 min')
 */
export function card(entry: Entry, words: Child, address?: string): Tree {
  const { short, also, setting } = entry
  return h(
    'figure',
    { class: 'card', part: 'card' },
    h(
      'figcaption',
      { class: 'caption' },
      h('div', { class: 'words', part: 'words' }, words),
      h('span', { class: 'setting', part: 'setting' }, setting),
    ),
    h('p', { class: 'answer', part: 'answer' }, short),
    also.length > 0 ? h('p', { class: 'also', part: 'also' }, also.join(', ')) : null,
    grounds(entry),
    h('details', { part: 'working' }, h('summary', { part: 'summary' }, 'Steps and sources'), stepList(entry)),
    imprint(entry, address),
  )
}
