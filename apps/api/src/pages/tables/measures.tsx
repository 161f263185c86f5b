import { type CatalogueMeasure, type CatalogueSense, describeMeasure, listMeasures, type MeasureKind } from '@pottle/core'
import { Hono } from 'hono'
import { Entry, Page, respondWithPage } from '../frame/index.js'
import { addressOf } from '../parts/asked.js'
import { between, inScale, type Scale, scaleFor } from '../parts/figures.js'
import { MeasureForm } from '../parts/forms.js'
import { letterOf } from '../parts/letters.js'
import { NotFound } from '../parts/NotFound.js'
import { placeLabel } from '../parts/places.js'
import { ShortSources, sayGrade } from '../parts/sources.js'
import { YearsPicture } from '../parts/YearsPicture.js'
import { knownSources } from './sources.js'

const at = '/measures'

const kindNames: Readonly<Partial<Record<MeasureKind, string>>> = {
  weight: 'Weights',
  capacity: 'Measures of capacity',
  count: 'Counts',
  length: 'Lengths',
  time: 'Times',
}

const quantities = { g: 'mass', ml: 'volume', each: 'count', mm: 'length', s: 'time', degC: 'temperature', '1': 'ratio' } as const

/** A meaning's size in a unit that suits it. */
function sized({ unit, value }: CatalogueSense): string {
  const quantity = quantities[unit as keyof typeof quantities]
  return inScale(value, scaleFor(quantity, value))
}

/** The smallest and the largest meaning of one unit; each end in the unit that suits it. */
function rangeIn(unit: keyof typeof quantities, senses: readonly CatalogueSense[]): string {
  const values = senses.filter((sense) => sense.unit === unit).map(({ value }) => value)
  const [low, high] = [Math.min(...values), Math.max(...values)]
  const [from, to] = [low, high].map((end) => scaleFor(quantities[unit], end)) as [Scale, Scale]
  return from.name === to.name ? between({ low, high }, from) : `${inScale(low, from)} to ${inScale(high, to)}`
}

/** From the smallest to the largest meaning. Some measures were a weight of one thing and a volume of another. */
function range({ senses }: CatalogueMeasure): string {
  const units = [...new Set(senses.map(({ unit }) => unit as keyof typeof quantities))]
  return units.map((unit) => rangeIn(unit, senses)).join('; ')
}

function KindTable({ kind, measures }: { kind: MeasureKind; measures: readonly CatalogueMeasure[] }) {
  return (
    <Entry title={kindNames[kind] ?? kind} id={kind} about={<p>{measures.length} in the tables</p>}>
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

function List() {
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
              <a href={`#${kind}`}>{kindNames[kind] ?? kind}</a>
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

const yearsOf = ({ years }: CatalogueSense): string => (years ? `${years[0]} to ${years[1]}` : 'at all times')

function SenseRow({ sense, index }: { sense: CatalogueSense; index: number }) {
  const { id, label, place, things, grade, checked, sources } = sense
  return (
    <tr id={id}>
      <th scope="row">
        <span class="letter">{letterOf(index)}</span>
        <span>{label}</span>
        <code class="meaning quiet">{id}</code>
        {(place || things) && (
          <span class="small quiet meaning">
            {[place && placeLabel(place), things && `for ${things.join(', ').replaceAll('-', ' ')}`].filter(Boolean).join('; ')}
          </span>
        )}
      </th>
      <td class="figure" data-head="Comes to">
        {sized(sense)}
      </td>
      <td data-head="Years">{yearsOf(sense)}</td>
      <td data-head="Who says so" class="small">
        <span class="quiet">{sayGrade(grade, checked)}: </span>
        <ShortSources texts={[...new Set(sources)]} sources={knownSources} />
      </td>
    </tr>
  )
}

function Measure({ measure }: { measure: CatalogueMeasure }) {
  const { label, kind, names, senses } = measure
  const article = /^[aeiou]/.test(label) ? 'an' : 'a'
  const dated = senses.some(({ years }) => years !== null) && senses.length > 1
  return (
    <Page title={label} at={at}>
      <Entry
        lead
        title={label}
        about={
          <>
            <p>{(kindNames[kind] ?? kind).toLowerCase()}</p>
            {names.length > 0 && <p>Also written {names.join(', ')}, and in other old spellings.</p>}
          </>
        }
      >
        <MeasureForm form="measure" asked={{ phrase: `${article} ${label}` }} short />
        <p class="small">Put the thing behind it (“of cream”, “of flour”): many measures depended on it.</p>
      </Entry>
      <Entry title="What it meant" about={<p>{senses.length === 1 ? 'One meaning.' : `${senses.length} meanings, by date and place.`}</p>}>
        {dated && (
          <YearsPicture
            id="years"
            title={`When each meaning of ${label} held`}
            reigns={senses.map(({ label: name, years }, i) => ({
              letter: letterOf(i),
              label: name,
              from: years?.[0] ?? 1266,
              to: years?.[1] ?? 1914,
            }))}
          />
        )}
        <table class="ruled stack">
          <thead>
            <tr>
              <th scope="col">Meaning</th>
              <th scope="col" class="figure">
                Comes to
              </th>
              <th scope="col">Years</th>
              <th scope="col">Who says so</th>
            </tr>
          </thead>
          <tbody>
            {senses.map((sense, index) => (
              <SenseRow sense={sense} index={index} />
            ))}
          </tbody>
        </table>
        <p class="small">
          For programs: <a href={addressOf(`/v1${at}/${measure.id}`, {})}>the same as JSON</a>.
        </p>
      </Entry>
    </Page>
  )
}

/** `GET /measures`, `GET /measures/pottle` */
export const measurePages: Hono = new Hono()
measurePages.get(at, (context) => respondWithPage(context, <List />))
measurePages.get(`${at}/:id`, (context) => {
  const id = context.req.param('id')
  const measure = describeMeasure(id.toLowerCase())
  if (!measure) return respondWithPage(context, <NotFound what="measure" name={id} list="All measures" at={at} />, 404)
  if (measure.id !== id) return context.redirect(`${at}/${encodeURIComponent(measure.id)}`, 301)
  return respondWithPage(context, <Measure measure={measure} />)
})
