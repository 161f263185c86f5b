import { citeBibtex, citeFull, citeShort, describeMeasure, findSource, heatById, type SourceRow, sources } from '@pottle/core'
import { Hono } from 'hono'
import { Entry, Page, respondWithPage } from '../frame/index.js'
import { Copyable } from '../parts/Copyable.js'
import { NotFound } from '../parts/NotFound.js'
import { sourceAddress } from '../parts/sources.js'
import { restingOn } from './resting.js'

const at = '/sources'

/** Every source with its full reference. */
export const knownSources: readonly { readonly id: string; readonly citation: string }[] = sources.map((source) => ({
  id: source.id,
  citation: citeFull(source),
}))

/** What a list goes by: the author's family name, else the title. */
const headOf = ({ author, editor, title }: SourceRow): string => {
  const [person] = author ?? editor ?? []
  return person?.family ?? person?.literal ?? title
}

/** How an entry begins in the list: the name that it goes by first. */
function listed(source: SourceRow): string {
  const [person] = source.author ?? source.editor ?? []
  if (!person?.family) return citeFull(source)
  return `${person.family}${person.given ? `, ${person.given}` : ''}. ${citeFull({ ...source, author: (source.author ?? source.editor ?? []).slice(1) })}`
}

function initialOf(source: SourceRow): string {
  const first = headOf(source)
    .normalize('NFD')
    .replace(/[^A-Za-z0-9]/g, '')
    .charAt(0)
    .toUpperCase()
  return /[A-Z]/.test(first) ? first : '0–9'
}

const inOrder = [...sources].sort((a, b) => headOf(a).localeCompare(headOf(b), 'en'))
const initials = [...new Set(inOrder.map(initialOf))].sort((a, b) => a.localeCompare(b, 'en'))

function List() {
  return (
    <Page title="All sources" at={at}>
      <div class="opening">
        <h1>All sources</h1>
        <p>{sources.length} statutes, measurements, handbooks and cookery books. Each says where its text was seen, or that it was not.</p>
        <ul class="jump">
          {initials.map((initial) => (
            <li>
              <a href={`#letter-${initial}`}>{initial}</a>
            </li>
          ))}
        </ul>
      </div>
      {initials.map((initial) => (
        <Entry title={initial} id={`letter-${initial}`}>
          <ul class="plain">
            {inOrder
              .filter((source) => initialOf(source) === initial)
              .map((source) => (
                <li>
                  <a href={sourceAddress(source.id)}>{listed(source)}</a>
                </li>
              ))}
          </ul>
        </Entry>
      ))}
    </Page>
  )
}

function Resting({ id }: { id: string }) {
  const { measures, heats } = restingOn(id)
  if (measures.size === 0 && heats.size === 0) return null
  return (
    <Entry title="What rests on it">
      {measures.size > 0 && (
        <p>
          Measures:{' '}
          {[...measures].map((one, i) => (
            <>
              {i > 0 && ', '}
              <a href={`/measures/${one}`}>{describeMeasure(one)?.label ?? one}</a>
            </>
          ))}
          .
        </p>
      )}
      {heats.size > 0 && (
        <p>
          Oven heats:{' '}
          {[...heats].map((one, i) => (
            <>
              {i > 0 && ', '}
              <a href={`/heats/${one}`}>{heatById(one).label}</a>
            </>
          ))}
          .
        </p>
      )}
    </Entry>
  )
}

function Source({ source }: { source: SourceRow }) {
  const { id, title, custom, note, URL: address } = source
  return (
    <Page title={title} at={at}>
      <Entry lead title={title} about={<p>{source.type.replaceAll('-', ' ')}</p>}>
        <p>{citeFull(source)}</p>
        <p>
          In footnotes: <span class="words">{custom.short}</span>.
        </p>
        <p>Its text: {custom.seen}.</p>
        {note && <p>{note}</p>}
        {address && (
          <p>
            <a href={address} rel="noreferrer">
              {address}
            </a>
          </p>
        )}
      </Entry>
      <Resting id={id} />
      <Entry title="To cite and keep">
        <Copyable title="As a reference" text={citeFull(source)} prose />
        <Copyable title="As a footnote" text={citeShort({ id })} prose />
        <Copyable title="As BibTeX" text={citeBibtex(source)} />
        <Copyable title="As CSL-JSON, for reference managers" text={JSON.stringify(source, null, 1)} />
        <p class="small">
          For programs: <a href={`/v1/sources/${encodeURIComponent(id)}`}>the same record</a>.
        </p>
      </Entry>
    </Page>
  )
}

/** `GET /sources`, `GET /sources/digby-1669` */
export const sourcePages: Hono = new Hono()
sourcePages.get(at, (context) => respondWithPage(context, <List />))
sourcePages.get(`${at}/:id`, (context) => {
  const id = context.req.param('id')
  const source = findSource(id)
  if (!source) return respondWithPage(context, <NotFound what="source" name={id} list="All sources" at={at} />, 404)
  return respondWithPage(context, <Source source={source} />)
})
