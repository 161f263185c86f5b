import { convert, PottleError } from '@pottle/core'
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

  it('is asked for in one unit, and refuses a mass', () => {
    expect(convert('a moderate oven', { year: 1860, to: 'gas-mark' }).modern).toHaveLength(1)
    expect(() => convert('a moderate oven', { year: 1860, to: 'g' })).toThrow(PottleError)
  })
})
