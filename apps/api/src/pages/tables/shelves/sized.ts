import { consistencies, durations, eggs, lengths, pieces, type Quantity, type SizedRow, type VesselRow, vessels } from '@pottle/core/tables'
import { type Article, attestation, type Finding, rangeOf, type Shelf, shelf, sizeOf } from '../article.js'

function findingsOf({ label, spells }: SizedRow, usual: Quantity): readonly Finding[] {
  return spells.map(({ id, label: own, things, quantity = usual, low, best, high, ...row }) => ({
    id,
    label: own || label,
    ...sizeOf({ low, best, high }, quantity),
    ...attestation(row),
    things: things ?? null,
  }))
}

function comesTo({ spells }: SizedRow, usual: Quantity): string {
  const quantities = [...new Set(spells.map(({ quantity = usual }) => quantity))]
  const within = (one: Quantity): number[] => spells.filter(({ quantity = usual }) => quantity === one).map(({ best }) => best)
  return quantities.map((one) => rangeOf(within(one), one)).join('; ') || 'never sized'
}

/** A measure that one row tells of, with what it came to at one time and another. */
function articleOf(row: SizedRow, at: string, usual: Quantity, asks: readonly string[]): Article {
  const { id, label, names } = row
  return { id, address: `${at}/${id}`, label, names, comes: comesTo(row, usual), asks, findings: findingsOf(row, usual) }
}

function articlesOf<Row extends SizedRow>(
  rows: readonly Row[],
  at: string,
  usual: Quantity,
  asksFor: (row: Row) => readonly string[],
): readonly Article[] {
  // A pod of vanilla and a vanilla are one thing under two names.
  const once = rows.filter(({ label }, i) => rows.findIndex((row) => row.label === label) === i)
  return once.map((row) => articleOf(row, at, usual, asksFor(row)))
}

const one = (label: string): string => `${/^[aeiou]/.test(label) ? 'an' : 'a'} ${label}`

/** A vessel that nobody sized says so itself. */
function withSilence(article: Article, unsized: VesselRow['unsized']): Article {
  if (!unsized) return article
  const { asks: _, ...silent } = article
  return { ...silent, findings: [{ label: article.label, best: 'never sized', ...attestation(unsized), things: null }] }
}

function vesselArticles(at: string): readonly Article[] {
  const unsized = new Map(vessels.map((row) => [row.id, row.unsized]))
  const articles = articlesOf(vessels, at, 'volume', ({ label }) => [`${one(label)} of sugar`, `${label} of sugar`])
  return articles.map((article) => withSilence(article, unsized.get(article.id)))
}

/** A shelf of one table, whose rows are asked for by their labels. */
const sized = (
  head: Omit<Shelf, 'articles'>,
  rows: readonly SizedRow[],
  usual: Quantity,
  asksFor: (row: SizedRow) => readonly string[],
): Shelf => shelf(head, () => articlesOf(rows, head.address, usual, asksFor))

export const vesselShelf: Shelf = shelf(
  {
    address: '/measures/vessels',
    title: 'Spoons, cups and hands',
    about: 'What no law sized: the things that a cook had by her. Level, unless a row says otherwise.',
  },
  () => vesselArticles('/measures/vessels'),
)

export const pieceShelf: Shelf = sized(
  { address: '/measures/pieces', title: 'Pieces', about: 'A blade of mace, a race of ginger, the juice of a lemon: what receipts count.' },
  pieces,
  'mass',
  ({ label }) => [label],
)

export const eggShelf: Shelf = sized(
  { address: '/measures/eggs', title: 'Eggs', about: 'In the shell. Hens were smaller, and so were their eggs.' },
  eggs,
  'mass',
  ({ label }) => [one(label)],
)

export const lengthShelf: Shelf = sized(
  { address: '/measures/lengths', title: 'Lengths and thicknesses', about: 'An inch, a finger, the thickness of a crown.' },
  lengths,
  'length',
  ({ label }) => [`${label} thick`, `${label} broad`, `${label} long`, `as thick as ${label}`, `the thickness of ${label}`, label],
)

export const timeShelf: Shelf = sized(
  { address: '/measures/times', title: 'Times', about: 'By the clock, by prayers, and by how far one walks.' },
  durations,
  'time',
  ({ label }) => [label],
)

export const thicknessShelf: Shelf = sized(
  {
    address: '/measures/thicknesses',
    title: 'Thicknesses of a batter',
    about: 'Millilitres of liquid to a gram of the flour or sugar that it is told of.',
    column: 'ml to a gram',
  },
  consistencies,
  'ratio',
  ({ id }) => [`as thick as ${id.replaceAll('-', ' ')}`, `as thick as a ${id.replaceAll('-', ' ')}`],
)
