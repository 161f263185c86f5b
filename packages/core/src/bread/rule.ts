import { triangle, type Unknown, unknown } from '../bands/index.js'
import type { Step } from '../cite/index.js'
import { noAnswer } from '../error.js'
import { once } from '../once.js'
import {
  type AssizeRegimeRow,
  type AssizeRuleRow,
  assizeRegimes,
  assizeRules,
  exactRatio,
  exactValue,
  holds,
  type LoafKindRow,
} from '../tables/index.js'

/** What the law, or after it the trade, gave for a penny: a constant to be divided by the price of wheat and the allowance. */
export interface Rule {
  readonly regime: AssizeRegimeRow
  readonly row: AssizeRuleRow
  /** Ounces x shillings. */
  readonly ounces: number
  /** Grams to the ounce. */
  readonly gramsPerOunce: number
  /** Where the constant or the ounce itself is in doubt. */
  readonly doubts: readonly Unknown[]
}

/** The regime of a year and place: a row for a nearer place speaks before one for everywhere. */
function regimeIn(year: number, places: readonly string[]): AssizeRegimeRow {
  const holding = assizeRegimes.filter((row) => holds(row, year, places))
  return holding.find(({ place }) => place) ?? holding[0]!
}

function doubtsOf(regime: AssizeRegimeRow, row: AssizeRuleRow): Unknown[] {
  const doubts: Unknown[] = []
  if (row.ends) {
    const [low, high] = row.ends.map((end) => exactRatio(end).div(row.ounces).toNumber()) as [number, number]
    doubts.push(unknown(`assize-rule:${row.id}`, triangle(low, 1, high)))
  }
  if (regime.grainsLow) {
    doubts.push(unknown(`ounce:${regime.id}`, triangle(exactRatio(regime.grainsLow).div(regime.grains).toNumber(), 1, 1)))
  }
  return doubts
}

function ruleOf(row: AssizeRuleRow): Rule {
  const regime = assizeRegimes.find(({ id }) => id === row.regime)!
  return {
    regime,
    row,
    ounces: exactRatio(row.ounces).toNumber(),
    gramsPerOunce: exactValue(`${regime.grains} gr`).value.toNumber(),
    doubts: doubtsOf(regime, row),
  }
}

const rules = once(() => new Map(assizeRules.map((row) => [row.id, ruleOf(row)])))

/**
 * The rule for a kind of bread in a year and place.
 *
 * @throws PottleError `no-answer` where that kind had no rule then
 */
export function ruleFor(kind: LoafKindRow, year: number, places: readonly string[]): Rule {
  const regime = regimeIn(year, places)
  const rule = rules().get(`${regime.id}.${kind.as ?? kind.id}`)
  if (!rule) throw noAnswer('kind', `no rule is known for ${kind.label} in ${year}`)
  return rule
}

/** The steps that a rule adds to a derivation: its constant over the shillings, and the ounce. */
export function stepsOfRule({ regime, row, gramsPerOunce }: Rule, kind: LoafKindRow, shillings: string, ounces: string): Step[] {
  const doubtful = row.ends ? ` (${row.ends[0]} to ${row.ends[1]})` : ''
  return [
    {
      text: `A pennyworth of ${kind.label} by ${regime.label}: ounces divided by shillings. ${row.note ?? ''}`.trim(),
      factor: `${row.ounces}${doubtful} / ${shillings} = ${ounces} oz`,
      grade: row.grade,
      checked: row.checked,
      sources: row.source,
    },
    {
      text: `The ${regime.ounce} ounce of ${regime.grains} grains. ${regime.note ?? ''}`.trim(),
      factor: `${gramsPerOunce} g`,
      grade: regime.grade,
      checked: regime.checked,
      sources: regime.source,
    },
  ]
}
