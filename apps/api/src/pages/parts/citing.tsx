import { type AnswerSource, citeBibtex, dataset, findSource, type SourceRow } from '@pottle/core'
import { Copyable } from './Copyable.js'

/** What is to be cited: what it says, where it can be seen again, and what it rests on. */
export interface Cited {
  /** `“a pottle of cream”, London, 1690`. */
  readonly question: string
  /** `about 1.9 litres; nine times in ten between …`. */
  readonly answer: string
  readonly address: string
  /** An id for BibTeX: letters, digits and hyphens. */
  readonly slug: string
  readonly sources: readonly AnswerSource[]
}

const rowsOf = (sources: readonly AnswerSource[]): SourceRow[] =>
  sources.map(({ id }) => findSource(id)!).filter(({ id }) => id !== 'pottle-judgement')

function footnote({ question, answer, address, sources }: Cited): string {
  const after = rowsOf(sources).map(({ custom }) => custom.short)
  return `${question}: ${answer}. Pottle, tables ${dataset}, ${address}${after.length > 0 ? `; after ${after.join('; ')}` : ''}.`
}

function bibliography({ question, address, sources }: Cited): string {
  const own = `Pottle, tables ${dataset}. ${question}. ${address}`
  const rests = sources.filter(({ id }) => id !== 'pottle-judgement').map(({ citation }) => citation)
  return [own, ...[...rests].sort()].join('\n')
}

const inBraces = (text: string): string => text.replace(/[&%$#_{}]/g, (mark) => `\\${mark}`)

function bibtex({ question, address, slug, sources }: Cited): string {
  const own = `@misc{pottle-${slug},\n  title = {${inBraces(question)}},\n  author = {{Pottle}},\n  note = {tables ${dataset}},\n  url = {${address}}\n}\n`
  return [own, ...rowsOf(sources).map(citeBibtex)].join('\n')
}

function cslJson({ question, address, slug, sources }: Cited): string {
  const own = { id: `pottle-${slug}`, type: 'dataset', title: question, author: [{ literal: 'Pottle' }], version: dataset, URL: address }
  return JSON.stringify([own, ...rowsOf(sources)], null, 1)
}

/** Citations to copy, in the forms that footnotes, lists and reference managers take. */
export function Citations(cited: Cited) {
  return (
    <>
      <Copyable title="As a footnote" text={footnote(cited)} prose />
      <details>
        <summary>As a list of references</summary>
        <Copyable title="List of references" text={bibliography(cited)} prose />
      </details>
      <details>
        <summary>As BibTeX</summary>
        <Copyable title="BibTeX" text={bibtex(cited)} />
      </details>
      <details>
        <summary>As CSL-JSON, for reference managers</summary>
        <Copyable title="CSL-JSON" text={cslJson(cited)} />
      </details>
    </>
  )
}

/** An id out of words: `a-pottle-of-cream-1690`. */
export const keyFor = (...words: readonly (string | number | null | undefined)[]): string =>
  words
    .filter((word) => word !== null && word !== undefined)
    .join(' ')
    .toLowerCase()
    .replace(/[^a-z0-9]+/g, '-')
    .replace(/^-|-$/g, '')
    .slice(0, 60)
