import {
  type BakePlanOptions,
  bakePlan,
  coreTemperatures,
  firstTerm,
  fourierFor,
  minutesByRule,
  minutesToReach,
  roastingMinutes,
  roastingRules,
  temperatureLeft,
} from '@core/heat'
import * as fc from 'fast-check'
import { describe, expect, it, test } from 'vitest'
import { PottleError } from '../../../packages/core/src/error.js'

const tart: BakePlanOptions = {
  food: 'custard',
  from: { shape: 'tart', size: { diameter: 70, depth: 25 }, minutes: 30, celsius: 176.7 },
  to: { shape: 'pie', size: { diameter: 220, depth: 35 } },
}

const parameterOf = (change: object): string | undefined => {
  try {
    bakePlan({ ...tart, ...change })
  } catch (error) {
    if (error instanceof PottleError) return error.faults[0]?.parameter
  }
  throw new Error('no named error')
}

describe('conduction', () => {
  it('begins at one and dies away, at the centre slower than at the surface', () => {
    for (const solid of ['slab', 'cylinder', 'sphere'] as const)
      for (const biot of [0.05, 1, 20, Number.POSITIVE_INFINITY]) {
        expect(temperatureLeft(solid, biot, 0)).toBeCloseTo(1, 1)
        const course = [0.05, 0.1, 0.3, 1, 3].map((fourier) => temperatureLeft(solid, biot, fourier))
        expect(course).toEqual([...course].sort((a, b) => b - a))
        expect(temperatureLeft(solid, biot, 0.2, 1)).toBeLessThanOrEqual(temperatureLeft(solid, biot, 0.2))
      }
  })

  it('finds the time of what it finds at a time', () => {
    fc.assert(
      fc.property(
        fc.constantFrom('slab' as const, 'cylinder' as const, 'sphere' as const),
        fc.double({ min: 0.05, max: 50, noNaN: true }),
        fc.double({ min: 0.05, max: 0.9, noNaN: true }),
        (solid, biot, left) => {
          expect(temperatureLeft(solid, biot, fourierFor(solid, biot, left))).toBeCloseTo(left, 6)
        },
      ),
      { numRuns: 30 },
    )
  })

  it('refuses what is no body', () => {
    expect(() => firstTerm('cube' as never, 1)).toThrow(/slab, cylinder, sphere/)
    expect(() => firstTerm('slab', 0)).toThrow(PottleError)
    expect(() => temperatureLeft('slab', 1, -1)).toThrow(PottleError)
    expect(() => fourierFor('slab', 1, 1)).toThrow(PottleError)
    const body = { solid: 'slab' as const, half: 10, conductivity: 0.5, diffusivity: 1.4e-7, surface: 20, start: 20, oven: 180, target: 80 }
    expect(() => minutesToReach({ ...body, half: 0 })).toThrow(/mm above zero/)
    expect(() => minutesToReach({ ...body, oven: 70 })).toThrow(/does not bring/)
  })
})

