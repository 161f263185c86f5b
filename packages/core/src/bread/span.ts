import type { Expression } from '../bands/index.js'
import type { Step } from '../cite/index.js'
import { noAnswer, PottleError } from '../error.js'
import type { Baked } from './baked.js'
import { bakeAll, type Loaf, weightOf } from './loaf.js'
import type { LoafQuestion } from './question.js'
import { show } from './show.js'

/** A year and how much of the doubt about the date falls on it. */
export interface LoafYear {
  readonly year: number
  readonly weight: number
}

/** The loaves of one regime, or of one fixed weight, taken together over the years that a date leaves open. */
export interface LoafSpan {
  readonly loaf: Loaf
  /** What they share: the regime's or the fixed weight's name. */
  readonly group: string
  readonly groupLabel: string
  /** The years that they are taken over; the weights are those given, times the share of this weight among others of the same year. */
  readonly years: readonly LoafYear[]
}

interface Part {
  readonly year: number
  readonly weight: number
  readonly baked: Baked
}

/** Every loaf of every year that has one; throws the first refusal where none has. */
function partsOver(question: Omit<LoafQuestion, 'year'>, years: readonly LoafYear[]): Part[] {
  const parts: Part[] = []
  let refusal: unknown
  for (const { year, weight } of years) {
    try {
      for (const { baked, share } of bakeAll({ ...question, year })) parts.push({ year, weight: weight * share, baked })
    } catch (error) {
      // A date that reaches over the edge of the tables is answered from the years inside them.
      if (!(error instanceof PottleError) || error.code !== 'no-answer') throw error
      refusal ??= error
    }
  }
  if (parts.length === 0) throw refusal ?? noAnswer('year', 'no year was given')
  return parts
}

/** Mean and deviation of ln(P + A) over the years, the years' own doubt included: the first two moments of the mixture. */
function momentsOf(parts: readonly Part[]): { mean: number; deviation: number } {
  const { shillings, deviation } = parts[0]!.baked
  // One year, or years that do not differ, give that year's loaf to the last digit, so that it stays the same unknown.
  if (parts.every(({ baked }) => baked.shillings === shillings && baked.deviation === deviation))
    return { mean: Math.log(shillings), deviation }
  const total = parts.reduce((sum, { weight }) => sum + weight, 0)
  const average = (of: (baked: Baked) => number): number => parts.reduce((sum, { weight, baked }) => sum + weight * of(baked), 0) / total
  const mean = average((baked) => Math.log(baked.shillings))
  return { mean, deviation: Math.sqrt(average((baked) => baked.deviation ** 2 + (Math.log(baked.shillings) - mean) ** 2)) }
}

function spanStep(parts: readonly Part[], deviation: number): Step {
  const shillings = parts.map(({ baked }) => baked.shillings)
  const years = parts.map(({ year }) => year)
  const range = `${show(Math.min(...shillings))} and ${show(Math.max(...shillings))} s`
  return {
    text: `The year may be any from ${Math.min(...years)} to ${Math.max(...years)}, when wheat and allowance stood between ${range} a quarter; the steps show a year from the middle of them`,
    factor: `standard deviation ${show(deviation)} in logarithms`,
    grade: 'judgement',
    checked: 'none',
    sources: [],
  }
}

function together(parts: readonly Part[], name: string): Loaf {
  const { mean, deviation } = momentsOf(parts)
  const apart = ({ baked }: Part): number => Math.abs(Math.log(baked.shillings) - mean)
  const { baked } = parts.reduce((nearest, part) => (apart(part) < apart(nearest) ? part : nearest))
  const { coin, kind, label, exact, steps } = baked
  const several = parts.length > 1 && baked.shillings !== 1
  const id = several ? `${baked.id.replace(/^loaf:\d+/, `loaf:${name}`)}:${parts[0]!.year}-${parts.at(-1)!.year}` : baked.id
  const value: Expression = weightOf(baked, Math.exp(mean), deviation, id)
  return { coin, kind, label, value, ...(exact ? { exact } : {}), steps: several ? [...steps, spanStep(parts, deviation)] : steps }
}

/**
 * The loaf of a date that leaves several years open: one loaf for each regime, or fixed weight, that the years fall under.
 *
 * Within a regime the years differ by the price of wheat alone, which swings as a log-normal does: the mixture of years is given by the
 * log-normal of the same mean and deviation.
 *
 * @param question coin, kind and place as `loafWeight` takes them
 * @param years at least one, each with its share of the doubt about the date
 * @param name the date as it was written: it names the doubt, so that loaves of one receipt stay together
 * @returns loaves whose `value` is in grams
 * @throws PottleError as `loafWeight` does, where no year has such a loaf
 * @example loavesOver({ coin: 'penny', kind: 'white' }, settingOf('1750/1770').moments, '1750/1770').map(({ group }) => group)   // ['anne', 'george-ii']
 */
export function loavesOver(question: Omit<LoafQuestion, 'year'>, years: readonly LoafYear[], name: string): readonly LoafSpan[] {
  const groups = new Map<string, Part[]>()
  for (const part of partsOver(question, years)) groups.set(part.baked.group, [...(groups.get(part.baked.group) ?? []), part])
  return [...groups.values()].map((parts) => ({
    loaf: together(parts, name),
    group: parts[0]!.baked.group,
    groupLabel: parts[0]!.baked.groupLabel,
    years: parts.map(({ year, weight }) => ({ year, weight })),
  }))
}
