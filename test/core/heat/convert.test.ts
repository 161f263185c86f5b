import { convert, findHeat, liquidHeat, PottleError, sugarHeight } from '@pottle/core'
import { describe, expect, it } from 'vitest'

describe('heats as temperatures of a conversion', () => {
  it('gives degC with settings, steps and sources', () => {
    const { value, modern, senses, sources, text } = convert('a slack oven', { year: 1796 })
    expect(value).toMatchObject({ quantity: 'temperature', unit: 'degC', coverage: 0.9 })
    expect(modern.map(({ unit }) => unit)).toEqual(['degC', 'degF', 'gas-mark', 'degC-fan'])
    expect(senses.map(({ id }) => id)).toEqual(['heat.slow'])
    expect(senses[0]?.steps.length).toBe(3)
    expect(sources.length).toBeGreaterThan(3)
    expect(text).toMatch(/°C.*gas mark/)
  })

  it('weighs the meanings that a span of years allows', () => {
    const { senses } = convert('a gentle oven', { year: '1780/1820' })
    expect(senses.map(({ id }) => id).sort()).toEqual(['heat.moderate', 'heat.slow'])
    expect(senses.reduce((sum, { likelihood }) => sum + likelihood, 0)).toBeCloseTo(1, 3)
  })

  it('gives a relation its own band', () => {
    const { value, senses } = convert('as hot as for manchet', { year: 1660 })
    expect(senses[0]?.id).toBe('heat.as-for.manchet')
    expect([value.low, value.best, value.high].map(Math.round)).toEqual([191, 204, 232])
  })

  it('says what is known besides, and which words gave nothing', () => {
    expect(convert('a gentle fire', { year: 1750 }).notes.join(' ')).toMatch(/Before 1800 gentle is a slow oven.*Of a fire/)
    const { reading, notes } = convert('a brisk merry oven', { year: 1750 })
    expect(reading.unread).toEqual(['merry'])
    expect(notes).toEqual(['These words gave nothing: merry.'])
  })

  it('is asked for in one unit, and refuses a mass', () => {
    expect(convert('a moderate oven', { year: 1860, to: 'gas-mark' }).modern).toHaveLength(1)
    expect(() => convert('a moderate oven', { year: 1860, to: 'g' })).toThrow(PottleError)
  })
})

describe('heights of sugar and warmths of liquids', () => {
  it.each([
    ['boil it to a candy height', 1672, sugarHeight('candy height', 1672).value],
    ['boil your sugar till it feathers', 1761, sugarHeight('feather', 1761).value],
    ['milk-warm', 1690, liquidHeat('milk-warm').value],
    ['something more than blood-warm', 1736, liquidHeat('something more than blood-warm').value],
    ['scalding hot', 1800, liquidHeat('scalding hot').value],
  ])('%s in %i is a temperature of no oven', (phrase, year, { best }) => {
    const { value, modern, senses } = convert(phrase, { year })
    expect(value).toMatchObject({ quantity: 'temperature', unit: 'degC' })
    expect(value.best).toBeCloseTo(best, 1)
    expect(modern.map(({ unit }) => unit)).toEqual(['degC', 'degF'])
    expect(senses[0]?.steps.length).toBe(1)
  })

  it('weighs what a name meant in a span of years', () => {
    const { senses } = convert('boil it to caramel', { year: '1880/1910' })
    expect(senses.map(({ id }) => id).sort()).toEqual(['sugar.caramel', 'sugar.clear-caramel'])
  })

  it('reads what the oven grammar reads, in the same degrees', () => {
    for (const phrase of [
      'something slower than for bread',
      'not so hot as for manchet',
      'an oven that will not brown paper',
      '180 degrees C',
    ])
      expect(convert(phrase, { year: 1700 }).value.best).toBeCloseTo(findHeat(phrase, { year: 1700 }).value.best, 0)
  })

  it('takes degrees without a scale for Fahrenheit, and says so', () => {
    const { value, notes } = findHeat('an oven of 350 degrees')
    expect(value.best).toBeCloseTo(176.7, 1)
    expect(notes.join()).toContain('Fahrenheit')
  })
})
