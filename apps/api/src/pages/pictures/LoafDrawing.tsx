import { Entry } from '../frame/index.js'
import { addressOf } from '../parts/asked.js'
import { type Elsewhere, ForOwnPage } from '../parts/ForOwnPage.js'
import { figure } from '../parts/figures.js'
import { Plate } from '../parts/Plate.js'
import type { Drawn, LoafAsked } from './loafSeries.js'

/** More rows than this are no table to read: then every second, fifth or tenth year is given. */
const mostRows = 60

const stepFor = (rows: number): number => [1, 2, 5, 10, 20].find((step) => rows / step <= mostRows) ?? 50

/** The years as one date: `1690`, `1660/1710`. */
export const spanned = ({ from, to }: LoafAsked): string => (from === to ? from : `${from}/${to}`)

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

/** The picture and its figures. */
export function LoafDrawing({ drawn, shown }: { drawn: Drawn; shown: Elsewhere | undefined }) {
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
