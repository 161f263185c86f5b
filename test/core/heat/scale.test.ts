import { bandOf, product, unknown } from '@core/bands'
import {
  allFanRules,
  allGasMarks,
  allHeats,
  convertDegrees,
  fanSetting,
  fanTime,
  gasMarkExact,
  gasMarkNearest,
  gasMarkToFahrenheit,
  heatById,
  heatFromTest,
  method,
  ovenSettings,
  shapeOf,
  testsForHeat,
} from '@core/heat'
import * as fc from 'fast-check'
import { describe, expect, it, test } from 'vitest'
import { PottleError } from '../../../packages/core/src/error.js'

const celsius = (f: number): number => ((f - 32) * 5) / 9

describe('the scale', () => {
  it('is ordered from drying to scorching, in rank and in degrees', () => {
    const heats = allHeats()
    expect(heats.map(({ rank }) => rank)).toEqual(heats.map((_, i) => i))
    for (const end of ['low', 'best', 'high'] as const) {
      const ends = heats.map(({ band }) => band[end])
      expect(ends).toEqual([...ends].sort((a, b) => a - b))
    }
    expect(heats[0]?.id).toBe('drying')
    expect(heats.at(-1)?.id).toBe('scorching')
  })

  it('keeps each band within its ends and its core within the band', () => {
    for (const { band, core } of allHeats()) {
      expect(band.low).toBeLessThanOrEqual(core.low)
      expect(core.high).toBeLessThanOrEqual(band.high)
      expect(band.coverage).toBe(0.9)
    }
  })

  it('gives every heat aliases, settings and a method', () => {
    for (const heat of allHeats()) {
      expect(heat.aliases.length).toBeGreaterThan(1)
      expect(heat.modern).toHaveLength(3)
      expect(heat.method).toBe(method)
    }
    expect(allHeats().flatMap(({ aliases }) => aliases).length).toBeGreaterThan(60)
  })

  it('lets no figure from memory, of unnamed origin or off a dial vote', () => {
    for (const { claims } of allHeats())
      for (const claim of claims) if (claim.checked !== 'read' || claim.grade === 'practice') expect(claim.votes).toBe(false)
  })

  it('names the nearest heats for an unknown id', () => {
    expect(() => heatById('moderat')).toThrow(/moderate/)
    expect(() => heatById('moderat')).toThrow(PottleError)
  })
})

describe('settings', () => {
  const at = (best: number) => ovenSettings({ low: best, best, high: best, coverage: 0.9 })

  it('gives degrees, mark and fan with the band of each', () => {
    const { degF, gasMark, degCFan } = ovenSettings({ low: celsius(325), best: celsius(350), high: celsius(375), coverage: 0.9 })
    expect(degF).toMatchObject({ low: 325, best: 350, high: 375, text: '350 °F (325 to 375)' })
    expect(gasMark).toMatchObject({ low: 3, best: 4, high: 5, text: 'gas mark 4', exact: 4 })
    expect(degCFan.best).toBeCloseTo(celsius(350) - 20, 3)
  })

  it('says when no mark of the dial is near', () => {
    expect(at(60).gasMark).toMatchObject({ nearest: null, text: 'below gas mark ¼' })
    expect(at(300).gasMark).toMatchObject({ nearest: null, text: 'above gas mark 9' })
    expect(at(121).gasMark.text).toBe('gas mark ½')
  })

  test.each([-300, 601, Number.NaN, Number.POSITIVE_INFINITY])('refuses %d degC', (value) => {
    expect(() => at(value)).toThrow(PottleError)
  })

  it('goes from mark to degrees and back', () => {
    fc.assert(
      fc.property(fc.double({ min: 0.1, max: 12, noNaN: true }), (mark) => {
        expect(gasMarkExact(celsius(gasMarkToFahrenheit(mark)))).toBeCloseTo(mark, 9)
      }),
    )
    for (const { mark, degC } of allGasMarks()) {
      expect(gasMarkNearest(degC)?.mark).toBe(mark)
      // Six significant digits, as every other figure has.
      expect(String(degC).length).toBeLessThanOrEqual(7)
    }
    for (const mark of [0, -1, 13]) expect(() => gasMarkToFahrenheit(mark)).toThrow(PottleError)
  })

  it('reads fan rules between and beyond the pairs of a table', () => {
    expect(fanSetting(210, 'growing')).toBe(175)
    expect(fanSetting(260, 'growing')).toBe(210)
    expect(fanSetting(90, 'growing')).toBe(90)
    expect(fanSetting(180)).toBe(160)
    expect(fanTime(60)).toBe(50)
    expect(allFanRules()).toHaveLength(6)
    expect(() => fanSetting(180, 'guess')).toThrow(/less-20/)
  })

  it('converts every scale there and back', () => {
    for (const scale of ['degC', 'degF', 'degR', 'K'] as const)
      expect(convertDegrees(convertDegrees(137.5, 'degC', scale), scale, 'degC')).toBeCloseTo(137.5, 9)
    expect(convertDegrees(0, 'K', 'degC')).toBeCloseTo(-273.15, 9)
    expect(() => convertDegrees(-1, 'K', 'degC')).toThrow(/absolute zero/)
  })
})

