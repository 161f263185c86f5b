import { allHeats, listUnsure, sources } from '@pottle/core'
import { ovenTests } from '@pottle/core/tables'
import { Hono } from 'hono'
import { Entry, Page, respondWithPage } from '../frame/index.js'
import type { Shelf } from './article.js'
import { measureShelves, shelves } from './shelves/index.js'

const at = '/tables'

interface Line {
  readonly address: string
  readonly title: string
  readonly rows: number
}

const lineOf = ({ address, title, articles }: Shelf): Line => ({ address, title, rows: articles.length })
const under = (address: string): readonly Line[] => shelves.filter((shelf) => shelf.address.startsWith(address)).map(lineOf)

type Chapter = readonly [title: string, about: string, lines: readonly Line[]]

/** The tables as the contents of a book: each with as many entries as it has. */
const chapters = (): readonly Chapter[] => [
  ['Measures', 'What receipts measure by.', measureShelves.map(lineOf)],
  [
    'Heats',
    'Of ovens, of sugar and of liquids.',
    [
      { address: '/heats', title: 'Oven heats', rows: allHeats().length },
      { address: '/heats/tests', title: 'How a cook tried an oven', rows: ovenTests.length },
      ...under('/heats/'),
    ],
  ],
  ['Things', 'What is measured.', under('/goods')],
  [
    'Sources',
    'Who says so, and where nobody does.',
    [
      { address: '/sources', title: 'All sources', rows: sources.length },
      { address: '/unsure', title: 'What is unsure', rows: listUnsure().length },
    ],
  ],
]

function Lines({ lines }: { lines: readonly Line[] }) {
  return (
    <ul class="contents">
      {lines.map(({ address, title, rows }) => (
        <li>
          <a href={address}>{title}</a> <span>{rows}</span>
        </li>
      ))}
    </ul>
  )
}

/** `GET /tables`: where everything that the answers are made from can be read. */
export const contentsPage: Hono = new Hono()
contentsPage.get(at, (context) =>
  respondWithPage(
    context,
    <Page title="The tables" at={at}>
      <div class="opening">
        <h1>The tables</h1>
        <p>Everything that the answers are made from, with who says so. They are in the public domain.</p>
      </div>
      {chapters().map(([title, about, lines]) => (
        <Entry title={title} about={<p>{about}</p>}>
          <Lines lines={lines} />
        </Entry>
      ))}
    </Page>,
  ),
)
