// Sets every source in the styles that scholars are asked for, by a citation library, so that the server carries the texts and not the library.
import { Cite, plugins } from '@citation-js/core'
import '@citation-js/plugin-csl'

/** What each style is called by the library. */
const templates = { apa: 'apa', chicago: 'chicago', harvard: 'harvard1', mla: 'mla', vancouver: 'vancouver' }

// The library brings three of the styles; this package is the smallest of the registry that has the other two.
for (const name of ['chicago', 'mla']) {
  const { default: style } = await import(new URL(`styles/${name}.js`, import.meta.resolve('rehype-citation')))
  plugins.config.get('@csl').styles.add(name, style)
}

/** Stand for what is known only when an answer is cited. No style can change the case of a character for private use. */
const unknown = { title: '\ue000', address: 'https://pottle.invalid' }

/** An answer of ours: an entry in a work of reference that has no author. */
const answer = (dataset) => ({
  id: 'answer',
  type: 'entry-encyclopedia',
  title: unknown.title,
  'container-title': `Pottle, tables ${dataset}`,
  issued: { 'date-parts': [[Number.parseInt(dataset, 10)]] },
  URL: unknown.address,
})

/** What the styles can use of a record; the engine takes lines of a note for fields. */
const plain = ({ custom, note, ...record }) => record

/** A record in one style, by itself: in a list an author would be a dash the second time. Vancouver's numbers are left to the list that it stands in. */
const setIn = (template, record) =>
  new Cite(record)
    .format('bibliography', { template, format: 'text' })
    .trim()
    .replace(/^\d+\. /, '')
    // What Harvard makes of an article whose volume is not known: that of 1822 was none.
    .replace(' [Preprint]', '')

/**
 * The module that the pages read. Acts are not in it: their short form, with the chapter, is the same in every style.
 *
 * @param sources CSL-JSON
 * @param dataset the version of the tables
 */
export function referencesModule(sources, dataset) {
  const records = sources.filter(({ type }) => type !== 'legislation')
  const styles = Object.entries(templates).map(([style, template]) => {
    const own = setIn(template, answer(dataset)).replace(unknown.title, '{title}').replace(unknown.address, '{address}')
    return [style, { answer: own, references: Object.fromEntries(records.map((record) => [record.id, setIn(template, plain(record))])) }]
  })
  // As text: a server that nobody asks for a page need not make anything of it.
  return `export const references: string = ${JSON.stringify(JSON.stringify(Object.fromEntries(styles)))}\n`
}
