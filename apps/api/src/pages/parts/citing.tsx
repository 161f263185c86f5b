import { type AnswerSource, citeBibtex, dataset, findSource, type SourceRow } from '@pottle/core'
import { Copyable } from './Copyable.js'
import { isWork, listOf, referTo, referToAnswer, type Style, styles } from './references.js'

/** What is to be cited: what it says, where it can be seen again, and what it rests on. */
export interface Cited {
  /** `“a pottle of cream”, London, 1690`. */
  readonly question: string
  /** `about 1.9 litres; nine times in ten between …`. */
  readonly answer: string
  readonly address: string
  /** An id for reference managers: letters, digits and hyphens. */
  readonly slug: string
  readonly sources: readonly AnswerSource[]
}

const rowsOf = (sources: readonly AnswerSource[]): SourceRow[] => sources.filter(isWork).map(({ id }) => findSource(id)!)

/** More works than this make a list, not a footnote. */
const mostInFootnote = 8

/** What an answer rests on, as a footnote ends. */
function restsOn(works: readonly SourceRow[]): string {
  if (works.length === 0) return ''
  if (works.length > mostInFootnote) return `; after the ${works.length} works that it names`
  return `; after ${works.map(({ custom }) => custom.short).join('; ')}`
}

const footnote = ({ question, answer, address, sources }: Cited): string =>
  `${question}: ${answer}. Pottle, tables ${dataset}, ${address}${restsOn(rowsOf(sources))}.`

function bibliography({ question, answer, address, sources }: Cited, style: Style): string {
  const own = referToAnswer(`${question}: ${answer.split(';')[0]}`, address, style)
  return listOf(
    own,
    rowsOf(sources).map((row) => referTo(row, style)),
    style,
  )
}

/** The answer itself as a record: an entry in a work of reference. */
const recordOf = ({ question, address, slug }: Cited) => ({
  id: `pottle-${slug}`,
  type: 'entry-encyclopedia',
  title: question,
  'container-title': `Pottle, tables ${dataset}`,
  issued: { 'date-parts': [[Number.parseInt(dataset, 10)]] },
  URL: address,
})

function bibtex(cited: Cited): string {
  const own: SourceRow = { ...recordOf(cited), type: 'chapter', custom: { short: '', seen: '' } }
  return [own, ...rowsOf(cited.sources)].map(citeBibtex).join('\n')
}

const cslJson = (cited: Cited): string => JSON.stringify([recordOf(cited), ...rowsOf(cited.sources)], null, 1)

/** Citations to copy, in the forms that footnotes, lists and reference managers take. */
export function Citations(cited: Cited) {
  return (
    <>
      <Copyable title="As a footnote" text={footnote(cited)} prose />
      <div class="kept">
        {styles.map(([style, name]) => (
          <Kept summary={`References: ${name}`} title={name} text={bibliography(cited, style)} prose />
        ))}
        <Kept summary="BibTeX" title="BibTeX" text={bibtex(cited)} />
        <Kept summary="CSL-JSON, for reference managers" title="CSL-JSON" text={cslJson(cited)} />
      </div>
    </>
  )
}

/** Something to copy that is shut until it is wanted. */
function Kept({ summary, ...text }: { summary: string; title: string; text: string; prose?: boolean }) {
  return (
    <details name="citation">
      <summary>{summary}</summary>
      <Copyable {...text} />
    </details>
  )
}

/** A source to copy in each style, and as a record. */
export function SourceCitations({ source }: { source: SourceRow }) {
  return (
    <>
      <Copyable title="In footnotes" text={source.custom.short} prose />
      {isWork(source) && styles.map(([style, name]) => <Copyable title={name} text={referTo(source, style)} prose />)}
      <Copyable title="BibTeX" text={citeBibtex(source)} />
      <Copyable title="CSL-JSON, for reference managers" text={JSON.stringify(source, null, 1)} />
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
