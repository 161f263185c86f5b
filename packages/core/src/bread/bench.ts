import { badOption, noAnswer, requireWord } from '../error.js'
import { type AllowanceRow, type BreadMarketRow, bakersAllowances, breadMarkets, inYears } from '../tables/index.js'

/** The magistrates who set the assize: what sort of place they sat in, and what they let a baker add to the price of wheat. */
export interface Bench {
  readonly market: BreadMarketRow
  readonly allowance: AllowanceRow
}

/** A sort of place that a caller may name where the place alone does not tell it. */
export type Market = 'london' | 'town' | 'country'

function refuseMarket(wish: string): never {
  throw badOption(
    'market',
    `"${requireWord('market', wish).slice(0, 40)}" is no sort of market; ask for ${breadMarkets.map(({ id }) => id).join(', ')}`,
  )
}

function marketOf(places: readonly string[], wish: Market | undefined): BreadMarketRow {
  if (wish) return breadMarkets.find(({ id }) => id === wish) ?? refuseMarket(wish)
  for (const place of places) {
    const market = breadMarkets.find((row) => row.places.includes(place))
    if (market) return market
  }
  throw noAnswer(
    'place',
    `no assize of bread is known for ${places[0] ?? 'no place'}; ask for a place in England, Scotland, Ireland or America`,
  )
}

/**
 * Who set the weight of bread in a year and a place.
 *
 * @param places the place and those that it lies in, the nearest first
 * @throws PottleError `no-answer` where no bench is known: Scotland before 1707, America before 1620
 * @example benchIn(1680, ['london', 'england', 'britain']).allowance.shillings.best   // 14
 */
export function benchIn(year: number, places: readonly string[], wish?: Market): Bench {
  const market = marketOf(places, wish)
  if (market.years && !inYears(market.years, year)) {
    throw noAnswer(
      'place',
      `no loaf of ${year} can be given for ${market.label}, only from ${market.years[0]} on. ${market.note ?? ''}`.trim(),
    )
  }
  const allowance = bakersAllowances.find((row) => row.markets.includes(market.id) && inYears(row.years, year))
  if (!allowance) throw noAnswer('year', `no baker's allowance is known for ${market.label} in ${year}`)
  return { market, allowance }
}
