import { badOption, noAnswer, requireWord } from '../error.js'
import { sayNearest } from '../nearest.js'
import { type FixedLoafRow, fixedLoaves, inYears, type LoafCoinRow, type LoafKindRow, loafCoins, loafKinds } from '../tables/index.js'

/** Lower case, single spaces, no hyphens: *Half-Penny  Loaf* and *half penny loaf* are one name. */
function plain(name: string): string {
  return requireWord('name', name)
    .slice(0, 80)
    .toLowerCase()
    .replace(/[-\s]+/g, ' ')
    .trim()
}

function byName<Row extends { readonly names: readonly string[] }>(
  rows: readonly Row[],
  idOf: (row: Row) => string,
): ReadonlyMap<string, Row> {
  const index = new Map<string, Row>()
  for (const row of rows) for (const name of [idOf(row), ...row.names]) if (!index.has(plain(name))) index.set(plain(name), row)
  return index
}

const coinIndex = byName(loafCoins, ({ id }) => id)
const kindIndex = byName(loafKinds, ({ id }) => id)
const fixedIndex = byName<FixedLoafRow>(fixedLoaves, ({ loaf }) => loaf)

/** Words that say that it is bread; *white* and *French* alone do not: there are whites of eggs and French beans. */
const nouns = new Set(
  'loaf loaves bread breads roll rolls manchet manchets cheat wastel wastels simnel simnels cocket horsebread'.split(' '),
)
/** Words that say that the crust is off. */
const crumbs = new Set('crumb crumbs crumbe crumme crummes breadcrumb breadcrumbs'.split(' '))
/** Words that change nothing in what a loaf weighs: a grated loaf keeps its crust unless the crumb is named. */
const idle = new Set('a an the of stale grated new fresh old baked small one loafe loafes sliced bakers'.split(' '))

/** What a name says of a loaf. */
export interface LoafName {
  readonly coin?: LoafCoinRow
  readonly kind?: LoafKindRow
  /** A loaf of fixed weight, as `FixedLoafRow.loaf` has it. */
  readonly fixed?: string
  readonly crumb: boolean
  /** Whether it names bread at all. */
  readonly bread: boolean
  /** Words that mean nothing here: *sugar* in *a loaf of sugar*. */
  readonly other: readonly string[]
}

/** The longest run of at most three words from a place on that an index knows. */
function longest<Row>(words: readonly string[], from: number, index: ReadonlyMap<string, Row>): { row: Row; length: number } | undefined {
  for (let length = Math.min(3, words.length - from); length > 0; length--) {
    const row = index.get(words.slice(from, from + length).join(' '))
    if (row) return { row, length }
  }
  return undefined
}

/**
 * Reads the name of a loaf as a reader of phrases gives it: coin, kind, fixed size, crumb.
 *
 * @returns the rows of the tables that it names; `other` holds the words that mean nothing here
 * @throws PottleError `bad-option` for a name that is no text
 * @example readLoafName('two-penny white loaf').coin.pence   // '2'
 */
export function readLoafName(name: string): LoafName {
  const words = plain(name).split(' ').filter(Boolean)
  const found: { -readonly [K in keyof LoafName]: LoafName[K] } & { other: string[] } = { crumb: false, bread: false, other: [] }
  for (let i = 0; i < words.length; ) {
    const coin = longest(words, i, coinIndex)
    const fixed = longest(words, i, fixedIndex)
    const kind = longest(words, i, kindIndex)
    const word = words[i]!
    const length = coin?.length ?? fixed?.length ?? kind?.length ?? 1
    if (words.slice(i, i + length).some((one) => nouns.has(one))) found.bread = true
    if (coin) found.coin ??= coin.row
    else if (fixed) found.fixed ??= fixed.row.loaf
    else if (kind) found.kind ??= kind.row
    else if (crumbs.has(word)) found.crumb = true
    else if (!nouns.has(word) && !idle.has(word)) found.other.push(word)
    i += length
  }
  return found
}

function unknownName(parameter: string, what: string, name: string, known: Iterable<string>): never {
  throw badOption(parameter, `"${name.slice(0, 40)}" is no ${what} of these tables${sayNearest(plain(name), [...known])}`)
}

/**
 * The price that a loaf was named by, if there was such a loaf in that year.
 *
 * @throws PottleError `bad-option` for an unknown coin, `no-answer` for one that was not struck yet (dates: Ruding 1840)
 */
export function coinIn(name: string, year: number): LoafCoinRow {
  const coin = coinIndex.get(plain(name)) ?? unknownName('coin', 'coin', name, [...coinIndex.keys(), ...fixedIndex.keys()])
  if (year < coin.years[0])
    throw noAnswer('coin', `there was no ${coin.label} in ${year}: ask for ${coin.years[0]} or later. ${coin.note ?? ''}`.trim())
  return coin
}

/**
 * A kind of bread, if it was baked in that year.
 *
 * @throws PottleError `bad-option` for an unknown kind, `no-answer` for one that was not baked then
 */
export function kindIn(name: string, year: number): LoafKindRow {
  const kind = kindIndex.get(plain(name)) ?? unknownName('kind', 'kind of bread', name, kindIndex.keys())
  const { years } = kind
  if (years && !inYears(years, year)) {
    throw noAnswer('kind', `${kind.label} belongs to ${years[0]} to ${years[1]}, not to ${year}. ${kind.note ?? ''}`.trim())
  }
  return kind
}

/** The loaf of fixed weight that a name means: *quartern*, *half-peck*; undefined where it means none. */
export function fixedNamed(name: string): string | undefined {
  return fixedIndex.get(plain(name).replace(/ loaf$/, ''))?.loaf
}
