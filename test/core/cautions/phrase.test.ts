/** A reading keeps no more of a phrase than what was measured; what is dangerous about the rest has to be said all the same. */
import { convert } from '@pottle/core'
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
})
