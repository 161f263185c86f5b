import { type Fault, PottleError } from '@pottle/core'
import { Hono } from 'hono'
import { Entry, Page, respondWithPage } from '../frame/index.js'
import { absolute, addressOf, askedOf, wasSent } from '../parts/asked.js'
import { elsewhere } from '../parts/ForOwnPage.js'
import { Faults } from '../parts/faults.js'
import { HeatForm, HeatTries } from '../parts/forms.js'
import { HeatPage } from './HeatPage.js'
import { askHeat } from './read.js'

export { Dials, HeatEvidence } from './HeatParts.js'
export { dialsFor } from './read.js'

const at = '/heat'
const fields = ['phrase', 'year', 'place']
const lacking = 'Every word was understood, but none of them names a heat: say how hot, as in “a quick oven”.'

/** What to say at the field: which words were at fault stands above it. */
function faultsOf({ code, faults }: PottleError): readonly Fault[] {
  return code === 'unreadable' ? [{ parameter: 'phrase', detail: 'no heat was found in these words' }] : faults
}

/** `GET /heat?phrase=a+slack+oven&year=1690` */
export const heatPage: Hono = new Hono()
heatPage.get(at, (context) => {
  const asked = askedOf(context)
  if (!wasSent(context, 'phrase')) {
    return respondWithPage(
      context,
      <Page title="Look up an oven heat" at={at}>
        <Entry
          lead
          title="Look up an oven heat"
          about={
            <p>
              Or <a href="/heats">read the whole scale</a>, and <a href="/oven">see a brick oven cool</a>.
            </p>
          }
        >
          <HeatForm form="heat" asked={asked} />
          <HeatTries />
        </Entry>
      </Page>,
    )
  }
  const answer = askHeat(asked)
  if (answer instanceof PottleError) {
    return respondWithPage(
      context,
      <Page title="Not answered" at={at}>
        <Entry title="Ask again">
          <Faults
            error={answer}
            asked={asked}
            path={at}
            form="heat"
            fields={fields}
            lacking={lacking}
            answers={(one) => !(askHeat(one) instanceof PottleError)}
          />
          <HeatForm form="heat" asked={asked} faults={faultsOf(answer)} />
          <HeatTries />
        </Entry>
      </Page>,
      answer.code === 'bad-option' ? 400 : 422,
    )
  }
  const shown = elsewhere(context, 'heat', asked)
  return respondWithPage(
    context,
    <Page title={`${answer.reading.phrase}: ${answer.reading.heat.label} oven`} at={at} shown={shown}>
      <HeatPage answer={answer} asked={asked} address={absolute(context, addressOf(at, asked))} shown={shown} />
    </Page>,
  )
})
