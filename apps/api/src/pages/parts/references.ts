import { citeFull, type SourceRow } from '@pottle/core'
import { once } from '../../once.js'
import { references as text } from '../made/references.js'

/** The styles that references are made in, those of historians first. */
export const styles = [
  ['chicago', 'Chicago, author and date'],
  ['mla', 'MLA'],
  ['harvard', 'Harvard'],
  ['apa', 'APA'],
  ['vancouver', 'Vancouver'],
] as const

export type Style = (typeof styles)[number][0]

/** By style: how an answer of ours is referred to, and every source by its id. */
type References = Readonly<Record<string, { readonly answer: string; readonly references: Readonly<Record<string, string>> }>>

const references = once((): References => JSON.parse(text))

const noWork: ReadonlySet<string> = new Set(['pottle-judgement', 'common-practice'])

/** Whether a source can be looked up: judgement and common practice stand in the tables as sources, but there is no work to cite. */
export const isWork = ({ id }: { readonly id: string }): boolean => !noWork.has(id)

/** A source in a style. An Act has its short form in all of them. */
export const referTo = (source: SourceRow, style: Style): string => references()[style]!.references[source.id] ?? citeFull(source)

/** An answer of ours in a style; a title within quotation marks has single ones of its own. */
export function referToAnswer(title: string, address: string, style: Style): string {
  const { answer } = references()[style]!
  const within = answer.includes('“') ? title.replaceAll('“', '‘').replaceAll('”', '’') : title
  return answer.replace('{title}', () => within).replace('{address}', () => address)
}

/** A list of references: numbered as they are met in Vancouver's style, by the alphabet in the others. */
export function listOf(own: string, sources: readonly string[], style: Style): string {
  if (style === 'vancouver') return [own, ...sources].map((text, i) => `${i + 1}. ${text}`).join('\n')
  return [own, ...[...sources].sort(byLetters)].join('\n')
}

/** What a list goes by: letters and digits, not the marks before them. */
export function byLetters(a: string, b: string): number {
  const [first, second] = [a, b].map((text) => text.replace(/^[^\p{L}\p{N}]+/u, '')) as [string, string]
  return first.localeCompare(second, 'en')
}
