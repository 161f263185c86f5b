import { citeFull, findSource, type SourceRow, sources } from '@pottle/core'
import { Hono } from 'hono'
import { once } from '../../once.js'
import { Entry, Page, respondWithPage } from '../frame/index.js'
import { SourceCitations } from '../parts/citing.js'
import { NotFound } from '../parts/NotFound.js'
import { byLetters, isWork, referTo } from '../parts/references.js'
import { sourceAddress } from '../parts/sources.js'
import { restingOn } from './resting.js'

const at = '/sources'

interface Listed {
  readonly id: string
  readonly text: string
}

/** All sources by their letters, which takes a while. */
const listed = once((): readonly Listed[] =>
  sources
    .map((source) => ({ id: source.id, text: isWork(source) ? referTo(source, 'chicago') : citeFull(source) }))
    .sort((a, b) => byLetters(a.text, b.text)),
)

/** The letter that an entry stands under; figures come before the letters. */
function initialOf({ text }: Listed): string {
  const [first = ''] = /[A-Za-z0-9]/.exec(text.normalize('NFD')) ?? []
  return /[A-Za-z]/.test(first) ? first.toUpperCase() : '0–9'
}

function List() {
  const entries = listed()
  const initials = [...new Set(entries.map(initialOf))]
  return (
    <Page title="All sources" at={at}>
      <div class="opening">
        <h1>All sources</h1>
        <p>
          {sources.length} statutes, measurements, handbooks and cookery books. Each says where its text was seen, or that it was not.{' '}
          <a href="/unsure">What rests on memory or judgement</a> has a list of its own.
        </p>
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
            {entries
              .filter((entry) => initialOf(entry) === initial)
              .map(({ id, text }) => (
                <li>
                  <a href={sourceAddress(id)}>{text}</a>
                </li>
              ))}
          </ul>
        </Entry>
      ))}
    </Page>
  )
}

function Resting({ id }: { id: string }) {
  const lists = restingOn(id)
  if (lists.size === 0) return null
  return (
    <Entry title="What rests on it">
      {[...lists].map(([list, leanings]) => (
        <div>
          <h3>{list}</h3>
          <ul class="run">
            {leanings.map(({ address, label }) => (
              <li>
                <a href={address}>{label}</a>
              </li>
            ))}
          </ul>
        </div>
      ))}
    </Entry>
  )
}

function Source({ source }: { source: SourceRow }) {
  const { id, title, custom, note, URL: address } = source
  return (
    <Page title={title} at={at}>
      <Entry lead title={title} about={<p>{source.type.replaceAll('-', ' ')}</p>}>
        <p>{citeFull(source)}</p>
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
        <SourceCitations source={source} />
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
