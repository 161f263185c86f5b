import { bakingOrder, brickOven, brickOvenRecords, drawCoolingCurve, drawHeatScale, timeConstantFrom } from '@core/heat'
import * as fc from 'fast-check'
import { describe, expect, it, test } from 'vitest'
import { PottleError } from '../../../packages/core/src/error.js'

const parameterOf = (call: () => unknown): string | undefined => {
  try {
    call()
  } catch (error) {
    if (error instanceof PottleError) return error.faults[0]?.parameter
  }
  throw new Error('no named error')
}

describe('a brick oven', () => {
  it('falls and never rises, and its band widens from its start', () => {
    const moments = brickOven({ start: 232 }).curve(24, 13)
    for (const end of ['low', 'best', 'high'] as const) {
      const values = moments.map(({ value }) => value[end])
      expect(values).toEqual([...values].sort((a, b) => b - a))
    }
    expect(moments[0]?.value).toMatchObject({ low: 232, best: 232, high: 232 })
  })

  it('loses most of its heat to a full batch', () => {
    const full = brickOven({ start: 232, batchMinutes: 60 }).at(1).value.best
    const empty = brickOven({ start: 232 }).at(1).value.best
    expect(full).toBeLessThan(120)
    expect(empty).toBeGreaterThan(205)
  })

  it('takes a phrase for its start, with the doubt of the phrase', () => {
    const { start } = brickOven({ start: 'as hot as for bread' })
    expect(start.low).toBeLessThan(start.best)
    expect(brickOven({ start: 'a slack oven', year: 1660 }).start.high).toBeGreaterThan(brickOven({ start: 'a slack oven' }).start.high)
  })

  it('answers what the oven was two hours after the bread came out', () => {
    expect(brickOven({ minutesAfter: 120 }).moment).toEqual(brickOven().at(2))
    expect(brickOven().at(2).value.best).toBeLessThan(brickOven().at(0).value.best)
  })

  it('reaches a temperature when the curve has it', () => {
    const oven = brickOven({ start: 232 })
    const at = oven.reaches(150)!
    expect(oven.at(at.best).value.best).toBeCloseTo(150, 0)
    expect(at.low).toBeLessThan(at.best)
    expect(at.best).toBeLessThan(at.high)
    expect(oven.reaches(10)).toBeNull()
    expect(oven.reaches(300)?.best).toBe(0)
  })

  it('fits the time constant that made a curve', () => {
    fc.assert(
      fc.property(fc.double({ min: 1, max: 30, noNaN: true }), fc.double({ min: 0.5, max: 20, noNaN: true }), (tau, hours) => {
        const end = 20 + 230 * Math.exp(-hours / tau)
        fc.pre(end > 20.001)
        expect(timeConstantFrom(250, end, hours, 20) / tau).toBeCloseTo(1, 6)
      }),
    )
  })

  test.each([
    [{ start: 700 }, 'start'],
    [{ start: -400 }, 'start'],
    [{ start: 10 }, 'start'],
    [{ start: { low: 200, best: 150, high: 100 } }, 'start'],
    [{ timeConstant: 0 }, 'timeConstant'],
    [{ timeConstant: { low: -1, best: 2, high: 3 } }, 'timeConstant'],
    [{ batchMinutes: -5 }, 'batchMinutes'],
    [{ minutesAfter: -5 }, 'hours'],
    [{ ambient: Number.NaN }, 'ambient'],
  ])('refuses %j', (options, parameter) => {
    expect(parameterOf(() => brickOven(options))).toBe(parameter)
  })

  it('keeps the records that its time constants rest on', () => {
    for (const { readings, ambient, fitted, label } of brickOvenRecords()) {
      const [first, last] = [readings[0]!, readings.at(-1)!]
      const tau = timeConstantFrom(first.value, last.value, last.hours - first.hours, ambient)
      expect(Math.abs(tau / fitted - 1), label).toBeLessThan(0.02)
    }
  })
})

