import { drawLoafSeries, type Fault, loafSeries, PottleError, settingOf } from '@pottle/core'
import type { Asked } from '../parts/asked.js'
import { placeLabel } from '../parts/places.js'

/** The years of printed cookery books in which a penny loaf was still baked. */
export const usual = { coin: 'penny', kind: 'white', from: '1550', to: '1836', place: 'england' }
const yearOf = (parameter: string, text: string): number => {
  if (/^\d{4}$/.test(text)) return Number(text)
  throw new PottleError('bad-option', [{ parameter, detail: `"${text.slice(0, 20)}" is not a year; give four digits, such as 1690` }])
}

/** What is asked, with what is usual in place of what is not said. */
export interface LoafAsked {
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

/** The picture, its figures, and what they were drawn for. */
export interface Drawn {
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

/** What the form asks of the library, or why there is no picture. */
export function drawOrFault(given: Asked): Drawn | PottleError {
  try {
    return draw(given)
  } catch (error) {
    if (error instanceof PottleError) return new PottleError(error.code, toFields(error.faults))
    throw error
  }
}
