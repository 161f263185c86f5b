import { Entry, Page } from '../frame/index.js'
import type { Shelf } from './article.js'
import { measureShelves } from './shelves/index.js'

const at = '/measures'

/** The names of a shelf run on, as in the index of a book. */
function Names({ articles }: Shelf) {
  return (
    <ul class="run">
      {articles.map(({ address, label }) => (
        <li>
          <a href={address}>{label}</a>
        </li>
      ))}
    </ul>
  )
}

/** Every measure of the tables, by its kind. */
export function MeasureIndex() {
  return (
    <Page title="All measures" at={at}>
      <div class="opening">
        <h1>All measures</h1>
        <p>Everything that receipts measure by, with every meaning that a date, a place and a thing gave it.</p>
      </div>
      {measureShelves.map((shelf) => (
        <Entry title={<a href={shelf.address}>{shelf.title}</a>} about={<p>{shelf.about}</p>}>
          <Names {...shelf} />
        </Entry>
      ))}
      <Entry title="See also">
        <p>
          <a href="/goods">How heavy things are</a> in a measure, <a href="/heats">oven heats</a>,{' '}
          <a href="/heats/sugar">heights of sugar</a> and <a href="/heats/liquids">heats of liquids</a>.
        </p>
      </Entry>
    </Page>
  )
}
