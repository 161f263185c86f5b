import { drawLoafSeries, type Fault, loafCoins, loafKinds, loafSeries, PottleError, settingOf } from '@pottle/core'
import { Hono } from 'hono'
import { Entry, Page, respondWithPage } from '../frame/index.js'
import { type Asked, addressOf, askedOf } from '../parts/asked.js'
import { Faults } from '../parts/faults.js'
import { ChoiceField, LineField, PlaceField, Press } from '../parts/fields.js'
import { figure } from '../parts/figures.js'
import { Plate } from '../parts/Plate.js'
import { placeLabel } from '../parts/places.js'

const at = '/loaves'
const fields = ['coin', 'kind', 'from', 'to', 'place']
/** The years of printed cookery books in which a penny loaf was still baked. */
const usual = { coin: 'penny', kind: 'white', from: '1550', to: '1836' }
/** More rows than this are no table to read: then every second, fifth or tenth year is given. */
const mostRows = 60

const coins = loafCoins.map(({ id, label }) => [id, label] as const)
const kinds = loafKinds.map(({ id, label }) => [id, label] as const)

const yearOf = (parameter: string, text: string): number => {
  if (/^\d{4}$/.test(text)) return Number(text)
  throw new PottleError('bad-option', [{ parameter, detail: `"${text.slice(0, 20)}" is not a year; give four digits, such as 1690` }])
}

interface Drawn {
  readonly svg: string
  readonly series: ReturnType<typeof loafSeries>
}

function draw(asked: Asked): Drawn {
  const { coin = usual.coin, kind = usual.kind, place = 'england' } = asked
  const [from, to] = [yearOf('from', asked.from ?? usual.from), yearOf('to', asked.to ?? usual.to)]
  const series = loafSeries({ coin, kind, from, to, place: settingOf(null, place).places })
  return { series, svg: drawLoafSeries(series, { coin, kind, place: placeLabel(place) }) }
}

/** A fault of one year is one of the span's first: the library speaks of `year` where the form has `from`. */
const toFields = (faults: readonly Fault[]): readonly Fault[] =>
  faults.map(({ parameter, detail }) => ({ parameter: parameter === 'year' ? 'from' : parameter, detail }))

function drawOrFault(asked: Asked): Drawn | PottleError {
  try {
    return draw(asked)
  } catch (error) {
    if (error instanceof PottleError) return new PottleError(error.code, toFields(error.faults))
    throw error
  }
}

function LoafForm({ asked, faults }: { asked: Asked; faults?: readonly Fault[] }) {
  const filled = { ...usual, ...asked }
  const own = { form: 'loaves', asked: filled, faults }
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

function YearTable({ series, asked }: { series: Drawn['series']; asked: Asked }) {
  const step = stepFor(series.length)
  const shown = series.filter(({ year }) => year % step === 0)
  const { coin = usual.coin, kind = usual.kind, place } = asked
  const words = `a ${coin} ${kind} loaf`
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
              <a href={addressOf('/measure', { phrase: words, year, place })}>{year}</a>
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

function Drawing({ drawn, asked }: { drawn: Drawn; asked: Asked }) {
  const { from, to } = { ...usual, ...asked }
  const { coin = usual.coin, kind = usual.kind, place } = asked
  return (
    <>
      <Entry
        title="Year by year"
        about={
          <p>The law fixed the price of a loaf and let its weight go with the price of wheat: in a dear year a penny bought less bread.</p>
        }
      >
        <section data-answer tabindex={-1} aria-label="The weight of the loaf year by year">
          <Plate svg={drawn.svg}>
            <a href={addressOf('/v1/loaves.svg', { coin, kind, year: `${from}/${to}`, place })}>The picture alone</a>, and{' '}
            <a href={addressOf('/v1/loaves', { coin, kind, year: `${from}/${to}`, place })}>its figures as JSON</a>.
          </Plate>
        </section>
      </Entry>
      <Entry title="In figures">
        <YearTable series={drawn.series} asked={asked} />
      </Entry>
    </>
  )
}

/** `GET /loaves?coin=penny&kind=white&from=1660&to=1710` */
export const loafPage: Hono = new Hono()
loafPage.get(at, (context) => {
  const asked = askedOf(context)
  const drawn = drawOrFault(asked)
  const failed = drawn instanceof PottleError
  return respondWithPage(
    context,
    <Page title="The loaf through the years" at={at}>
      <div class="opening">
        <h1>The loaf through the years</h1>
        <p>What a penny bought, computed from the price of wheat through the Assize of Bread.</p>
      </div>
      <Entry title="Which loaf">
        {failed && (
          <Faults error={drawn} asked={asked} path={at} form="loaves" fields={fields} lacking="" answers={() => false} heading="h2" />
        )}
        <LoafForm asked={asked} {...(failed ? { faults: drawn.faults } : {})} />
      </Entry>
      {!failed && <Drawing drawn={drawn} asked={asked} />}
    </Page>,
    failed ? (drawn.code === 'bad-option' ? 400 : 422) : 200,
  )
})
