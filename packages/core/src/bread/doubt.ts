import { factorOf } from '../bands/index.js'
import type { Step } from '../cite/index.js'
import { inYears, type LoafDoubtRow, loafDoubts } from '../tables/index.js'
import { show } from './show.js'

/** What makes one loaf uncertain. */
export interface Causes {
  readonly year: number
  /** Shillings a quarter. */
  readonly wheat: number
  readonly allowance: number
  /** Deviation of the price in logarithms; 0 where the caller gave it. */
  readonly wheatDeviation: number
  /** Deviation of the allowance in shillings; 0 where the caller gave it. */
  readonly allowanceDeviation: number
}

function bears(row: LoafDoubtRow, { year, wheat, wheatDeviation, allowanceDeviation }: Causes): boolean {
  // Who gives both the price and the allowance asks for the row of the table, not for what a baker made of it.
  if (row.id === 'enforcement' && wheatDeviation === 0 && allowanceDeviation === 0) return false
  return inYears(row.years, year) && (!row.wheat || (row.wheat[0] <= wheat && wheat <= row.wheat[1]))
}

const short = (deviation: number): string => String(Number(deviation.toPrecision(2)))

/** How uncertain a loaf is, and why. */
export interface Doubt {
  /** Standard deviation in logarithms. */
  readonly deviation: number
  readonly step: Step
}

/**
 * The doubt about K / (P + A), combined in logarithms: a share P / (P + A) of the doubt of the price, the allowance's own over (P + A),
 * and rounding, enforcement and misprints as they are. JCGM 100:2008, 5.1.2, with the sensitivity of ln(P + A) to each.
 */
export function doubtOf(causes: Causes): Doubt {
  const total = causes.wheat + causes.allowance
  const price = (causes.wheatDeviation * causes.wheat) / total
  const allowance = causes.allowanceDeviation / total
  const rows = loafDoubts.filter((row) => bears(row, causes))
  const deviation = Math.hypot(price, allowance, ...rows.map((row) => row.deviation))
  const parts = [`price ${short(price)}`, `allowance ${short(allowance)}`, ...rows.map((row) => `${row.id} ${short(row.deviation)}`)]
  return {
    deviation,
    step: {
      text: `How far the loaf may stray, as standard deviations in logarithms: ${parts.join(', ')}; ${rows.map(({ label }) => label).join('; ')}`,
      factor: `within a factor of ${show(factorOf(deviation))}, nine times in ten`,
      grade: 'judgement',
      checked: 'none',
      sources: rows.flatMap(({ source }) => source),
    },
  }
}
