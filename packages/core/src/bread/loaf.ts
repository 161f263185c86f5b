import { type Expression, factorOf, lognormal, product, unknown } from '../bands/index.js'
import type { Step } from '../cite/index.js'
import { Memory } from '../memory.js'
import type { Baked } from './baked.js'
import { kindsMeant, likeliest } from './choice.js'
import { crumbOf } from './crumb.js'
import { bakeFixed, fixedIn, requireFixed } from './fixed.js'
import { coinIn, fixedNamed, kindIn } from './names.js'
import { bakePriced } from './priced.js'
import { anywhere, type LoafQuestion, requireQuestion } from './question.js'

/** The weight of one loaf, baked as sold, and how it was come by. */
export interface Loaf {
  /** The coin that names it, or the fixed size. */
  readonly coin: string
  readonly kind: string
  readonly label: string
  /** Grams. */
  readonly value: Expression
  /** Grams in all their digits, for a loaf whose weight the law fixed. */
  readonly exact?: string
  readonly steps: readonly Step[]
}

/** A loaf that a question may mean, and how likely it is. */
export interface Option {
  readonly baked: Baked
  readonly share: number
}

function bake(question: LoafQuestion): readonly Option[] {
  const { year, place = anywhere } = question
  const kind = kindIn(question.kind ?? likeliest(kindsMeant(year)), year)
  const cut = (baked: Baked): Baked => (question.crumb ? crumbOf(baked) : baked)
  const fixed = fixedNamed(question.coin ?? '')
  if (fixed) return requireFixed(fixed, year, place).map(({ row, share }) => ({ baked: cut(bakeFixed(row, kind.id)), share }))
  const coin = coinIn(question.coin ?? 'penny', year)
  // A horse loaf without a price is one of the three that a penny bought.
  const own = question.coin === undefined ? kind.pence : undefined
  const [piece] = kind.piece ? fixedIn(kind.piece, year, place) : []
  const baked = piece
    ? { ...bakeFixed(piece.row, kind.id, coin.pence, `${coin.id} ${kind.id}`), coin: coin.id }
    : bakePriced(question, coin, kind, own)
  return [{ baked: cut(baked), share: 1 }]
}

/** A receipt of an uncertain date asks for some forty years of three kinds; a few such are worth keeping. */
const remembered = new Memory<string, readonly Option[]>(1000)

/** Every loaf that a question may mean: one, but for a fixed size whose weight was changing. */
export function bakeAll(question: LoafQuestion): readonly Option[] {
  requireQuestion(question)
  const { coin, kind, year, place, market, wheat, allowance, crumb } = question
  const key = [coin, kind, year, place, market, wheat, allowance, crumb].map(String).join('|')
  return remembered.get(key) ?? remembered.set(key, bake(question))
}

/** The weight in grams: constant over shillings, times the doubt of the bench, times the doubts of its own. */
export function weightOf({ constant, doubts }: Baked, shillings: number, deviation: number, id: string): Expression {
  const bench = deviation > 0 ? [unknown(id, lognormal(1, factorOf(deviation)))] : []
  return product(constant / shillings, ...bench, ...doubts)
}

/**
 * The weight of a priced loaf, computed from the price of wheat through the Assize of Bread; or of a loaf of fixed weight.
 *
 * Grams of the baked loaf as sold. From 1266 to 1757 one rule governs, restated by every book and act: a penny buys K ounces over the
 * shillings of a quarter of middle wheat and the baker's allowance, K being 338.4 for white, half as much again for wheaten, twice as much for
 * household (51 Hen. III; Penkethman 1638; 8 Anne c. 18). Later acts change K, and after the assize the market keeps near it.
 *
 * @throws PottleError `bad-option` for an unknown coin or kind, a price of nothing, a negative allowance; `no-answer` before 1266, after
 * 1900, for a coin not yet struck, a kind not baked then, a place without a bench
 * @example bandOf(loafWeight({ coin: 'penny', kind: 'white', year: 1680, place: ['london', 'england'] }).value).best   // 212.…
 */
export function loafWeight(question: LoafQuestion): Loaf {
  const { baked } = bakeAll(question)[0]!
  const { coin, kind, label, steps, exact, shillings, deviation, id } = baked
  return { coin, kind, label, value: weightOf(baked, shillings, deviation, id), ...(exact ? { exact } : {}), steps }
}
