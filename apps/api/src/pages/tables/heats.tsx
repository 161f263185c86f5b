import { allHeats, drawHeatScale, heatById, type OvenHeat, PottleError } from '@pottle/core'
import { type Context, Hono } from 'hono'
import { sourceNotes } from '../../plain.js'
import { Entry, Page, respondWithPage } from '../frame/index.js'
import { Dials, dialsFor, HeatEvidence } from '../heat/index.js'
import { NotFound } from '../parts/NotFound.js'
import { Plate } from '../parts/Plate.js'
import { SourceList } from '../parts/sources.js'
import { OvenTests } from './OvenTests.js'
import { respondWithShelf } from './shelfPages.js'

const at = '/heats'

function List() {
  return (
    <Page title="All oven heats" at={at}>
      <div class="opening">
        <h1>All oven heats</h1>
        <p>Twelve steps from drying to scorching, each with the words that cooks had for it.</p>
      </div>
      <Entry title="The scale" about={<p>The hottest on top. The same figures are in the table below.</p>}>
        <Plate svg={drawHeatScale()} name="the scale of oven heats" />
      </Entry>
      <Entry title="Each heat">
        <table class="ruled stack">
          <thead>
            <tr>
              <th scope="col">Heat</th>
              <th scope="col" class="figure">
                About
              </th>
              <th scope="col">Other words for it</th>
            </tr>
          </thead>
          <tbody>
            {[...allHeats()].reverse().map((heat) => (
              <tr>
                <th scope="row">
                  <a href={`${at}/${heat.id}`}>{heat.label}</a>
                </th>
                <td class="figure">{dialsFor(heat.band, heat.modern)[0]!.set}</td>
                <td>{wordsFor(heat).join(', ')}</td>
              </tr>
            ))}
          </tbody>
        </table>
      </Entry>
      <Entry title="See also">
        <p>
          <a href={`${at}/tests`}>How a cook tried an oven</a>, <a href={`${at}/sugar`}>heights of sugar</a>,{' '}
          <a href={`${at}/liquids`}>heats of liquids</a>, and <a href="/oven">a brick oven as it cools</a>.
        </p>
      </Entry>
    </Page>
  )
}

/** The other words, each once, with the years that they are confined to. */
function wordsFor({ aliases, label }: OvenHeat): readonly string[] {
  const words = aliases
    .filter(({ words: one }) => one !== label)
    .map(({ words: one, years }) => (years ? `${one} (${years[0]} to ${years[1]})` : one))
  return [...new Set(words)]
}

function Heat({ heat }: { heat: OvenHeat }) {
  const cited = [...heat.claims, ...heat.goods, ...heat.tests].flatMap(({ sources }) => sources)
  return (
    <Page title={`${heat.label} oven`} at={at}>
      <Entry lead title={`${heat.label} oven`} about={<p>Step {heat.rank} of 0 to 11, for words without a year.</p>}>
        <p class="answer">about {dialsFor(heat.band, heat.modern)[0]!.set}</p>
        <Dials band={heat.band} modern={heat.modern} />
        <p>
          In other words: <span class="words">{wordsFor(heat).join(', ')}</span>.
        </p>
      </Entry>
      <HeatEvidence name={`a ${heat.label} oven`} band={heat.band} claims={heat.claims} tests={heat.tests} goods={heat.goods} />
      <Entry title="The method">
        <p class="small">{heat.method}</p>
      </Entry>
      <Entry title="Sources">
        <SourceList sources={sourceNotes(cited)} />
      </Entry>
    </Page>
  )
}

function heatNamed(id: string): OvenHeat | undefined {
  try {
    return heatById(id)
  } catch (error) {
    if (error instanceof PottleError) return undefined
    throw error
  }
}

function respondWithHeat(context: Context, id: string): Response {
  const heat = heatNamed(id.toLowerCase())
  if (!heat) return respondWithPage(context, <NotFound what="heat" name={id} list="All oven heats" at={at} />, 404)
  if (heat.id !== id) return context.redirect(`${at}/${encodeURIComponent(heat.id)}`, 301)
  return respondWithPage(context, <Heat heat={heat} />)
}

/** `GET /heats`, `GET /heats/tests`, `GET /heats/sugar`, `GET /heats/slow` */
export const heatPages: Hono = new Hono()
heatPages.get(at, (context) => respondWithPage(context, <List />))
heatPages.get(`${at}/:id`, (context) => {
  const id = context.req.param('id')
  if (id === 'tests') return respondWithPage(context, <OvenTests />)
  return respondWithShelf(context, `${at}/${id}`) ?? respondWithHeat(context, id)
})
