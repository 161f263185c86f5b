import { type Citation, type SourceRow, shortSources } from '../tables/index.js'

type Person = NonNullable<SourceRow['author']>[number]

const nameOf = (person: Person): string => person.literal ?? [person.given, person.family].filter(Boolean).join(' ')
const inverted = ({ family, given }: Person): string => [family, given].filter(Boolean).join(', ')

/** The year of a source as it is printed; undefined where none is known. */
function yearOf(source: SourceRow): number | undefined {
  return source.issued?.['date-parts'][0]?.[0]
}

/**
 * A footnote as short as a reader can follow: the source's short form and the place in it; the id alone where the tables have no such source.
 *
 * @example citeShort({ id: 'digby-1669', at: 'p. 3' })   // 'Digby, Closet Opened (1669), p. 3'
 */
export function citeShort({ id, at }: Citation): string {
  const short = Object.hasOwn(shortSources, id) ? shortSources[id]! : id
  return at && !short.endsWith(at) ? `${short}, ${at}` : short
}

const ordinals: Readonly<Record<string, string>> = { one: 'st', two: 'nd', few: 'rd', other: 'th' }
const english = /* @__PURE__ */ new Intl.PluralRules('en', { type: 'ordinal' })

/** `3` and `3rd` are both written in the tables. */
function ordinal(edition: string): string {
  return /^\d+$/.test(edition) ? `${edition}${ordinals[english.select(Number(edition))]}` : edition
}

/**
 * The whole reference on one line: author, title, edition, publisher, year and pages. Acts are cited by their short form.
 *
 * @example citeFull(findSource('digby-1669')!).slice(0, 24)   // 'Kenelm Digby, The Closet'
 */
export function citeFull(source: SourceRow): string {
  if (source.type === 'legislation') return `${source.title}, ${source.custom.short}.`
  const people = (source.author ?? source.editor ?? []).map(nameOf).join(', ')
  const held = source['container-title'] ? `in ${source['container-title']}` : undefined
  const named = `${source.title} ${source['container-title'] ?? ''}`
  // Some titles end in their volume already.
  const volume = source.volume && !named.includes(`vol. ${source.volume}`) ? `vol. ${source.volume}` : undefined
  const edition = source.edition && `${ordinal(source.edition)} ed.`
  const imprint = [source['publisher-place'], source.publisher].filter(Boolean).join(': ')
  const parts = [people, source.title, held, volume, edition, source.number, imprint, yearOf(source), source.page]
  return `${parts.filter(Boolean).join(', ')}.`
}

const bibtexTypes: Readonly<Record<string, string>> = {
  book: 'book',
  chapter: 'incollection',
  'article-journal': 'article',
  'article-magazine': 'article',
  report: 'techreport',
}

/** Characters that BibTeX reads as commands. */
const escapeBibtex = (text: string): string => text.replace(/[&%$#_{}]/g, (mark) => `\\${mark}`)

/** A body is set in braces of its own, for BibTeX would look for a family name in it, and take it for two at an "and". */
const bibtexName = (person: Person): string => (person.literal ? `{${escapeBibtex(person.literal)}}` : escapeBibtex(inverted(person)))

/**
 * A source as a BibTeX entry.
 *
 * @example citeBibtex(findSource('digby-1669')!).startsWith('@book{digby-1669,')   // true
 */
export function citeBibtex(source: SourceRow): string {
  const people = (list: SourceRow['author']): string | undefined => list?.map(bibtexName).join(' and ')
  const text = (value: string | number | undefined): string => escapeBibtex(String(value ?? ''))
  const fields = {
    author: people(source.author),
    editor: people(source.editor),
    title: text(source.title),
    [source.type === 'chapter' ? 'booktitle' : 'journal']: text(source['container-title']),
    edition: text(source.edition),
    volume: text(source.volume),
    number: text(source.number),
    pages: text(source.page),
    [source.type === 'report' ? 'institution' : 'publisher']: text(source.publisher),
    address: text(source['publisher-place']),
    year: text(yearOf(source)),
    doi: text(source.DOI),
    url: text(source.URL),
    note: text(source.type === 'legislation' ? source.custom.short : source.note),
  }
  const lines = Object.entries(fields).flatMap(([name, value]) => (value ? [`  ${name} = {${value}}`] : []))
  return `@${bibtexTypes[source.type] ?? 'misc'}{${source.id},\n${lines.join(',\n')}\n}\n`
}
