import { badOption, noAnswer } from '../error.js'
import { findUnit, inFractions } from '../modern/index.js'
import type { FoundServes } from '../reading/index.js'
import { exactValue, findGood, portions } from '../tables/index.js'
import type { CheckedPlan } from './plan.js'
import type { SheetScale, Total } from './sheet.js'
import { totalOf } from './totals.js'
import type { Worked } from './worked.js'

type Sum = Omit<Total, 'sources'> | null

/** Beyond these no kitchen scales a receipt. Judgement. */
const least = 1e-3
const most = 1e4

const said = (factor: number): string => {
  const text = inFractions(Number(factor.toPrecision(6)))
  return text.length <= 4 ? text : String(Number(factor.toPrecision(3)))
}

function requireFactor(parameter: string, factor: number): number {
  if (factor >= least && factor <= most) return factor
  throw badOption(
    parameter,
    `it would make ${Number(factor.toPrecision(3))} times the receipt; from ${least} to ${most} times can be worked`,
  )
}

/** How many a receipt feeds, by its weight, where nobody says so. */
function servingsOf(mass: Sum): number {
  if (!mass) throw noAnswer('plan.guests', 'the receipt gives no weight to tell how many it serves; say so in plan.serves')
  return Math.max(1, Math.round(mass.best / portions.find(({ id }) => id === 'made-dish')!.best))
}

/** How many the receipt feeds: as the plan says, else as its own words say, else by its weight. */
function servedBy(serves: number | null, stated: FoundServes | null, mass: Sum): { count: number; how: string } {
  if (serves !== null) return { count: serves, how: String(serves) }
  if (stated !== null) {
    const { low, high } = stated.amount
    return { count: (low + high) / 2, how: `${low === high ? low : `${low} to ${high}`}, by its own words` }
  }
  const count = servingsOf(mass)
  const portion = portions.find(({ id }) => id === 'made-dish')!
  return { count, how: `about ${count}, at ${portion.best} g each (an estimate)` }
}

function byGuests(guests: number, served: { count: number; how: string }): SheetScale {
  const { count, how } = served
  const factor = requireFactor('plan.guests', guests / count)
  return { factor, by: 'guests', text: `for ${guests}, from a receipt that serves ${how}: ${said(factor)} times` }
}

function byDish(dishes: CheckedPlan['dishes'], room: Sum): SheetScale {
  if (!room) throw noAnswer('plan.dish', 'the receipt gives no volume to fill a dish with; scale by plan.scale')
  const volume = dishes.reduce((sum, dish) => sum + dish.volume * (dish.count ?? 1), 0)
  const factor = requireFactor('plan.dish', volume / room.best)
  const named = dishes.map(({ count, label, plural }) => (count !== null && count > 1 ? `${count} ${plural}` : `1 ${label}`))
  return { factor, by: 'dish', text: `to fill ${named.join(' and ')} (${Math.round(volume)} ml): ${said(factor)} times` }
}

/** Lines of a thing by its name, or by the name of the good or class that it is. */
function linesOf(thing: string, lines: readonly Worked[]): readonly Worked[] {
  const good = findGood(thing)
  const named = lines.filter(({ reading }) => reading.thing === thing || reading.things?.includes(thing))
  if (named.length > 0) return named
  const alike = good ? lines.filter(({ kernel }) => kernel?.good?.id === good.id) : []
  return alike.length > 0 ? alike : lines.filter(({ kernel }) => kernel?.good?.classes.includes(thing))
}

/** How many of a thing the receipt counts: eggs whole or in part, and things by number. */
function countIn(lines: readonly Worked[]): number {
  return lines.reduce((sum, { reading }) => {
    const { eggs, amount } = reading
    const parts = eggs ? eggs.whole + Math.max(eggs.yolks, eggs.whites) : 0
    return sum + (parts || (amount ? (amount.low + amount.high) / 2 : 0))
  }, 0)
}

function byLimit(limit: NonNullable<CheckedPlan['limit']>, lines: readonly Worked[], coverage: number): SheetScale {
  const { thing, amount, unit, quantity } = limit
  const own = linesOf(thing, lines)
  if (own.length === 0) {
    const named = [...new Set(lines.map(({ reading }) => reading.thing).filter((name) => name !== null))].slice(0, 12)
    throw badOption('plan.limit.thing', `the receipt measures no ${thing.slice(0, 40)}; it measures ${named.join(', ') || 'nothing'}`)
  }
  const row = findUnit(unit)!
  const have = amount * (row.value ? exactValue(row.value).value.toNumber() : 1)
  const of = quantity === 'mass' || quantity === 'volume' ? quantity : undefined
  const need = of ? totalOf(own, of, coverage)?.best : quantity === 'count' ? countIn(own) : undefined
  if (!need) throw badOption('plan.limit.unit', `the ${thing} of the receipt can't be told in ${row.plural}; try g, ml or each`)
  const factor = requireFactor('plan.limit.amount', have / need)
  const name = unit === 'each' ? '' : ` ${amount === 1 ? row.label : row.plural} of`
  return {
    factor,
    by: 'limit',
    text: `to what ${inFractions(amount)}${name} ${thing} allow${unit === 'each' && amount > 1 ? '' : 's'}: ${said(factor)} times`,
  }
}

/**
 * How many times the receipt the plan makes.
 *
 * @throws PottleError `bad-option` for a plan that no kitchen could follow; `no-answer` where the receipt gives nothing to scale by
 */
export function scaleFor(plan: CheckedPlan, lines: readonly Worked[], mass: Sum, room: Sum, stated: FoundServes | null): SheetScale {
  const coverage = mass?.coverage ?? 0.9
  if (plan.scale !== null)
    return {
      factor: plan.scale,
      by: 'factor',
      text: plan.scale < 1 ? `${said(plan.scale)} of the receipt` : `${said(plan.scale)} times the receipt`,
    }
  if (plan.guests !== null) return byGuests(plan.guests, servedBy(plan.serves, stated, mass))
  if (plan.limit !== null) return byLimit(plan.limit, lines, coverage)
  if (plan.dishes.length > 0) return byDish(plan.dishes, room)
  return { factor: 1, by: 'nothing', text: 'the whole receipt' }
}
