/** Citations as software that others wrote reads them. */
import { plugins } from '@citation-js/core'
import '@citation-js/plugin-bibtex'
import { citeBibtex } from '@core/cite'
import { sources } from '@core/tables'
import { describe, expect, test } from 'vitest'

type People = readonly { readonly family?: string; readonly given?: string; readonly literal?: string }[]

/** Names as they are printed; a body has one name, whichever field it is in. */
const names = (people: People = []): readonly string[] =>
  people.map(({ literal, family, given }) => literal ?? [given, family].filter(Boolean).join(' '))

describe('BibTeX', () => {
  const entries = plugins.input.chain(sources.map(citeBibtex).join('\n'))

  test('has every source once, by its id', () => {
    expect(entries.map((entry) => entry['citation-key'])).toEqual(sources.map(({ id }) => id))
  })

  test('is read back as it was written: titles, and who wrote and edited them', () => {
    const essence = ({ title, author, editor }: { title: string; author?: People; editor?: People }) => ({
      title,
      author: names(author),
      editor: names(editor),
    })
    expect(entries.map(essence)).toEqual(sources.map(essence))
  })

  test('a report has an institution, which BibTeX asks of it (Patashnik, BibTeXing, 1988, entry types; from memory)', () => {
    const report = sources.find(({ type, publisher }) => type === 'report' && publisher)!
    expect(citeBibtex(report)).toContain(`  institution = {${report.publisher}}`)
  })
})
