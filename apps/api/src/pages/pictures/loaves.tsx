import { drawLoafSeries, type Fault, loafCoins, loafKinds, loafSeries, PottleError, settingOf } from '@pottle/core'
import { type Context, Hono } from 'hono'
import type { Child } from 'hono/jsx'
import { Entry, Page, respondWithPage } from '../frame/index.js'
import { type Asked, addressOf, askedOf } from '../parts/asked.js'
import { type Elsewhere, elsewhere, ForOwnPage } from '../parts/ForOwnPage.js'
import { Faults } from '../parts/faults.js'
import { ChoiceField, LineField, PlaceField, Press } from '../parts/fields.js'
import { figure } from '../parts/figures.js'
import { Plate } from '../parts/Plate.js'
import { placeLabel } from '../parts/places.js'

const at = '/loaves'
const fields = ['coin', 'kind', 'from', 'to', 'place']
/** The years of printed cookery books in which a penny loaf was still baked. */
const usual = { coin: 'penny', kind: 'white', from: '1550', to: '1836', place: 'england' }
/** More rows than this are no table to read: then every second, fifth or tenth year is given. */
const mostRows = 60

const coins = loafCoins.map(({ id, label }) => [id, label] as const)
const kinds = loafKinds.map(({ id, label }) => [id, label] as const)

const yearOf = (parameter: string, text: string): number => {
  if (/^\d{4}$/.test(text)) return Number(text)
  throw new PottleError('bad-option', [{ parameter, detail: `"${text.slice(0, 20)}" is not a year; give four digits, such as 1690` }])
}

/** What is asked, with what is usual in place of what is not said. */
interface LoafAsked {
  readonly coin: string
  readonly kind: string
  readonly from: string
  readonly to: string
  readonly place: string
}

/** A loaf of one date, as links from elsewhere ask for it by `year`, is a span of its years. */
function fill({ year, coin, kind, from, to, place }: Asked): LoafAsked {
  const span = year === undefined ? usual : settingOf(year)
  return {
    coin: coin ?? usual.coin,
    kind: kind ?? usual.kind,
    from: from ?? String(span.from),
    to: to ?? String(span.to),
    place: place ?? usual.place,
  }
}

interface Drawn {
  readonly asked: LoafAsked
  readonly svg: string
  readonly series: ReturnType<typeof loafSeries>
}

function draw(given: Asked): Drawn {
  const asked = fill(given)
  const { coin, kind, place } = asked
  const [from, to] = [yearOf('from', asked.from), yearOf('to', asked.to)]
  const series = loafSeries({ coin, kind, from, to, place: settingOf(null, place).places })
  return { asked, series, svg: drawLoafSeries(series, { coin, kind, place: placeLabel(place) }) }
}

/** A fault of one year is one of the span's first: the library speaks of `year` where the form has `from`. */
const toFields = (faults: readonly Fault[]): readonly Fault[] =>
  faults.map(({ parameter, detail }) => ({ parameter: parameter === 'year' ? 'from' : parameter, detail }))

function drawOrFault(given: Asked): Drawn | PottleError {
  try {
    return draw(given)
  } catch (error) {
    if (error instanceof PottleError) return new PottleError(error.code, toFields(error.faults))
    throw error
  }
}

function LoafForm({ asked, faults }: { asked: Asked; faults?: readonly Fault[] }) {
  const own = { form: 'loaves', asked: { ...usual, ...asked }, faults }
  return (
    <form action={at} data-ask>
      <div class="row">
        <ChoiceField {...own} name="coin" label="Loaf" choices={coins} />
        <ChoiceField {...own} name="kind" label="Bread" choices={kinds} />
        <LineField {...own} name="from" label="From" most={4} />
        <LineField {...own} name="to" label="To" most={4} />
        <PlaceField {...own} />
        <Press>Draw it</Press>
      </div>
    </form>
  )
}

const stepFor = (rows: number): number => [1, 2, 5, 10, 20].find((step) => rows / step <= mostRows) ?? 50

const spanned = ({ from, to }: LoafAsked): string => (from === to ? from : `${from}/${to}`)

const nameOf = ({ coin, kind }: LoafAsked): string => `${/^[aeiou]/.test(coin) ? 'an' : 'a'} ${coin} ${kind} loaf`

function YearTable({ series, asked }: Drawn) {
  const step = stepFor(series.length)
  const shown = series.filter(({ year }) => year % step === 0)
  return (
    <table class="ruled">
      <caption>
        {step === 1 ? 'Every year.' : `Every ${step === 2 ? 'second' : `${step}th`} year.`} In grams; between the ends nine times in ten. A
        year leads to every step of its reckoning.
      </caption>
      <thead>
        <tr>
          <th scope="col">Year</th>
          <th scope="col" class="figure">
            Best
          </th>
          <th scope="col" class="figure">
            Between
          </th>
        </tr>
      </thead>
      <tbody>
        {shown.map(({ year, low, best, high }) => (
          <tr>
            <th scope="row">
              <a href={addressOf('/measure', { phrase: nameOf(asked), year, place: asked.place })}>{year}</a>
            </th>
            <td class="figure">{figure(best)} g</td>
            <td class="figure">
              {figure(low)} to {figure(high)} g
            </td>
          </tr>
        ))}
      </tbody>
    </table>
  )
}

function Drawing({ drawn, shown }: { drawn: Drawn; shown: Elsewhere | undefined }) {
  const { asked, svg, series } = drawn
  const { coin, kind, place } = asked
  const question = { coin, kind, year: spanned(asked), place }
  return (
    <>
      <Entry
        title="Year by year"
        about={
          <p>The law fixed the price of a loaf and let its weight go with the price of wheat: in a dear year a penny bought less bread.</p>
        }
      >
        <section data-answer tabindex={-1} aria-label="The weight of the loaf year by year">
          {series.length === 1 && <p class="answer">about {figure(series[0]!.best)} g</p>}
          <Plate svg={svg} name="the weight of the loaf">
            <a href={addressOf('/v1/loaves.svg', question)}>The picture alone</a>, and{' '}
            <a href={addressOf('/v1/loaves', question)}>its figures as JSON</a>.
          </Plate>
        </section>
      </Entry>
      <Entry title="In figures">
        <YearTable {...drawn} />
      </Entry>
      {shown && (
        <Entry title="To keep" screen>
          <ForOwnPage {...shown} />
        </Entry>
      )}
    </>
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
      <Drawing drawn={drawn} shown={shown} />
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