describe('the order of a firing', () => {
  const six = [
    { name: 'custards', heat: 'a slow oven', minutes: 40 },
    { name: 'household bread', heat: 'as hot as for bread', minutes: 60 },
    { name: 'dried pippins', heat: 'a very cool oven', minutes: 360 },
    { name: 'tarts', heat: 'as for tarts', minutes: 30 },
    { name: 'sponge biscuits', heat: 'a moderate oven', minutes: 15 },
    { name: 'almond drops', heat: 'a very mild oven', minutes: 30 },
  ]

  it('is from the hottest to the coolest', () => {
    expect(bakingOrder(six).map(({ name }) => name)).toEqual([
      'household bread',
      'tarts',
      'sponge biscuits',
      'custards',
      'almond drops',
      'dried pippins',
    ])
  })

  it('puts each in while the oven has its heat', () => {
    for (const { opens, closes, goesIn, comesOut, oven, wants } of bakingOrder(six)) {
      expect(goesIn).toBeGreaterThanOrEqual(opens)
      expect(goesIn).toBeLessThanOrEqual(closes)
      expect(comesOut).toBeGreaterThan(goesIn)
      expect(oven).toBeGreaterThanOrEqual(wants.low - 1)
      expect(oven).toBeLessThanOrEqual(wants.high + 1)
    }
  })

  it('makes each wait for the one before where the oven holds one', () => {
    const laid = bakingOrder(six, { oneAtATime: true })
    laid.slice(1).forEach((bake, i) => {
      expect(bake.goesIn).toBeGreaterThanOrEqual(laid[i]!.comesOut - 1e-4)
    })
  })

  test.each([
    ['brawn', [{ name: 'brawn', heat: 'as hot as possible' }], { start: 200 }, /brawn wants at least/],
    [
      'late',
      [
        { name: 'pies', heat: 'a hot oven', minutes: 300 },
        { name: 'cakes', heat: 'a quick oven', minutes: 30 },
      ],
      { oneAtATime: true, start: 240 },
      /cannot go in/,
    ],
    ['long', [{ name: 'pippins', heat: 'a very cool oven', minutes: 2000 }], { start: 230 }, /pippins would come out/],
    ['cold', [{ name: 'ices', heat: 5 }], { start: 230 }, /no warmer than the room/],
  ])('names what cannot be baked: %s', (_, bakes, firing, said) => {
    expect(() => bakingOrder(bakes, firing)).toThrow(said)
  })

  it('takes degrees in figures, with all their digits', () => {
    const [only] = bakingOrder([{ name: 'pie', heat: 176.66666666666666 }], { start: 230 })
    expect(only?.wants.best).toBeCloseTo(176.667, 2)
  })

  it('refuses an empty list, a nameless receipt and a time of nothing', () => {
    expect(parameterOf(() => bakingOrder([]))).toBe('bakes')
    expect(parameterOf(() => bakingOrder([{ name: '', heat: 'slow' }]))).toBe('name')
    expect(parameterOf(() => bakingOrder([{ name: 'pie', heat: 'slow', minutes: 0 }]))).toBe('minutes')
  })
})

describe('pictures', () => {
  const sound = (svg: string): void => {
    expect(svg.startsWith('<svg xmlns="http://www.w3.org/2000/svg"')).toBe(true)
    expect(svg.trimEnd().endsWith('</svg>')).toBe(true)
    expect(svg).toMatch(/role="img" aria-labelledby="[\w-]+-title [\w-]+-desc"/)
    expect(svg).not.toMatch(/NaN|Infinity|undefined/)
    expect((svg.match(/<(text|title|desc)\b/g) ?? []).length).toBe((svg.match(/<\/(text|title|desc)>/g) ?? []).length)
    expect(svg.replace(/xmlns="[^"]*"/, '')).not.toMatch(/https?:/)
  }

  it('draws the scale of heats for any year, and says it in words', () => {
    sound(drawHeatScale())
    const svg = drawHeatScale({ year: 1660 })
    sound(svg)
    expect(svg).toMatch(/<desc[^>]*>.*slow: 107 to 184 degrees Celsius/)
    expect(() => drawHeatScale({ year: 9999 })).toThrow(PottleError)
  })

  it('draws a cooling oven with its heats and receipts', () => {
    const bakes = bakingOrder([{ name: 'pies & <tarts>', heat: 'as for pies', minutes: 60 }], { start: 232 })
    const svg = drawCoolingCurve(brickOven({ start: 232 }), { bakes, title: 'A firing at Saltmarsh Hall', id: 'hall' })
    sound(svg)
    expect(svg).toContain('pies &amp; &lt;tarts&gt;')
    expect(svg).toContain('id="hall-title"')
    expect(() => drawCoolingCurve(brickOven({ start: 232 }), { hours: 0 })).toThrow(PottleError)
  })

  it('leaves out what XML has no place for', () => {
    expect(drawHeatScale({ title: 'a\u0000b\u0008c' })).toContain('>abc<')
  })
})
