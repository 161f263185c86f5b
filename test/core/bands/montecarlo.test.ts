/** Bands against a million seeded draws each: both ends within 0.5 %. The draws use nothing of the library but the shapes. */
import {
  type Band,
  bandOf,
  type Expression,
  jointBand,
  lognormal,
  mixtureBand,
  power,
  product,
  rectangle,
  type Shape,
  sum,
  times,
  triangle,
  type Unknown,
  unknown,
} from '@core/bands'
import { describe, expect, it } from 'vitest'

const DRAWS = 1_000_000

/** A 32-bit xorshift-multiply generator: the draws are the same in every run. */
function generator(seed: number): () => number {
  let state = seed | 0
  return () => {
    state = (state + 0x6d2b79f5) | 0
    let bits = Math.imul(state ^ (state >>> 15), 1 | state)
    bits = (bits + Math.imul(bits ^ (bits >>> 7), 61 | bits)) ^ bits
    return ((bits ^ (bits >>> 14)) >>> 0) / 2 ** 32
  }
}

/** Rectangles and triangles by their inverse, log-normals by Box and Muller's transform. */
function draw(shape: Shape, random: () => number): number {
  switch (shape.shape) {
    case 'exact':
      return shape.value
    case 'rectangle':
      return shape.low + random() * (shape.high - shape.low)
    case 'triangle': {
      const { low, best, high } = shape
      const u = random()
      return u * (high - low) < best - low
        ? low + Math.sqrt(u * (high - low) * (best - low))
        : high - Math.sqrt((1 - u) * (high - low) * (high - best))
    }
    case 'lognormal': {
      const normal = Math.sqrt(-2 * Math.log(1 - random())) * Math.cos(2 * Math.PI * random())
      return shape.best * shape.factor ** (normal / 1.6448536269514722)
    }
  }
}

function unknownsOf(e: Expression): readonly Unknown[] {
  return [...new Map(e.flatMap(({ factors }) => factors.map(({ unknown }) => [unknown.id, unknown] as const))).values()]
}

function evaluate(e: Expression, values: ReadonlyMap<string, number>): number {
  let total = 0
  for (const { coefficient, factors } of e) {
    let value = coefficient
    for (const { unknown, power } of factors) value *= values.get(unknown.id)! ** power
    total += value
  }
  return total
}

/** The 5 % and 95 % points of a million draws. */
function simulate(drawOne: (random: () => number) => number): [number, number] {
  const random = generator(1824)
  const values = new Float64Array(DRAWS)
  for (let i = 0; i < DRAWS; i++) values[i] = drawOne(random)
  values.sort()
  return [values[DRAWS / 20]!, values[DRAWS - DRAWS / 20]!]
}

function drawer(e: Expression): (random: () => number) => number {
  const unknowns = unknownsOf(e)
  const values = new Map<string, number>()
  return (random) => {
    for (const { id, shape } of unknowns) values.set(id, draw(shape, random))
    return evaluate(e, values)
  }
}

function expectWithin({ low, high }: Band, [from, to]: [number, number]): void {
  expect(Math.abs(low / from - 1)).toBeLessThan(0.005)
  expect(Math.abs(high / to - 1)).toBeLessThan(0.005)
}

const heap = unknown('heap', triangle(1.1, 1.3, 1.6))
const cup = unknown('cup', triangle(110, 140, 190))
const flour = unknown('flour', triangle(0.48, 0.55, 0.65))
const glass = unknown('glass', rectangle(45, 60))
const handful = unknown('handful', lognormal(30, 2))
const egg = unknown('egg', triangle(38, 46, 55))

describe('a band and a million draws agree within 0.5 %', () => {
  it.each<[string, Expression]>([
    ['three triangles', product(2, heap, cup, flour)],
    ['a quotient', product(500, heap, power(flour, -1))],
    ['a handful of flour in glasses', product(1, handful, flour, power(glass, -1))],
    ['five factors', product(1, heap, cup, flour, glass, power(egg, -1))],
    ['pounds and ounces with the doubt in each', sum(product(3, cup), product(2, glass))],
    ['two handfuls of different things', sum(product(1, handful), product(1, unknown('grasp', lognormal(12, 3))))],
    ['one density in two lines', sum(product(3, cup, flour), product(2, glass, flour))],
    ['lines that hang together in a ring', sum(product(1, cup, flour), product(1, flour, heap), product(0.5, heap, cup))],
    ['a square among other terms', sum(product(1, power(heap, 2)), product(1, heap, flour), product(-0.2, flour))],
  ])('%s', { timeout: 30_000 }, (_, e) => {
    expectWithin(bandOf(e), simulate(drawer(e)))
  })

  it('a mixture of meanings', { timeout: 30_000 }, () => {
    const parts = [
      { weight: 0.5, value: product(473, heap, flour) },
      { weight: 0.3, value: product(577, heap, flour) },
      { weight: 0.2, value: product(20, handful) },
    ]
    const drawers = parts.map(({ value }) => drawer(value))
    const drawn = simulate((random) => {
      const u = random()
      return drawers[u < 0.5 ? 0 : u < 0.8 ? 1 : 2]!(random)
    })
    expectWithin(mixtureBand(parts), drawn)
  })

  it('a receipt whose lines share a pint, a density and an egg', { timeout: 30_000 }, () => {
    const pint = (count: number, by: Unknown) => ({
      choice: 'pint',
      options: [
        { id: 'wine', weight: 0.7, value: product(473 * count, by) },
        { id: 'ale', weight: 0.3, value: product(577 * count, by) },
      ],
    })
    const eggs = {
      options: [
        { id: 'whole', weight: 0.8, value: product(6, egg) },
        { id: 'yolks', weight: 0.2, value: product(2, egg) },
      ],
    }
    const cream = unknown('cream', triangle(0.97, 1, 1.01))
    const lines = [pint(1, cream), pint(0.5, flour), eggs, { options: [{ id: 'only', weight: 1, value: product(2, cup, flour) }] }]
    const unknowns = [cream, flour, egg, cup]
    const values = new Map<string, number>()
    const drawn = simulate((random) => {
      for (const { id, shape } of unknowns) values.set(id, draw(shape, random))
      const measure = random() < 0.7 ? 473 : 577
      const count = random() < 0.8 ? 6 : 2
      const e = sum(product(measure, cream), product(measure / 2, flour), times(product(1, egg), count), product(2, cup, flour))
      return evaluate(e, values)
    })
    expectWithin(jointBand(lines), drawn)
  })
})
