import { type Fault, loafCoins, loafKinds, PottleError } from '@pottle/core'
import { type Context, Hono } from 'hono'
import type { Child } from 'hono/jsx'
import { Entry, Page, respondWithPage } from '../frame/index.js'
import { type Asked, askedOf } from '../parts/asked.js'
import { type Elsewhere, elsewhere } from '../parts/ForOwnPage.js'
import { Faults } from '../parts/faults.js'
import { ChoiceField, LineField, PlaceField, Press } from '../parts/fields.js'
import { LoafDrawing, spanned } from './LoafDrawing.js'
import { type Drawn, drawOrFault, usual } from './loafSeries.js'

const at = '/loaves'
const fields = ['coin', 'kind', 'from', 'to', 'place']

const coins = loafCoins.map(({ id, label }) => [id, label] as const)
const kinds = loafKinds.map(({ id, label }) => [id, label] as const)

function LoafForm({ asked, faults }: { asked: Asked; faults?: readonly Fault[] }) {
  const own = { form: 'loaves', asked: { ...usual, ...asked }, faults }
  return (
    <form action={at} data-ask>
      <div class="row loaf-of">
        <ChoiceField {...own} name="coin" label="Loaf" choices={coins} />
        <ChoiceField {...own} name="kind" label="Bread" choices={kinds} />
        <LineField {...own} name="from" label="From" most={20} />
        <LineField {...own} name="to" label="To" most={20} />
        <PlaceField {...own} />
        <Press>Draw it</Press>
      </div>
    </form>
  )
}

function respondWithDrawing(context: Context, drawn: Drawn): Response {
  const { asked } = drawn
  const shown = elsewhere(context, 'loaf', { coin: asked.coin, kind: asked.kind, year: spanned(asked), place: asked.place })
  return respondWithPage(
    context,
    <LoafPage shown={shown}>
      <Entry title="Which loaf" screen>
        <LoafForm asked={{ ...asked }} />
      </Entry>
      <LoafDrawing drawn={drawn} shown={shown} />
    </LoafPage>,
  )
}

function LoafPage({ shown, children }: { shown?: Elsewhere | undefined; children: Child }) {
  return (
    <Page title="The loaf through the years" at={at} shown={shown}>
      <div class="opening">
        <h1>The loaf through the years</h1>
        <p>What a penny bought, computed from the price of wheat through the Assize of Bread.</p>
      </div>
      {children}
    </Page>
  )
}

/** `GET /loaves?coin=penny&kind=white&from=1660&to=1710` */
export const loafPage: Hono = new Hono()
loafPage.get(at, (context) => {
  const asked = askedOf(context)
  const drawn = drawOrFault(asked)
  if (!(drawn instanceof PottleError)) return respondWithDrawing(context, drawn)
  return respondWithPage(
    context,
    <LoafPage>
      <Entry title="Which loaf" screen>
        <Faults error={drawn} asked={asked} path={at} form="loaves" fields={fields} lacking="" answers={() => false} heading="h2" />
        <LoafForm asked={asked} faults={drawn.faults} />
      </Entry>
    </LoafPage>,
    drawn.code === 'bad-option' ? 400 : 422,
  )
})
