import { toDigits } from '../digits.js'
import { badOption } from '../error.js'
import { sure } from './choice.js'
import { couple } from './couple.js'
import type { Distribution } from './distribution.js'
import type { Expression } from './expression.js'
import { resolve } from './resolve.js'
import { requireFinite } from './shapes.js'
import { bestOfSum, simplify, variables } from './terms.js'

/**
 * A summary of an uncertain number: its best value, and the two ends that leave equal shares of the doubt outside (the probabilistically
 * symmetric coverage interval of JCGM 101:2008, 3.15). An end is moved out to the best value where that lies beyond it, as the peak of a
 * lopsided triangle may: low <= best <= high always, and the coverage is then at least the one stated. Six significant digits.
 */
export interface Band {
  readonly low: number
  readonly best: number
  readonly high: number
  /** The probability of lying between the ends. */
  readonly coverage: number
}

/** One of several meanings. Weights are relative: they need not add up to 1. */
export interface Weighted {
  readonly weight: number
  readonly value: Expression
}

/** One line of a sheet, with all that it may mean. Lines of the same `choice` take the option of the same `id` together. */
export interface Line {
  readonly choice?: string
  readonly options: readonly (Weighted & { readonly id: string })[]
}

/**
 * The value with every unknown at its best: the peak of a triangle, the middle of a rectangle, the median of a log-normal.
 *
 * @throws PottleError when the number is too large to hold or an unknown has two shapes
 * @example bestOf(product(2, unknown('glass', rectangle(45, 60))))   // 105
 */
export function bestOf(e: Expression): number {
  const known = variables()
  return round(bestOfSum(simplify(e, known), known))
}

/**
 * The band of an expression, in the expression's own unit: its distribution is computed (JCGM 101:2008, 5.4 to 5.6), not sampled, so that the same call gives the same digits.
 *
 * @param coverage the probability of lying between the ends, between 0 and 1; tails of less than a hundred-thousandth are not resolved
 * @throws PottleError when the coverage is out of range, or an unknown has two shapes or a power that it cannot be raised to
 * @example bandOf(loafWeight({ coin: 'penny', kind: 'white', year: 1680 }).value)   // { low: 183.241, best: 226.083, high: 278.942, coverage: 0.9 }
 */
export function bandOf(e: Expression, coverage = 0.9): Band {
  const known = variables()
  const monomials = simplify(e, known)
  return summarize(resolve(sure(monomials), known), bestOfSum(monomials, known), coverage)
}

/**
 * The band of one of several meanings, all in one unit: the ends are those of the mixture, the best is the best of the heaviest part (the first
 * of equals).
 *
 * @throws PottleError as `bandOf`, and when there are no parts or a weight is below 0
 * @example mixtureBand([1660, 1690].map((year) => ({ weight: 1, value: loafWeight({ year }).value })))   // { low: 160.285, best: 189.163, high: 322.624, coverage: 0.9 }
 */
export function mixtureBand(parts: readonly Weighted[], coverage = 0.9): Band {
  const known = variables()
  const choice = normalize(parts).map(({ weight, value }) => ({ weight, value: simplify(value, known) }))
  return summarize(resolve([choice], known), bestOfSum(heaviest(choice).value, known), coverage)
}

/**
 * The band of the sum of lines. An unknown met in two lines is the same unknown, and lines of the same choice mean the same by it (each line
 * keeps its own weights: where they differ, the lines agree as far as the weights allow). The best is the sum of the lines' bests.
 *
 * @throws PottleError as `mixtureBand`
 * @example jointBand([2, 3].map((n) => ({ options: [{ id: 'ale', weight: 1, value: constant(n) }] })))   // { low: 5, best: 5, high: 5, coverage: 0.9 }
 */
export function jointBand(lines: readonly Line[], coverage = 0.9): Band {
  const known = variables()
  const simple = lines.map(({ choice, options }) => ({
    choice,
    options: normalize(options).map(({ id, weight, value }) => ({ id, weight, value: simplify(value, known) })),
  }))
  const best = simple.reduce((sum, { options }) => sum + bestOfSum(heaviest(options).value, known), 0)
  return summarize(resolve(chooseTogether(simple).map(couple), known), best, coverage)
}

/**
 * A band times an exact number.
 *
 * @throws PottleError when the number is not finite
 * @example scaleBand({ low: 90, best: 100, high: 120, coverage: 0.9 }, 0.5)   // { low: 45, best: 50, high: 60, coverage: 0.9 }
 */
export function scaleBand(band: Band, by: number): Band {
  requireFinite('by', by)
  const [low, high] = by < 0 ? [band.high, band.low] : [band.low, band.high]
  return { low: round(low * by), best: round(band.best * by), high: round(high * by), coverage: band.coverage }
}

function summarize(distribution: Distribution, best: number, coverage: number): Band {
  if (!(coverage > 0 && coverage < 1)) throw badOption('coverage', `${coverage} is not between 0 and 1; 0.9 is nine times in ten`)
  const outside = (1 - coverage) / 2
  const low = Math.min(best, distribution.quantile(outside))
  const high = Math.max(best, distribution.quantile(1 - outside))
  return { low: round(low), best: round(best), high: round(high), coverage }
}

/** Weights that add up to 1; parts without weight go. */
function normalize<Part extends Weighted>(parts: readonly Part[]): readonly Part[] {
  for (const { weight } of parts) {
    if (!(weight >= 0 && weight < Number.POSITIVE_INFINITY)) throw badOption('weight', `${weight} is not a finite number from 0 up`)
  }
  const sum = parts.reduce((total, { weight }) => total + weight, 0)
  if (sum === 0) throw badOption('weight', 'at least one meaning needs a weight above 0')
  return parts.filter(({ weight }) => weight > 0).map((part) => ({ ...part, weight: part.weight / sum }))
}

function heaviest<Part extends { readonly weight: number }>(parts: readonly Part[]): Part {
  return parts.reduce((most, part) => (part.weight > most.weight ? part : most))
}

/** The options of the lines, grouped by the choice that they share. */
function chooseTogether<Options>(lines: readonly { choice: string | undefined; options: Options }[]): Options[][] {
  const groups = new Map<unknown, Options[]>()
  for (const line of lines) {
    const key = line.choice ?? line
    groups.set(key, [...(groups.get(key) ?? []), line.options])
  }
  return [...groups.values()]
}

/** Six significant digits, so that engines whose exp and log differ in the last bit agree. */
function round(value: number): number {
  if (!Number.isFinite(value)) throw badOption('value', 'the numbers are too large to reckon with')
  return toDigits(value, 6) + 0
}
