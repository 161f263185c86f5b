import { findGood, type PennyworthRow, pennyworths } from '@pottle/core/tables'
import { type Article, attestation, rangeOf, type Shelf, shelf, sizeOf } from '../article.js'

const at = '/measures/pennyworths'

const nameOf = (thing: string): string => findGood(thing)?.label ?? thing.replaceAll('-', ' ')

function articleOf(thing: string, rows: readonly PennyworthRow[]): Article {
  const quantity = rows[0]!.quantity ?? 'mass'
  return {
    id: thing,
    address: `${at}/${thing}`,
    label: `a pennyworth of ${nameOf(thing)}`,
    names: [],
    comes: rangeOf(
      rows.map(({ best }) => best),
      quantity,
    ),
    asks: [`a pennyworth of ${thing.replaceAll('-', ' ')}`],
    findings: rows.map(({ id, label, things, low, best, high, ...row }) => ({
      id,
      label,
      ...sizeOf({ low, best, high }, quantity),
      ...attestation(row),
      things: things.length > 1 ? things : null,
    })),
  }
}

function articles(): readonly Article[] {
  const things = [...new Set(pennyworths.map(({ things: [first] }) => first!))]
  return things.map((thing) =>
    articleOf(
      thing,
      pennyworths.filter((row) => row.things[0] === thing),
    ),
  )
}

export const pennyworthShelf: Shelf = shelf(
  { address: at, title: 'Pennyworths', about: 'What a penny bought, from the prices of the time.' },
  articles,
)
