/** Years between which no table changes share one answer: it has to be the one that each of them has by itself. */
import { type Answer, convert } from '@pottle/core'
import { goods, heaps, measures, pieces, standards, tolerances, usage, vessels } from '@pottle/core/tables'
import { describe, expect, test } from 'vitest'

const things = ['cream', 'flour', 'butter', 'ale', 'brown sugar', 'salmon', 'honey', 'coals', 'rice', 'wine', 'maize meal']
/** Words in front of a measure that name its standard, or heap it. */
const words = ['', 'wine ', 'ale ', 'heaped ', 'Scotch ', 'old ', 'troy ']
const places = ['england', 'london', 'scotland', 'america', 'ireland']

/** Every year in which some row begins or ends, and its neighbours. */
const rows = [
  ...[...measures.flatMap(({ senses }) => senses), ...standards, ...usage, ...tolerances],
  ...[...vessels, ...pieces].flatMap(({ spells }) => spells),
  ...[...heaps, ...goods.flatMap(({ printed = [] }) => printed)],
]
const ends = rows.flatMap(({ years }) => (years ? [years[0] - 1, years[0], years[1], years[1] + 1] : []))
const years = [...new Set(ends)].filter((year) => year >= 1266 && year <= 1914).sort((a, b) => a - b)

/** What a year has to do with, whatever the coverage: not the ends of the bands. */
function tell({ value: { best, quantity }, modern, senses, notes, sources }: Answer) {
  const told = senses.map(({ id, label, likelihood, best, exact, steps }) => ({ id, label, likelihood, best, exact, steps }))
  return { best, quantity, modern: modern.map(({ unit, best }) => ({ unit, best })), told, notes, sources }
}

function answer(phrase: string, options: Parameters<typeof convert>[1]): unknown {
  try {
    return tell(convert(phrase, options))
  } catch (error) {
    return (error as Error).message
  }
}

describe('an answer of a year is its own', () => {
  test('there are years enough to tell', () => expect(years.length).toBeGreaterThan(100))

  const asked = [
    ...measures.map(({ id }, i) => `2 ${words[i % words.length]}${id} of ${things[i % things.length]}`),
    ...vessels.map(({ label }, i) => `3 ${label} of ${things[i % things.length]}`),
    ...pieces.map(({ measure, names }) => (measure === 'none' ? `4 ${names[0]}` : `4 ${measure} of ${names[0]}`)),
  ]
  test('most of them have an answer in some year', () => {
    const answered = asked.filter((phrase, i) =>
      years.some((year) => typeof answer(phrase, { year, place: places[i % places.length]! }) === 'object'),
    )
    expect(answered.length).toBeGreaterThan(asked.length * 0.75)
  })

  test.each(asked.map((phrase, i) => [phrase, places[i % places.length]!] as const))('%s, %s', (phrase, place) => {
    years.forEach((year, k) => {
      // A coverage that no other year is asked with has no memory to share.
      const alone = answer(phrase, { year, place, coverage: 0.8 + k / 10_000 })
      expect(answer(phrase, { year, place }), `${year}`).toEqual(alone)
    })
  })
})
