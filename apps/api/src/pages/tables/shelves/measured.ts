import { type CatalogueMeasure, type CatalogueSense, listMeasures, type MeasureKind } from '@pottle/core'
import type { Quantity } from '@pottle/core/tables'
import { inScale, scaleFor } from '../../parts/figures.js'
import { type Article, type Finding, rangeOf, type Shelf, shelf } from '../article.js'

const quantities: Readonly<Record<string, Quantity>> = { g: 'mass', ml: 'volume', each: 'count' }

function findingOf({ id, label, value, unit, years, place, things, grade, checked, sources }: CatalogueSense): Finding {
  const best = inScale(value, scaleFor(quantities[unit]!, value))
  return { id, label, best, years, place, things, grade, checked, sources: [...new Set(sources)] }
}

/** Some measures were a weight of one thing and a volume of another. */
function comesTo(senses: readonly CatalogueSense[]): string {
  const units = [...new Set(senses.map(({ unit }) => unit))]
  return units
    .map((one) =>
      rangeOf(
        senses.filter(({ unit }) => unit === one).map(({ value }) => value),
        quantities[one]!,
      ),
    )
    .join('; ')
}

/** Many measures are none by themselves: a nail of cheese is eight pounds, and a nail is an inch or two. */
function asksFor({ label, senses }: CatalogueMeasure): readonly string[] {
  const one = `${/^[aeiou]/.test(label) ? 'an' : 'a'} ${label}`
  const things = senses.flatMap((sense) => sense.things ?? []).map((thing) => thing.replaceAll('-', ' '))
  return [one, ...[...things, 'butter', 'ale', 'wheat', 'eggs', 'herrings', 'partridges', 'paper'].map((thing) => `${one} of ${thing}`)]
}

function articleOf(measure: CatalogueMeasure): Article {
  const { id, label, names, senses } = measure
  return { id, address: `/measures/${id}`, label, names, comes: comesTo(senses), asks: asksFor(measure), findings: senses.map(findingOf) }
}

const heads: readonly (readonly [MeasureKind, Omit<Shelf, 'articles'>])[] = [
  ['weight', { address: '/measures/weights', title: 'Weights', about: 'Pounds troy and avoirdupois, and what was sold by the stone.' }],
  [
    'capacity',
    {
      address: '/measures/capacities',
      title: 'Measures of capacity',
      about: 'By wine, by ale and by corn; casks and sacks by what was in them.',
    },
  ],
  ['count', { address: '/measures/counts', title: 'Counts', about: 'Dozens, scores, and hundreds of six score.' }],
]

/** What the law sized. */
export const measuredShelves: readonly Shelf[] = heads.map(([kind, head]) =>
  shelf(head, () =>
    listMeasures()
      .filter((measure) => measure.kind === kind)
      .map(articleOf),
  ),
)