describe('tests of an oven, both ways', () => {
  it('never gives a test that its own reading would not bear out', () => {
    for (const value of [150, 177, 204, 232])
      for (const { kind, heat } of testsForHeat(value)) {
        expect(kind).toMatch(/paper|flour|hand|sight/)
        expect(Math.abs(heatById(heat).band.best - value)).toBeLessThan(60)
      }
  })

  it('orders the colours of paper as the books do', () => {
    const best = (['light-yellow', 'dark-yellow', 'dark-brown'] as const).map(
      (colour) => heatFromTest({ kind: 'paper', colour, seconds: 300 }).value.best,
    )
    expect(best).toEqual([...best].sort((a, b) => a - b))
  })

  it('is the cooler the longer the hand is borne', () => {
    const best = [10, 15, 30].map((seconds) => heatFromTest({ kind: 'hand', seconds }).value.best)
    expect(best).toEqual([...best].sort((a, b) => b - a))
  })

  it('warns against the hand', () => {
    expect(heatFromTest({ kind: 'hand', seconds: 20 }).advice).toMatch(/thermometer/)
  })

  test.each([
    [{ kind: 'hand' }, 'seconds'],
    [{ kind: 'hand', seconds: -1 }, 'seconds'],
    [{ kind: 'hand', seconds: 500 }, 'seconds'],
    [{ kind: 'paper' }, 'colour'],
    [{ kind: 'paper', colour: 'blue' }, 'colour'],
    [{ kind: 'smell', seconds: 5 }, 'kind'],
  ])('refuses %j', (sign, parameter) => {
    try {
      heatFromTest(sign as never)
      throw new Error('was read')
    } catch (error) {
      expect(error).toBeInstanceOf(PottleError)
      expect((error as PottleError).faults[0]?.parameter).toBe(parameter)
    }
  })

  it('knows no test of an oven that cannot be', () => {
    expect(() => testsForHeat(900)).toThrow(PottleError)
    expect(testsForHeat(20)).toEqual([])
  })
})

it('puts a band into a shape that gives the band back', () => {
  fc.assert(
    fc.property(
      fc.tuple(
        fc.double({ min: 10, max: 300, noNaN: true }),
        fc.double({ min: 0, max: 1, noNaN: true }),
        fc.double({ min: 1, max: 200, noNaN: true }),
      ),
      ([low, part, width]) => {
        const band = { low, best: low + part * width, high: low + width, coverage: 0.9 }
        const back = bandOf(product(1, unknown('oven', shapeOf(band))))
        expect(Math.abs(back.low - band.low)).toBeLessThan(0.02 * width)
        expect(Math.abs(back.high - band.high)).toBeLessThan(0.02 * width)
        expect(Math.abs(back.best - band.best)).toBeLessThan(0.001 * width)
      },
    ),
    { numRuns: 40 },
  )
})
