import { PottleError, type Sheet } from '@pottle/core'
import { type Context, Hono } from 'hono'
import { ProblemError, problem } from '../../http/problem.js'
import { respond } from '../../http/respond.js'
import { Entry, Page, respondWithPage } from '../frame/index.js'
import { type Asked, absolute, addressOf, askedIn, askedOf, wasSent } from '../parts/asked.js'
import { Faults } from '../parts/faults.js'
import { fileOf } from './files.js'
import { askSheet } from './plan.js'
import { SheetForm } from './SheetForm.js'
import { SheetPage } from './SheetPage.js'
import { SheetTries } from './SheetTries.js'

export { SheetForm } from './SheetForm.js'
export { SheetTries } from './SheetTries.js'

const at = '/sheet'
const fields = ['text', 'title', 'year', 'place', 'scale', 'guests', 'dish', 'count', 'units', 'oven']
/** Servers and browsers take addresses of this many characters without complaint; Node's own limit is 16 kB for all headers. */
const longestAddress = 6000

function respondWithFaults(context: Context, error: PottleError, asked: Asked): Response {
  return respondWithPage(
    context,
    <Page title="Not answered" at={at}>
      <Entry title="Ask again">
        <Faults error={error} asked={asked} path={at} form="sheet" fields={fields} lacking="" answers={() => false} />
        <SheetForm form="sheet" asked={asked} faults={error.faults} />
      </Entry>
    </Page>,
    error.code === 'bad-option' ? 400 : 422,
  )
}

function respondWithSheet(context: Context, sheet: Sheet, asked: Asked): Response {
  const address = addressOf(at, asked)
  return respondWithPage(
    context,
    <Page title={sheet.title} at={at}>
      <SheetPage sheet={sheet} asked={asked} address={address.length <= longestAddress ? absolute(context, address) : null} />
    </Page>,
  )
}

function respondWithFile(context: Context, sheet: Sheet, as: string): Response {
  const file = fileOf(sheet, as)
  if (!file) throw new ProblemError(problem('not-found', `no sheet is kept as "${as.slice(0, 40)}"`))
  const shown = as === 'html' ? 'inline' : 'attachment'
  return respond(context, file.text, 200, {
    'content-type': file.type,
    'content-disposition': `${shown}; filename="${file.name}"`,
    'content-security-policy': "default-src 'none'; style-src 'unsafe-inline'; sandbox",
  })
}

function answer(context: Context, asked: Asked, as?: string): Response {
  const sheet = askSheet(asked)
  if (sheet instanceof PottleError) return respondWithFaults(context, sheet, asked)
  return as === undefined ? respondWithSheet(context, sheet, asked) : respondWithFile(context, sheet, as)
}

/** `GET /sheet?text=Take+a+pint+of+cream…&year=1690`, `POST /sheet` with the same fields as a form */
export const sheetPage: Hono = new Hono()

sheetPage.get(at, (context) => {
  const { as, ...asked } = askedOf(context)
  if (wasSent(context, 'text')) return answer(context, asked, as)
  return respondWithPage(
    context,
    <Page title="Make a working sheet from a receipt" at={at}>
      <Entry
        lead
        title="Make a working sheet from a whole receipt"
        about={<p>What to measure off, how sure each figure is, the oven, the order of work, and who says so.</p>}
      >
        <SheetForm form="sheet" asked={asked} />
        <SheetTries />
      </Entry>
    </Page>,
  )
})

/** A receipt that fits an address is sent on to its own, so that the sheet can be loaded again, kept and passed on. */
sheetPage.post(at, async (context) => {
  const asked = askedIn(Object.entries(await context.req.parseBody()))
  // An empty receipt is sent on as one, so that it is told so and not only shown the form.
  const address = addressOf(at, { ...asked, text: asked.text ?? ' ' })
  return address.length <= longestAddress ? context.redirect(address, 303) : answer(context, asked)
})
