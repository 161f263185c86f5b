import { allHeats, citeShort } from '@pottle/core'
import { type OvenTestRow, ovenTests } from '@pottle/core/tables'
import { Entry, Page } from '../frame/index.js'
import { ShortSources, sayGrade } from '../parts/sources.js'

const kinds: readonly (readonly [OvenTestRow['kind'], title: string, about: string])[] = [
  ['paper', 'By paper', 'How a sheet of white paper takes colour.'],
  ['flour', 'By flour', 'How a spoonful of flour takes colour.'],
  ['hand', 'By the hand', 'How long a hand was borne in it. Do not try this.'],
  ['sight', 'By the eye', 'By the bricks, by the door, and by what is in it.'],
]

const labels = new Map(allHeats().map(({ id, label }) => [id, label]))

/** `7 minutes`, where the book times it and the row does not say so in words. */
function timed({ seconds, observation }: OvenTestRow): string {
  if (seconds === undefined || /minute|second/.test(observation)) return ''
  return seconds < 120 ? `${seconds} seconds` : `${Number((seconds / 60).toFixed(1))} minutes`
}

function Row({ test }: { test: OvenTestRow }) {
  const { observation, meaning, heat, degF, year, source, grade, checked, note } = test
  return (
    <tr>
      <th scope="row">
        {observation}
        {timed(test) && <span class="small quiet meaning">{timed(test)}</span>}
      </th>
      <td data-head="Good for">{meaning}</td>
      <td data-head="A heat that is">
        <a href={`/heats/${heat}`}>{labels.get(heat) ?? heat}</a>
        {degF && <span class="small quiet meaning">{[...new Set(degF)].join(' to ')}&nbsp;°F</span>}
      </td>
      <td data-head="Who says so" class="small">
        {year}, <ShortSources texts={source.map(citeShort)} />
        <span class="quiet"> ({sayGrade(grade, checked)})</span>
        {note && <span class="meaning">{note}</span>}
      </td>
    </tr>
  )
}

/** Every test of an oven without a thermometer. */
export function OvenTests() {
  return (
    <Page title="How a cook tried an oven" at="/heats">
      <div class="opening">
        <h1>How a cook tried an oven</h1>
        <p>Without a thermometer: by paper, by flour, by the hand and by the eye.</p>
        <p class="small">An oven thermometer replaces these tests. Never try an oven with the bare hand or with burning paper.</p>
      </div>
      {kinds.map(([kind, title, about]) => (
        <Entry title={title} about={<p>{about}</p>}>
          <table class="ruled stack">
            <thead>
              <tr>
                <th scope="col">What is seen</th>
                <th scope="col">Good for</th>
                <th scope="col">A heat that is</th>
                <th scope="col">Who says so</th>
              </tr>
            </thead>
            <tbody>
              {ovenTests
                .filter((test) => test.kind === kind)
                .map((test) => (
                  <Row test={test} />
                ))}
            </tbody>
          </table>
        </Entry>
      ))}
    </Page>
  )
}
