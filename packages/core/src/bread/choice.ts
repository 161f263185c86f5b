import { inYears, type LoafUsageRow, loafCoins, loafUsage } from '../tables/index.js'

function rowFor(about: 'kind' | 'size', year: number, kind: string | undefined): LoafUsageRow {
  const holding = loafUsage.filter((row) => row.about === about && inYears(row.years, year))
  return holding.find(({ of }) => of !== undefined && of === kind) ?? holding.find(({ of }) => of === undefined)!
}

/** Which kinds of bread an unnamed loaf may have been in a year, with their shares and the reason. */
export function kindsMeant(year: number): LoafUsageRow {
  return rowFor('kind', year, undefined)
}

/** Which coins or fixed sizes a loaf without a price may have had in a year. */
export function sizesMeant(year: number, kind?: string): LoafUsageRow {
  return rowFor('size', year, kind)
}

/** What a loaf of a named coin and kind may have been by custom, beside the loaf of the rule; undefined where no custom is known. */
export function customMeant(year: number, coin: string, kind: string): LoafUsageRow | undefined {
  return loafUsage.find((row) => row.about === 'custom' && row.coin === coin && row.of === kind && inYears(row.years, year))
}

/** The likeliest of a row's weights. */
export function likeliest({ weights }: LoafUsageRow): string {
  return Object.entries(weights).reduce((most, one) => (one[1] > most[1] ? one : most))[0]
}

/** How common a loaf of that coin was in a year, beside the years when it was commonest: from 0 to 1. */
export function commonness(coin: string, year: number): number {
  const row = loafCoins.find(({ id }) => id === coin)
  if (!row?.common || row.rare === undefined) return 1
  return inYears(row.common, year) ? 1 : row.rare
}
