import type { CatalogueMeasure, CatalogueSense } from '@pottle/core'
import { Entry, Page } from '../frame/index.js'
import { MeasureForm } from '../parts/forms.js'
import { letterOf } from '../parts/letters.js'
import { placeLabel } from '../parts/places.js'
import { ShortSources, sayGrade } from '../parts/sources.js'
import { YearsPicture } from '../parts/YearsPicture.js'
import { kindName, sized } from './sizes.js'
import { knownSources } from './sources.js'

const at = '/measures'

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

/** One measure: what it meant, when and where. */
export function MeasurePage({ measure }: { measure: CatalogueMeasure }) {
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
            <p>{kindName(kind).toLowerCase()}</p>
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
          For programs: <a href={`/v1${at}/${measure.id}`}>the same as JSON</a>.
        </p>
      </Entry>
    </Page>
  )
}
