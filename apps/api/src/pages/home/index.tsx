import { Hono } from 'hono'
import { Entry, Page, respondWithPage } from '../frame/index.js'
import { HeatForm, HeatTries, MeasureForm, MeasureTries } from '../parts/forms.js'
import { SheetForm, SheetTries } from '../sheet/index.js'
import { Shelf } from './Shelf.js'

function Reading() {
  return (
    <Entry title="How to read an answer">
      <div class="two">
        <p>
          <strong>A measure has meanings, not a factor.</strong> A pint of 1690 was a pint of wine or a pint of ale, and a fifth larger for
          ale. Each meaning is given with how likely it was then and there; press one to insist on it.
        </p>
        <p>
          <strong>A figure has two ends.</strong> Nine times in ten the true amount lies between them. Where the ends lie far apart, the
          book itself left it to the cook.
        </p>
        <p>
          <strong>Every step names its source.</strong> A statute, a measurement, a handbook of the time; or our own judgement, and then it
          says so. What was recalled and not looked up says that too.
        </p>
        <p>
          <strong>The tables are open.</strong> Every measure, heat, thing and source can be read in <a href="/tables">the tables</a>; see
          also <a href="/loaves">the penny loaf year by year</a>, and <a href="/oven">a brick oven</a> as it cools.
        </p>
      </div>
    </Entry>
  )
}

/** `GET /` */
export const homePage: Hono = new Hono()
homePage.get('/', (context) =>
  respondWithPage(
    context,
    <Page title="" at="/">
      <div class="opening first">
        <div>
          <h1>Old English kitchen measures in modern ones</h1>
          <p>How much it is, how sure that is, and who says so.</p>
        </div>
        <Shelf />
      </div>
      <Entry title="Turn a measure into a modern one" about={<p>A pottle, a peck, a penny loaf, a dozen eggs, the bigness of a walnut.</p>}>
        <MeasureForm form="measure" asked={{}} />
        <MeasureTries />
      </Entry>
      <Entry title="Look up an oven heat" about={<p>What a quick or a slack oven is on a modern dial.</p>}>
        <HeatForm form="heat" asked={{}} />
        <HeatTries />
      </Entry>
      <Entry
        title="Make a working sheet from a whole receipt"
        about={<p>Scaled to your guests or your dish, with its oven, its order of work and its sources.</p>}
      >
        <SheetForm form="sheet" asked={{}} />
        <SheetTries />
      </Entry>
      <Reading />
    </Page>,
  ),
)
