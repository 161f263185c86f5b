import { Hono } from 'hono'
import { Entry, Page, respondWithPage } from '../frame/index.js'
import { HeatForm, HeatTries, MeasureForm, MeasureTries } from '../parts/forms.js'

/** `GET /` */
export const homePage: Hono = new Hono()
homePage.get('/', (context) =>
  respondWithPage(
    context,
    <Page title="" at="/">
      <Entry lead title="Old kitchen measures in modern ones" about={<p>x</p>}>
        <p>x</p>
      </Entry>
      <Entry title="Turn a measure into a modern one">
        <MeasureForm form="measure" asked={{}} />
        <MeasureTries />
      </Entry>
      <Entry title="Look up an oven heat">
        <HeatForm form="heat" asked={{}} />
        <HeatTries />
      </Entry>
    </Page>,
  ),
)
