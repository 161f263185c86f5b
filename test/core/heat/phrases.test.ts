import { findHeat } from '@core/heat'
import * as fc from 'fast-check'
import { describe, expect, it, test } from 'vitest'
import { PottleError } from '../../../packages/core/src/error.js'
import { heatRelations, heats, heatWitnesses } from '../../../packages/core/src/tables/index.js'

const heatOf = (phrase: string, year?: number): string => {
  const { relation, heat } = findHeat(phrase, year === undefined ? {} : { year })
  return relation?.id ?? heat.id
}

describe('phrases of dated books', () => {
  test.each(heatWitnesses.map(({ id, phrase, year, heat }) => ({ id, phrase, year, heat })))(
    '$id: $phrase ($year) is $heat',
    ({ phrase, year, heat }) => {
      expect(heatOf(phrase, year)).toBe(heat)
      expect(findHeat(phrase, { year }).unread).toEqual([])
    },
  )
})

describe('every name in the tables', () => {
  const names = heats.flatMap(({ id, names: all }) => all.map(({ words, years }) => ({ id, words, year: years?.[0] })))
  test.each(names)('$words ($year) may mean $id', ({ id, words, year }) => {
    const { heat, others } = findHeat(`a ${words} oven`, year === undefined ? {} : { year })
    expect([heat.id, ...others.map((other) => other.id)]).toContain(id)
  })

  const relations = heatRelations.flatMap(({ id, kind, goods, names: all }) => [
    ...goods.map((goods) => ({ id, phrase: kind === 'after' ? `after the ${goods} is drawn` : `as hot as for ${goods}` })),
    ...all.map((phrase) => ({ id, phrase })),
  ])
  test.each(relations)('$phrase is $id', ({ id, phrase }) => {
    expect(heatOf(phrase)).toBe(id)
  })
})

describe('spelling', () => {
  test.each([
    ['a whot ouen', 'hot'],
    ['a hotte oven', 'hot'],
    ['a Quicke Oven', 'hot'],
    ['a quik ovene', 'hot'],
    ['a slacke ouen', 'slow'],
    ['a moderat oven', 'moderate'],
    ['a ſlow oven', 'slow'],
    ['a sharpe oven', 'very-hot'],
    ['a scortching oven', 'scorching'],
    ['a soking heat', 'moderately-slow'],
    ['as hot as for manchett', 'as-for.manchet'],
    ['as whot as for maunchet', 'as-for.manchet'],
    ['as hott as for mancheat', 'as-for.manchet'],
    ['as hot as for mainchet', 'as-for.manchet'],
    ['as hot as for houshold bread', 'as-for.household'],
    ['as hot as for howshold breade', 'as-for.household'],
    ['when the pyes come forth', 'after.pies'],
    ['after the bread is drawne', 'after.bread'],
  ])('%s is %s', (phrase, heat) => {
    expect(heatOf(phrase)).toBe(heat)
  })

  it('does not take cheat bread for manchet', () => {
    expect(heatOf('as hot as for cheat bread')).toBe('as-for.household')
  })
})

describe('modifiers and comparisons', () => {
  test.each([
    ['pretty hot', 'moderately-hot'],
    ['not too quick', 'moderately-hot'],
    ['not very hot', 'moderately-hot'],
    ['not too slow', 'moderately-slow'],
    ['neither too hot nor too cold', 'moderate'],
    ['exceeding hot', 'very-hot'],
    ['a very gentle oven', 'very-slow'],
    ['rather slack', 'moderately-slow'],
    ['tolerably fierce', 'very-hot'],
    ['something slower than for bread', 'moderately-hot'],
    ['a little hotter then for manchet', 'hot'],
    ['much cooler than for household bread', 'moderate'],
    ['not so hot as for manchet', 'moderate'],
    ['no quicker than for manchet', 'as-for.manchet'],
    ['half so hot as for pies', 'moderately-slow'],
    ['hot enough for pies', 'as-for.pies'],
    ['as hot as it can be made', 'fierce'],
    ['a slower oven', 'slow'],
    ['brisk rather than slow', 'hot'],
    ['as for gingerbread', 'moderate'],
    ['a cool oven all night', 'overnight'],
    ['an oven that will not brown paper', 'slow'],
    ['an oven that browns white paper in seven minutes', 'slow'],
    ['flour on the floor browns in one minute', 'hot'],
  ])('%s is %s', (phrase, heat) => {
    expect(heatOf(phrase)).toBe(heat)
  })

  it('keeps a heat below what is denied', () => {
    const whole = findHeat('a brisk oven')
    const lower = findHeat('brisk, but not too hot')
    expect(lower.heat.id).toBe('hot')
    expect(lower.core.low).toBe(whole.core.low)
    expect(lower.core.high).toBeLessThan(whole.core.high)
    expect(findHeat('hot but not fierce').core).toEqual(whole.core)
  })

  it('spans an oven between two heats', () => {
    const { core, heat } = findHeat('a moderate or slow oven')
    expect(heat.id).toBe('moderate')
    expect(core.low).toBe(findHeat('slow oven').core.low)
    expect(core.high).toBe(findHeat('moderate oven').core.high)
  })

  it('reads a falling heat in two halves', () => {
    const reading = findHeat('a quick oven at first, then a slow one')
    expect([reading.heat.id, reading.then?.heat.id]).toEqual(['hot', 'slow'])
  })

  it('says that a fire is no oven', () => {
    expect(findHeat('a slow fire').of).toBe('fire')
    expect(findHeat('a slow fire').notes.join(' ')).toMatch(/fire/)
  })
})

