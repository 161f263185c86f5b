import type { Fault, PottleError } from '@pottle/core'
import { Hono } from 'hono'
import { Entry, Page, respondWithPage } from '../frame/index.js'
import { type Asked, absolute, addressOf, askedOf, wasSent } from '../parts/asked.js'
import { elsewhere } from '../parts/ForOwnPage.js'
import { Faults } from '../parts/faults.js'
import { MeasureForm, MeasureTries } from '../parts/forms.js'
import { answered } from './answered.js'
import { MeasureAnswer } from './MeasureAnswer.js'
import { holdsMore, WholeReceipt } from './WholeReceipt.js'

export { answered } from './answered.js'

const at = '/measure'
const fields = ['phrase', 'year', 'place']
const lacking = 'Every word was understood, but no measure is among them: say how much, as in “a pint of cream”.'

/** What to say at the field: which words were at fault stands above it. */
function faultsOf({ code, faults }: PottleError): readonly Fault[] {
  return code === 'unreadable' ? [{ parameter: 'phrase', detail: 'no measure was found in these words' }] : faults
}

function Empty({ asked }: { asked: Asked }) {
  return (
    <Page title="Turn a measure into a modern one" at={at}>
      <Entry
        lead
        title="Turn a measure into a modern one"
        about={<p>A weight, a volume, a count of eggs, a priced loaf, a bigness or a heat.</p>}
      >
        <MeasureForm form="measure" asked={asked} />
        <MeasureTries />
      </Entry>
    </Page>
  )
}

/** `GET /measure?phrase=a+pottle+of+cream&year=1690&place=london` */
export const measurePage: Hono = new Hono()
measurePage.get(at, (context) => {
  const asked = askedOf(context)
  if (!wasSent(context, 'phrase')) return respondWithPage(context, <Empty asked={asked} />)
  const result = answered(asked)
  if ('error' in result) {
    const { error } = result
    return respondWithPage(
      context,
      <Page title="Not answered" at={at}>
        <Entry title="Ask again">
          <Faults
            error={error}
            asked={asked}
            path={at}
            form="measure"
            fields={fields}
            lacking={lacking}
            answers={(one) => 'answer' in answered(one)}
          />
          {asked.phrase && holdsMore(asked.phrase) && <WholeReceipt asked={asked} />}
          <MeasureForm form="measure" asked={asked} faults={faultsOf(error)} />
          <MeasureTries />
        </Entry>
      </Page>,
      error.code === 'bad-option' ? 400 : 422,
    )
  }
  const { answer } = result
  const shown = elsewhere(context, 'measure', asked)
  return respondWithPage(
    context,
    <Page title={`${answer.phrase}: ${answer.text}`} at={at} shown={shown}>
      <MeasureAnswer answer={answer} asked={asked} address={absolute(context, addressOf(at, asked))} shown={shown} />
    </Page>,
  )
})
