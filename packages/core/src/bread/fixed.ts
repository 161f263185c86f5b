import { triangle, unknown } from '../bands/index.js'
import type { Step } from '../cite/index.js'
import { noAnswer } from '../error.js'
import { exactRatio, exactValue, type FixedLoafRow, fixedLoaves, holds, loafDoubts } from '../tables/index.js'
import type { Baked } from './baked.js'

const enforcement = loafDoubts.find(({ id }) => id === 'enforcement')!

/** Every weight that a loaf of fixed weight may have had in a year and place, the likeliest first, with shares that add up to 1. */
export function fixedIn(loaf: string, year: number, places: readonly string[]): readonly { row: FixedLoafRow; share: number }[] {
  const holding = fixedLoaves.filter((row) => row.loaf === loaf && holds(row, year, places))
  const total = holding.reduce((sum, { likelihood = 1 }) => sum + likelihood, 0)
  return holding.map((row) => ({ row, share: (row.likelihood ?? 1) / total })).sort((a, b) => b.share - a.share)
}

/** The years in which a loaf of fixed weight was baked at all. */
function spanOf(loaf: string): string {
  const years = fixedLoaves.filter((row) => row.loaf === loaf).flatMap((row) => row.years ?? [])
  return `${Math.min(...years)} to ${Math.max(...years)}`
}

/**
 * The weights of a loaf of fixed weight.
 *
 * @throws PottleError `no-answer` in a year without such a loaf
 */
export function requireFixed(loaf: string, year: number, places: readonly string[]): readonly { row: FixedLoafRow; share: number }[] {
  const rows = fixedIn(loaf, year, places)
  if (rows.length === 0) throw noAnswer('coin', `there was no ${loaf} loaf of fixed weight in ${year}; ask for ${spanOf(loaf)}`)
  return rows
}

function stepsOf(row: FixedLoafRow, pence: string, grams: string): Step[] {
  const doubtful = row.ends ? ` (${row.ends[0]} to ${row.ends[1]})` : ''
  const { grade, checked, source } = row
  const steps: Step[] = [
    {
      text: `${row.label}, in avoirdupois ounces of 437.5 grains. ${row.note ?? ''}`.trim(),
      factor: `${row.ounces} oz${doubtful}${pence === '1' ? '' : ` x ${pence}`} = ${grams} g`,
      grade,
      checked,
      sources: source,
    },
  ]
  if (!row.ends) {
    const factor = `standard deviation ${enforcement.deviation}`
    steps.push({ text: enforcement.label, factor, grade: enforcement.grade, checked: enforcement.checked, sources: enforcement.source })
  }
  return steps
}

/** A loaf whose weight does not move with the price of wheat: a quartern loaf weighed 4 lb 5 1/2 oz (3 Geo. III c. 11), whatever it cost. */
export function bakeFixed(row: FixedLoafRow, kind: string, pence = '1', label: string = row.label): Baked {
  const grams = exactRatio(row.ounces).times('437.5').times(exactValue('1 gr').value).times(exactRatio(pence))
  const [low, high] = (row.ends ?? [row.ounces, row.ounces]).map((end) => exactRatio(end).div(row.ounces).toNumber()) as [number, number]
  return {
    coin: row.loaf,
    kind,
    label,
    group: row.id,
    groupLabel: row.label,
    constant: grams.toNumber(),
    shillings: 1,
    deviation: row.ends ? 0 : enforcement.deviation,
    id: 'loaf-trade',
    doubts: row.ends ? [unknown(`fixed-loaf:${row.id}`, triangle(low, 1, high))] : [],
    steps: stepsOf(row, pence, grams.toSignificantDigits(6).toString()),
    ...(row.ends ? {} : { exact: grams.toSignificantDigits(15).toString() }),
  }
}
