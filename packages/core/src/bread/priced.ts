import type { Step } from '../cite/index.js'
import { exactRatio, type LoafCoinRow, type LoafKindRow } from '../tables/index.js'
import type { Baked } from './baked.js'
import { type Bench, benchIn } from './bench.js'
import { doubtOf } from './doubt.js'
import { anywhere, type LoafQuestion } from './question.js'
import { ruleFor, stepsOfRule } from './rule.js'
import { show } from './show.js'
import { type Wheat, wheatIn } from './wheat.js'

/** The price of the caller, or that of the year. */
function wheatFor({ year, wheat }: LoafQuestion): Wheat {
  if (wheat === undefined) return wheatIn(year)
  const step: Step = { text: 'Wheat at the price given', factor: `${wheat} s a quarter`, grade: 'judgement', checked: 'none', sources: [] }
  return { year, shillings: wheat, series: 'the price given', deviation: 0, steps: [step] }
}

interface Allowance {
  readonly shillings: number
  readonly deviation: number
  readonly step: Step
}

/** The allowance of the caller, or that of the bench; its ends are taken to be two deviations off. */
function allowanceFor({ allowance }: LoafQuestion, { allowance: row, market }: Bench): Allowance {
  if (allowance !== undefined) {
    const text = allowance === 0 ? 'No allowance: it is in the price given' : "The baker's allowance given"
    return {
      shillings: allowance,
      deviation: 0,
      step: { text, factor: `+ ${allowance} s`, grade: 'judgement', checked: 'none', sources: [] },
    }
  }
  const { low, best, high } = row.shillings
  const text = `What a baker might add to the price of wheat, ${market.label}. ${row.note ?? ''}`.trim()
  return {
    shillings: best,
    deviation: (high - low) / 4,
    step: { text, factor: `+ ${best} s (${low} to ${high})`, grade: row.grade, checked: row.checked, sources: row.source },
  }
}

/** Names the doubt of a year's bench, and what a caller took out of it. */
function doubtName({ year, wheat, allowance }: LoafQuestion, bench: Bench): string {
  const given = [wheat === undefined ? '' : `:wheat=${wheat}`, allowance === undefined ? '' : `:allowance=${allowance}`]
  return `loaf:${year}:${bench.market.id}${given.join('')}`
}

/** How a loaf is called: *penny white loaf*, *penny manchet*, *halfpenny roll*. */
function labelOf(coin: LoafCoinRow, kind: LoafKindRow, own: string | undefined): string {
  if (own) return `${kind.id} loaf`
  if (kind.id === 'roll' || kind.id === 'manchet') return `${coin.id} ${kind.id}`
  return `${coin.id} ${kind.id} loaf`
}

function coinStep(coin: LoafCoinRow, kind: LoafKindRow, own: string | undefined): Step {
  const { note, grade, checked, source } = own ? kind : coin
  return { text: `The weight goes by the price in pence. ${note ?? ''}`.trim(), factor: own ?? coin.pence, grade, checked, sources: source }
}

/**
 * A loaf by the assize: pence x K / (P + A), with P the price of middle wheat and A the baker's allowance, both in shillings a quarter
 * (Penkethman 1638; Blackhall 1699 gives the white loaf as 13 536 pennyweights over the sixpences of P + A, which is K = 338.4 oz).
 * The weight is that of the baked loaf as sold.
 *
 * @param own what one loaf of the kind costs where no coin names it, in pence, as a ratio
 */
export function bakePriced(question: LoafQuestion, coin: LoafCoinRow, kind: LoafKindRow, own?: string): Baked {
  const { year, place = anywhere } = question
  const bench = benchIn(year, place, question.market)
  const wheat = wheatFor(question)
  const allowance = allowanceFor(question, bench)
  const rule = ruleFor(kind, year, place)
  const shillings = wheat.shillings + allowance.shillings
  const local = question.wheat === undefined ? bench.market.deviation : 0
  const doubt = doubtOf({
    year,
    wheat: wheat.shillings,
    allowance: allowance.shillings,
    wheatDeviation: Math.hypot(wheat.deviation, local),
    allowanceDeviation: allowance.deviation,
  })
  const ruled = stepsOfRule(rule, kind, `${show(shillings)} s`, show(rule.ounces / shillings))
  return {
    coin: coin.id,
    kind: kind.id,
    label: labelOf(coin, kind, own),
    group: rule.regime.id,
    groupLabel: rule.regime.label,
    constant: exactRatio(own ?? coin.pence).toNumber() * rule.ounces * rule.gramsPerOunce,
    shillings,
    deviation: doubt.deviation,
    id: doubtName(question, bench),
    doubts: rule.doubts,
    steps: [...wheat.steps, allowance.step, ...ruled, coinStep(coin, kind, own), doubt.step],
  }
}
