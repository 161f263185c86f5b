import { type CatalogueMeasure, listMeasures, type MeasureKind } from '@pottle/core'
import { Entry, Page } from '../frame/index.js'
import { kindName, range } from './sizes.js'

const at = '/measures'

function KindTable({ kind, measures }: { kind: MeasureKind; measures: readonly CatalogueMeasure[] }) {
  return (
    <Entry title={kindName(kind)} id={kind} about={<p>{measures.length} in the tables</p>}>
      <table class="ruled">
        <thead>
          <tr>
            <th scope="col">Measure</th>
            <th scope="col" class="figure">
              Meanings
            </th>
            <th scope="col" class="figure">
              Comes to
            </th>
          </tr>
        </thead>
        <tbody>
          {measures.map((measure) => (
            <tr>
              <th scope="row">
                <a href={`${at}/${measure.id}`}>{measure.label}</a>
              </th>
              <td class="figure">{measure.senses.length}</td>
              <td class="figure">{range(measure)}</td>
            </tr>
          ))}
        </tbody>
      </table>
    </Entry>
  )
}

/** Every measure of the tables, by its kind. */
export function MeasureList() {
  const all = listMeasures()
  const kinds = [...new Set(all.map(({ kind }) => kind))]
  return (
    <Page title="All measures" at={at}>
      <div class="opening">
        <h1>All measures</h1>
        <p>Weights, capacities and counts, with every meaning that a date and a place gave them.</p>
        <ul class="jump">
          {kinds.map((kind) => (
            <li>
              <a href={`#${kind}`}>{kindName(kind)}</a>
            </li>
          ))}
        </ul>
      </div>
      {kinds.map((kind) => (
        <KindTable kind={kind} measures={all.filter((measure) => measure.kind === kind)} />
      ))}
      <Entry title="And besides">
        <p>
          Spoons and glasses, eggs and their parts, priced loaves, pennyworths, the bigness of a walnut, what will lie on a sixpence,
          thicknesses, and times told by prayers are read as phrases: <a href="/measure">type the words of the book</a>.
        </p>
      </Entry>
    </Page>
  )
}