describe('meanings that move with the year', () => {
  test.each([
    ['gentle', 1700, 'slow'],
    ['gentle', 1866, 'moderate'],
    ['temperate', 1660, 'drying'],
    ['temperate', 1745, 'slow'],
    ['sharp', 1846, 'hot'],
    ['sharp', 1904, 'very-hot'],
    ['solid', 1904, 'moderate'],
    ['solid', 1822, 'moderately-slow'],
  ])('a %s oven of %i is %s', (word, year, heat) => {
    expect(heatOf(`a ${word} oven`, year)).toBe(heat)
  })

  it('gives the other meaning with its likelihood', () => {
    const { likelihood, others } = findHeat('a sharp oven', { year: 1846 })
    expect(others.map(({ id }) => id)).toEqual(['very-hot'])
    expect(likelihood + others[0]!.likelihood).toBeCloseTo(1)
  })

  it('widens with age and never past the second neighbour', () => {
    const widths = [1660, 1850, 1910, 1950].map((year) => {
      const { value } = findHeat('a moderate oven', { year })
      return value.high - value.low
    })
    expect(widths).toEqual([...widths].sort((a, b) => b - a))
    for (const year of [1660, 1850]) {
      const { value } = findHeat('a moderate oven', { year })
      expect(value.low).toBeGreaterThanOrEqual(findHeat('a slow oven').value.best)
      expect(value.high).toBeLessThanOrEqual(findHeat('a hot oven').value.best)
    }
  })
})

describe('figures in the phrase', () => {
  test.each([
    ['gas mark 4', 176.667],
    ['Regulo ½', 121.111],
    ['an oven of 350 F', 176.667],
    ['at 180 degrees C', 180],
    ['160 R', 200],
    ['176.66666666666666 C', 176.667],
  ])('%s is %f degC', (phrase, celsius) => {
    const { value } = findHeat(phrase)
    expect(value.best).toBeCloseTo(celsius, 2)
    expect(value.low).toBe(value.high)
  })
})

describe('what a reading carries', () => {
  it('has its claims nearest in time first, with goods, tests, settings, steps and method', () => {
    const reading = findHeat('a slow oven', { year: 1920 })
    expect(reading.claims[0]).toMatchObject({ low: 250, high: 275, unit: 'degF', year: 1920, checked: 'read' })
    expect(reading.goods.length).toBeGreaterThan(3)
    expect(reading.tests.length).toBeGreaterThan(0)
    expect(reading.modern.map(({ unit }) => unit)).toEqual(['degF', 'gas-mark', 'degC-fan'])
    expect(reading.steps.length).toBe(3)
    expect(reading.weakest).toBe('judgement')
    expect(findHeat('a slow oven', { year: 1961 }).weakest).toBe('handbook')
    for (const step of reading.steps) expect(step.sources.length).toBeGreaterThan(0)
    expect(reading.method.length).toBeGreaterThan(200)
  })

  it('names the relation and that the oven is falling', () => {
    expect(findHeat('after the bread is drawn').relation).toMatchObject({ id: 'after.bread', falling: true })
    expect(findHeat('a brisk oven, after the white bread is drawn').notes.join(' ')).toMatch(/falling/)
  })
})

describe('what cannot be read', () => {
  const fault = (phrase: string, setting = {}): PottleError => {
    try {
      findHeat(phrase, setting)
    } catch (error) {
      if (error instanceof PottleError) return error
    }
    throw new Error(`${phrase} was read`)
  }

  test.each(['a slow quick oven', 'a cool hot oven', 'a slack and fierce oven'])('%s contradicts itself', (phrase) => {
    const error = fault(phrase)
    expect(error.code).toBe('bad-option')
    expect(error.message).toMatch(/contradict/)
  })

  it('names the nearest heats for words that name none', () => {
    const error = fault('a brizk oven')
    expect(error.code).toBe('unreadable')
    expect(error.words?.nearest).toContain('brisk')
    expect(error.words?.unread).toEqual(['brizk'])
    const { nearest } = fault('a tepid oven').words!
    expect(new Set(nearest).size).toBe(nearest.length)
  })

  test.each(['a dutch oven', 'a close oven', 'a sweet oven'])('%s is no heat', (phrase) => {
    expect(fault(phrase).message).toMatch(/kind of oven and not a heat/)
  })

  test.each(['5000 F', '-900 F', '700 C', 'gas mark 40'])('%s is no oven', (phrase) => {
    expect(fault(phrase).code).toBe('bad-option')
  })

  test.each(['', '   ', 'hot '.repeat(400)])('refuses an empty or endless phrase', (phrase) => {
    expect(fault(phrase).code).toBe('bad-option')
  })

  test.each([0, 3000, 1700.5, Number.NaN])('refuses the year %d', (year) => {
    expect(fault('slow', { year }).faults[0]?.parameter).toBe('year')
  })
})

it('answers or names its error for any words whatever, and the same twice', () => {
  const word = fc.constantFrom(
    'slow',
    'quick',
    'not',
    'too',
    'very',
    'oven',
    'for',
    'bread',
    'than',
    'hotter',
    'after',
    'drawn',
    'as',
    'or',
    'then',
    'paper',
    'brown',
    'x',
  )
  fc.assert(
    fc.property(
      fc.oneof(
        fc.string({ maxLength: 60 }),
        fc.array(word, { maxLength: 14 }).map((words) => words.join(' ')),
      ),
      (phrase) => {
        try {
          const { value } = findHeat(phrase)
          expect(value.low).toBeLessThanOrEqual(value.best)
          expect(value.best).toBeLessThanOrEqual(value.high)
          expect(findHeat(phrase).value).toEqual(value)
        } catch (error) {
          expect(error).toBeInstanceOf(PottleError)
        }
      },
    ),
    { numRuns: 400 },
  )
})
