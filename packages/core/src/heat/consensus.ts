import { type HeatClaimRow, type HeatRow, heatClaims, heatEras, heats, inYears } from '../tables/index.js'
import { median } from './median.js'

/** Two ends, in degF. */
export interface Ends {
  readonly low: number
  readonly high: number
}

/** How a heat's degrees come about, for readers. */
export const method: string = [
  'Each dated book that puts degrees to a heat is a claim, kept as printed.',
  'A claim votes when its text or a quotation of it was seen and a handbook states it; figures recalled from memory, figures of unnamed origin and readings of a dial in an oven door do not.',
  'Books that copy one another or share authors are one family with one vote: the middle of their lows and of their highs.',
  'Where four families or more vote, the heat runs from the median of the lows to the median of the highs; a single figure is both. Where fewer vote, the middle of two or three would be an accident, and the heat has ends of our own judgement with the claims beside them.',
  'For books of 1890 to 1940 the ends are moved out by 25 degF, for 1800 to 1889 by 50, before that by 75: older words have no degrees of their own. No heat is moved past the middle of its second neighbour, nor below 100 degF.',
  'Nine times in ten the words meant an oven between those ends, set as a modern oven without a fan; they are not the heat of the brick.',
].join(' ')

/** Fewer families than this have no middle worth the name. Judgement. */
const fewestVotes = 4

/** Handbooks and better; `practice` and `judgement` have no vote. */
const attested = new Set(['statute', 'standard', 'measured', 'handbook', 'scholarship'])

export function claimsOf(heat: string): readonly HeatClaimRow[] {
  return heatClaims.filter((claim) => claim.heat === heat)
}

export function votes({ access, instrument, grade }: HeatClaimRow): boolean {
  return access !== 'memory' && instrument !== 'dial' && attested.has(grade)
}

/** The two ends that each family of books votes for. */
export function familyVotes(claims: readonly HeatClaimRow[]): readonly Ends[] {
  const families = new Map<string, HeatClaimRow[]>()
  for (const claim of claims.filter(votes)) families.set(claim.family, [...(families.get(claim.family) ?? []), claim])
  return [...families.values()].map((family) => ({
    low: median(family.map(({ low }) => low)),
    high: median(family.map(({ low, high }) => high ?? low)),
  }))
}

/**
 * The ends of a heat as its books have them, in degF, before any widening.
 *
 * @example coreOf(heats.find(({ id }) => id === 'slow')!)   // { low: 270, high: 300, byVote: true }
 */
export function coreOf(row: HeatRow): Ends & { readonly byVote: boolean } {
  const families = familyVotes(claimsOf(row.id))
  if (families.length < fewestVotes) return { low: row.ends[0], high: row.ends[1], byVote: false }
  return { low: median(families.map(({ low }) => low)), high: median(families.map(({ high }) => high)), byVote: true }
}

const middle = ({ low, high }: Ends): number => (low + high) / 2

const cores = new Map(heats.map((row) => [row.rank, coreOf(row)]))

/** How far a heat is widened to either side for a year, in degF; for no year at all, what the row of undated words says. */
export function wideningFor(year: number | null): number {
  const era = heatEras.find(({ years }) => (year === null ? !years : years && inYears(years, year)))
  return era?.widen ?? 0
}

/** An oven that is cooler than this dries nothing, in degF. Judgement. */
const coolestOven = 100

/** The ends moved out for the year, but not past the middle of the heat two steps away. */
export function widen(core: Ends, rank: number, year: number | null): Ends {
  const by = wideningFor(year)
  const below = cores.get(rank - 2)
  const above = cores.get(rank + 2)
  return {
    low: Math.min(core.low, Math.max(core.low - by, below ? middle(below) : coolestOven)),
    high: Math.max(core.high, Math.min(core.high + by, above ? middle(above) : Number.POSITIVE_INFINITY)),
  }
}
