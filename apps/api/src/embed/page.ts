import { type Child, card, type Entry, embedAddress, h, pageAddress, print, type Question, sheet, wordsOf } from '@pottle/embed/view'
import { type Reply, reasonsFor } from './asked.js'
import { face, inks } from './ink.js'

/** A card on its own paper, filling whatever frame it is put into. */
export const pageStyle: string = [
  inks(':root'),
  `html{color-scheme:light dark}body{margin:0;padding:.75rem 1rem;background:var(--pottle-paper);color:var(--pottle-ink);font:1rem/1.45 ${face}}`,
  'h1{font:inherit;margin:0}.card{--pottle-width:none;padding:.7em 0 .5em}',
  sheet,
].join('')

/** Where other programs learn that the page can be embedded (oEmbed 1.0, section 4). */
export function discoveryAddress(origin: string, question: Question): string {
  return `${origin}/oembed?${new URLSearchParams({ url: embedAddress(origin, question), format: 'json' })}`
}

export const titleOf = ({ words, short }: Entry): string => `${words}: ${short}`

function head(title: string, origin: string, { question, entry }: Reply): Child {
  return h(
    'head',
    {},
    h('meta', { charset: 'utf-8' }),
    h('title', {}, title),
    h('meta', { name: 'viewport', content: 'width=device-width, initial-scale=1' }),
    h('meta', { name: 'color-scheme', content: 'light dark' }),
    h('link', { rel: 'canonical', href: pageAddress(origin, question) }),
    entry && h('link', { rel: 'alternate', type: 'application/json+oembed', href: discoveryAddress(origin, question), title }),
    h('style', {}, pageStyle),
  )
}

function faultCard(words: string, reasons: readonly string[]): Child {
  return h(
    'div',
    { class: 'card' },
    h('div', { class: 'words' }, h('h1', {}, words)),
    reasons.map((reason) => h('p', { class: 'remark' }, reason)),
  )
}

/** The small page for a frame: the card, or the words with what is wrong with them. It needs no script. */
export function pageFor(reply: Reply, origin: string): string {
  const { question, entry, fault } = reply
  const words = wordsOf(question) || 'No measure is named'
  const title = entry ? titleOf(entry) : words
  const body = entry ? card(entry, h('h1', {}, entry.words), pageAddress(origin, question)) : faultCard(words, reasonsFor(fault!))
  return `<!doctype html>${print(h('html', { lang: 'en-GB' }, head(title, origin, reply), h('body', {}, h('main', {}, body))))}`
}
