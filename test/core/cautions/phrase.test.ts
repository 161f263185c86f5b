/** A reading keeps no more of a phrase than what was measured; what is dangerous about the rest has to be said all the same. */
import { cautionsFor, convert } from '@pottle/core'
import { cautions } from '@pottle/core/tables'
import { describe, expect, test } from 'vitest'

/** The cautions that a thing alone calls for. */
const ofThings = cautions.filter(({ touches: { methods, heats } }) => !methods && !heats)
const cases = ofThings.flatMap(({ id, touches: { things = [] } }) => things.map((thing) => [thing, id] as const))

function idsFor(phrase: string): readonly string[] | undefined {
  try {
    return convert(phrase, { year: 1750 }).cautions.map(({ id }) => id)
  } catch {
    return undefined
  }
}

describe('a phrase that names a dangerous thing is answered with its caution', () => {
  test('there are things enough to tell', () => expect(cases.length).toBeGreaterThan(200))

  test.each(cases)('%s: %s', (thing, id) => {
    const asked = [`an ounce of ${thing}`, `a handful of ${thing}`, `2 pints of ${thing}`].map(idsFor).filter((ids) => ids !== undefined)
    expect(asked.length).toBeGreaterThan(0)
    for (const ids of asked) expect(ids).toContain(id)
  })

  test.each([
    ['a pint of cream,hemlock', 'poison-plants'],
    ['a pint of cream/hemlock', 'poison-plants'],
    ['2 oz.laurel leaves', 'cherry-laurel'],
    ['a pint of water\u00a0hemlock', 'poison-plants'],
  ])('%s: however tight the words stand', (phrase, id) => expect(idsFor(phrase)).toContain(id))
})

test('only an egg is borne by a brine; a laurel leaf that floats on a custard is in it', () => {
  const ids = (text: string) => cautionsFor({ text }).map(({ id }) => id)
  expect(ids('Float a laurel leaf on the custard.')).toContain('cherry-laurel')
  expect(ids('a brine that will bear an egg')).not.toContain('raw-egg')
  expect(ids('beat an egg and let it stand raw')).toContain('raw-egg')
})
