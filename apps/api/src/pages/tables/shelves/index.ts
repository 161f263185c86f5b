import type { Article, Shelf } from '../article.js'
import { liquidShelf, sugarShelf } from './boiling.js'
import { coinShelf } from './coins.js'
import { comparisonShelf } from './comparisons.js'
import { goodsShelf } from './goods.js'
import { loafShelf } from './loaves.js'
import { measuredShelves } from './measured.js'
import { pennyworthShelf } from './pennyworths.js'
import { eggShelf, lengthShelf, pieceShelf, thicknessShelf, timeShelf, vesselShelf } from './sized.js'

/** Everything that a receipt measures by, what the law sized first. */
export const measureShelves: readonly Shelf[] = [
  ...measuredShelves,
  vesselShelf,
  comparisonShelf,
  coinShelf,
  pieceShelf,
  eggShelf,
  loafShelf,
  pennyworthShelf,
  lengthShelf,
  timeShelf,
  thicknessShelf,
]

/** Every shelf that has a page. */
export const shelves: readonly Shelf[] = [...measureShelves, sugarShelf, liquidShelf, goodsShelf]

/** The shelf that has its page at an address. */
export function shelfAt(address: string): Shelf | undefined {
  return shelves.find((shelf) => shelf.address === address)
}

interface Found {
  readonly shelf: Shelf
  readonly article: Article
}

let byAddress: ReadonlyMap<string, Found> | undefined

/** What has a page at an address. */
export function articleAt(address: string): Found | undefined {
  byAddress ??= new Map(shelves.flatMap((shelf) => shelf.articles.map((article) => [article.address, { shelf, article }])))
  return byAddress.get(address)
}
