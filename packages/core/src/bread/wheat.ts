import type { Step } from '../cite/index.js'
import { noAnswer } from '../error.js'
import { once } from '../once.js'
import { exactRatio, inYears, type WheatPriceRow, type WheatSeriesRow, wheatPrices, wheatSeries } from '../tables/index.js'
import { show } from './show.js'

/** The assize begins with the statute of 51 Hen. III (1266); bread tables here end with the century that ended the assize. */
export const firstLoafYear = 1266
export const lastLoafYear = 1900

/** The wheat price of one calendar year, and how it was come by. */
export interface Wheat {
  readonly year: number
  /** Shillings for a Winchester quarter of middle wheat. */
  readonly shillings: number
  /** The label of the series of origin; the caller's own price has none. */
  readonly series: string
  /** Standard deviation in logarithms of a week's market around the figure. */
  readonly deviation: number
  readonly steps: readonly Step[]
}

interface Stated {
  readonly shillings: number
  readonly row: WheatPriceRow
}

const stated = once(
  () =>
    new Map<string, Stated>(
      wheatPrices.flatMap((row) => row.shillings.map((shillings, i) => [`${row.series} ${row.years[0] + i}`, { shillings, row }])),
    ),
)

/** The price by the calendar: as stated, or out of the two harvests that a calendar year eats. */
function priceInCalendar(series: WheatSeriesRow, year: number): { shillings: number; rows: readonly WheatPriceRow[] } {
  const own = stated().get(`${series.prices} ${year}`)!
  if (!series.harvest) return { shillings: own.shillings, rows: [own.row] }
  const before = stated().get(`${series.prices} ${year - 1}`)!
  const share = exactRatio(series.harvest).toNumber()
  const rows = own.row === before.row ? [own.row] : [before.row, own.row]
  return { shillings: share * before.shillings + (1 - share) * own.shillings, rows }
}

function stepsFor(series: WheatSeriesRow, year: number, price: number, rows: readonly WheatPriceRow[]): Step[] {
  const harvests = series.harvest ? `, ${series.harvest} of it from the harvest of ${year - 1} and the rest from that of ${year}` : ''
  const { grade, checked, source } = rows[0]!
  const remark = rows.flatMap((row) => row.note ?? []).join(' ')
  const steps: Step[] = [
    {
      text: `Wheat in ${year}: ${series.label}${harvests}. ${remark}`.trim(),
      factor: `${show(price)} s a quarter`,
      grade,
      checked,
      sources: source,
    },
  ]
  if (series.ratio !== '1') {
    const middle = show(price * exactRatio(series.ratio).toNumber())
    const factor = `${series.ratio} = ${middle} s`
    steps.push({ text: series.note ?? series.label, factor, grade: series.grade, checked: series.checked, sources: series.source })
  }
  return steps
}

const remembered = new Map<number, Wheat>()

/**
 * What middle wheat cost in England in a calendar year, in shillings of the money of the time for a Winchester quarter of eight bushels.
 *
 * Prices by the harvest year are turned into calendar years, and best wheat, large quarters and imperial quarters into middle wheat by
 * the Winchester quarter, each as its series row says (Rogers 1866-87; Smith 1776, Book I, ch. XI; Curtler 1909, Appendix III).
 *
 * @throws PottleError `no-answer` before 1266 and after 1900
 * @example wheatIn(1680).steps.map(({ factor }) => factor)   // ['45 s a quarter', '64/81 = 35.56 s']
 */
export function wheatIn(year: number): Wheat {
  const known = remembered.get(year)
  if (known) return known
  const wheat = reckonWheat(year)
  remembered.set(year, wheat)
  return wheat
}

function reckonWheat(year: number): Wheat {
  const series = wheatSeries.find(({ years }) => inYears(years, year))
  if (!series || year < firstLoafYear)
    throw noAnswer('year', `no wheat price is known for ${year}; the tables run from ${firstLoafYear} to ${lastLoafYear}`)
  const { shillings, rows } = priceInCalendar(series, year)
  return {
    year,
    shillings: shillings * exactRatio(series.ratio).toNumber(),
    series: series.label,
    deviation: series.deviation,
    steps: stepsFor(series, year, shillings, rows),
  }
}
