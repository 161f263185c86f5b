import { citeFull, dataset, type SourceRow } from '@pottle/core'
import { table, wrap } from '../layout/index.js'
import type { Page } from '../terminal.js'
import { heading, indented, joined, section } from './parts.js'

const foot = (text: string, page: Page): readonly string[] => ['', ...wrap(text, page.width).map(page.quiet)]

/** Sources by their ids and footnote forms. */
export function showSources(sources: readonly SourceRow[], page: Page): string {
  const rows = sources.map(({ id, custom }) => [id, custom.short])
  return joined([
    ...heading(`${sources.length} sources`, `tables ${dataset}`, page),
    '',
    ...table([{}, { wraps: true }], rows, page.width),
    ...foot('pottle sources ID describes one.', page),
  ])
}

/** One source with its whole reference, and where its text was seen. */
export function showSource(source: SourceRow, page: Page): string {
  const { id, custom, note, URL: address, DOI } = source
  const notes = [note, address, DOI ? `DOI ${DOI}` : undefined].filter((text) => text !== undefined)
  return joined([
    ...heading(custom.short, id, page),
    '',
    ...indented(citeFull(source), page),
    ...notes.flatMap((text) => indented(text, page)),
    ...section('Where its text was seen', indented(custom.seen, page), page),
    ...foot(`Tables ${dataset}.`, page),
  ])
}