describe('a bake plan', () => {
  it('gives the same time for the same dish', () => {
    const { minutes } = bakePlan({ ...tart, to: { shape: 'tart', size: { diameter: 70, depth: 25 } } })
    expect(minutes).toEqual({ early: 30, nominal: 30, late: 30 })
  })

  it('goes there and back', () => {
    const { minutes } = bakePlan(tart)
    const back = bakePlan({
      food: 'custard',
      from: { ...tart.to, minutes: minutes.nominal, celsius: 176.7 },
      to: { shape: tart.from.shape, size: tart.from.size },
    })
    expect(back.minutes.nominal).toBeCloseTo(30, 0)
  })

  it('tells signs, settings, core temperature and what it takes for granted', () => {
    const plan = bakePlan(tart)
    expect(plan.signs.length).toBeGreaterThan(1)
    expect(plan.core).toMatchObject({ id: 'egg-dishes', safe: true })
    expect(plan.settings.gasMark.text).toBe('gas mark 4')
    expect(plan.assumptions.length).toBeGreaterThan(1)
    expect(plan.text).toMatch(/look first at 50/)
  })

  it('takes the highest core temperature of what is in it', () => {
    expect(bakePlan({ ...tart, food: 'pastry' }).core).toBeNull()
    expect(bakePlan({ ...tart, food: 'pastry', contains: ['egg'] }).core?.id).toBe('egg-dishes')
    expect(bakePlan({ ...tart, food: 'pastry', contains: ['egg', 'poultry'] }).core?.id).toBe('poultry')
    expect(bakePlan({ ...tart, food: 'bread', contains: ['milk'] }).core?.id).toBe('casseroles')
  })

  it('looks sooner and sets lower in a fan oven', () => {
    const [still, fan] = [bakePlan(tart), bakePlan({ ...tart, fan: true })]
    expect(fan.minutes.early).toBeLessThan(still.minutes.early)
    expect(fan.settings.degCFan.best).toBeCloseTo(156.7, 3)
  })

  it('sets a dish of more than twice the depth one step lower', () => {
    const deep = bakePlan({
      food: 'batter',
      from: { shape: 'cake', size: { diameter: 150, depth: 40 }, minutes: 80, celsius: 162.8 },
      to: { shape: 'cake', size: { diameter: 250, depth: 90 } },
    })
    expect(deep.celsius).toBeLessThan(150)
    expect(deep.assumptions.join(' ')).toMatch(/one step lower/)
  })

  it('takes longer in a cooler oven and less in a hotter one', () => {
    const at = (celsius: number) => bakePlan({ ...tart, to: { ...tart.to, celsius } }).minutes.nominal
    expect(at(150)).toBeGreaterThan(at(176.7))
    expect(at(200)).toBeLessThan(at(176.7))
  })

  it('reads a depth out of a volume, and kitchen names of shapes and foods', () => {
    const round = bakePlan({ ...tart, to: { shape: 'round', size: { diameter: 220, volume: 1330.46 } } })
    expect(round.minutes.nominal).toBeCloseTo(bakePlan(tart).minutes.nominal, 0)
    expect(bakePlan({ ...tart, food: 'Quiche' }).food).toBe('custard')
    expect(bakePlan({ ...tart, to: { shape: 'tin', size: { length: 200, width: 100, depth: 60 } } }).ratio).toBeGreaterThan(1)
    expect(bakePlan({ ...tart, to: { shape: 'slab', size: { depth: 35 } } }).ratio).toBeGreaterThan(bakePlan(tart).ratio)
  })

  it('warns of an oven too cool for roasting', () => {
    const joint = (celsius: number) =>
      bakePlan({
        food: 'poultry',
        from: { shape: 'bird', size: { mass: 2000 }, minutes: 90, celsius },
        to: { shape: 'bird', size: { mass: 4000 } },
      })
    expect(joint(150).warnings.join(' ')).toMatch(/325 °F/)
    expect(joint(180).warnings).toEqual([])
    expect(joint(180).minutes.nominal).toBeCloseTo(90 * 2 ** (2 / 3), 1)
  })

  test.each([
    [{ food: 'coal' }, 'food'],
    [{ from: undefined }, 'from'],
    [{ to: undefined }, 'to'],
    [{ from: { ...tart.from, minutes: 0 } }, 'from.minutes'],
    [{ from: { ...tart.from, celsius: 900 } }, 'from.celsius'],
    [{ from: { ...tart.from, celsius: -300 } }, 'from.celsius'],
    [{ from: { ...tart.from, celsius: 60 } }, 'from.celsius'],
    [{ from: { ...tart.from, shape: 'blob' } }, 'from.shape'],
    [{ to: { shape: 'pie', size: {} } }, 'to.size.diameter'],
    [{ to: { shape: 'pie' } }, 'to.size.diameter'],
    [{ to: { shape: 'pie', size: { diameter: 200, depth: 0 } } }, 'to.size.depth'],
    [{ to: { shape: 'pie', size: { diameter: 200, depth: -4 } } }, 'to.size.depth'],
    [{ to: { shape: 'pie', size: { diameter: 99999, depth: 4 } } }, 'to.size.diameter'],
    [{ to: { shape: 'joint', size: { mass: 0 } } }, 'to.size.mass'],
    [{ contains: ['gravel'] }, 'contains'],
    [{ fan: true, fanRule: 'guess' }, 'fanRule'],
  ])('refuses %j', (change, parameter) => {
    expect(parameterOf(change)).toBe(parameter)
  })

  it('never gives a time that is not a number, whatever the dish', () => {
    const length = fc.double({ min: 5, max: 500, noNaN: true })
    fc.assert(
      fc.property(length, length, length, length, (a, b, c, d) => {
        const { early, nominal, late } = bakePlan({
          food: 'batter',
          from: { shape: 'cake', size: { diameter: a, depth: b }, minutes: 30, celsius: 180 },
          to: { shape: 'cake', size: { diameter: c, depth: d } },
        }).minutes
        expect(Number.isFinite(early + nominal + late)).toBe(true)
        expect(early).toBeLessThanOrEqual(nominal)
        expect(nominal).toBeLessThanOrEqual(late)
      }),
      { numRuns: 100 },
    )
  })
})

describe('roasting', () => {
  it('goes by the weight to the power two thirds', () => {
    expect(roastingMinutes(8000).best / roastingMinutes(1000).best).toBeCloseTo(4, 4)
    expect(() => roastingMinutes(0)).toThrow(PottleError)
  })

  it('keeps the rules of the books', () => {
    expect(roastingRules().length).toBeGreaterThan(50)
    expect(() => minutesByRule('nobody', 1000)).toThrow(PottleError)
  })

  it('marks an old core temperature that is not safe', () => {
    expect(coreTemperatures().find(({ id }) => id === 'beeton-1861.poultry')).toMatchObject({ safe: false, degF: [130, 140] })
  })
})
