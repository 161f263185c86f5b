import { badOption, show } from '../error.js'
import { requirePositive } from './degrees.js'

/** A dish, a tin or a joint: lengths in mm, mass in g, volume in ml. */
export interface BakeDish {
  /** `slab`, `cylinder`, `box` or `sphere`, or a kitchen name for one of them. */
  readonly shape: string
  readonly size: {
    readonly depth?: number
    readonly diameter?: number
    readonly length?: number
    readonly width?: number
    /** Stands for the depth where a width is given. */
    readonly volume?: number
    /** Of a joint or a bird. */
    readonly mass?: number
  }
}

type Form = 'slab' | 'cylinder' | 'box' | 'sphere'

const forms: Readonly<Record<string, Form>> = {
  slab: 'slab',
  tray: 'slab',
  sheet: 'slab',
  layer: 'slab',
  cylinder: 'cylinder',
  round: 'cylinder',
  tart: 'cylinder',
  pie: 'cylinder',
  cake: 'cylinder',
  basin: 'cylinder',
  cup: 'cylinder',
  box: 'box',
  tin: 'box',
  loaf: 'box',
  dish: 'box',
  rectangle: 'box',
  sphere: 'sphere',
  ball: 'sphere',
  joint: 'sphere',
  bird: 'sphere',
}

/** Of meat, in g/ml (Jin, Wang & Wang, AIP Advances 11, 2021). */
const meatDensity = 1.05
/** The first root of J0: the slowest way that heat spreads in a long cylinder (Carslaw & Jaeger 1959, §7.6). */
const cylinderRoot = 2.404825557695773

/** How fast the slowest difference of temperature dies out in a body, over its diffusivity, in mm^-2; and how deep the body is, in mm. */
export interface Pace {
  readonly rate: number
  readonly depth: number
}

type Read = (name: keyof BakeDish['size'], unit?: string) => number

/** How deep: as stated, or the volume over the area (1 ml is 1000 mm³). */
function depthOf({ size }: BakeDish, read: Read, area: number): number {
  return size.depth === undefined && size.volume !== undefined ? (read('volume', 'ml') * 1000) / area : read('depth')
}

const along = (length: number): number => (Math.PI / length) ** 2

/** Each direction adds its own rate: the product of the solutions of slab, cylinder and sphere (Carslaw & Jaeger 1959, §1.15). */
const paces: Readonly<Record<Form, (dish: BakeDish, read: Read) => Pace>> = {
  slab: (_, read) => ({ rate: along(read('depth')), depth: read('depth') }),
  cylinder: (dish, read) => {
    const radius = read('diameter') / 2
    const depth = depthOf(dish, read, Math.PI * radius * radius)
    return { rate: along(depth) + (cylinderRoot / radius) ** 2, depth }
  },
  box: (dish, read) => {
    const [length, width] = [read('length'), read('width')]
    const depth = depthOf(dish, read, length * width)
    return { rate: along(depth) + along(length) + along(width), depth }
  },
  sphere: ({ size }, read) => {
    const diameter = size.diameter === undefined && size.mass !== undefined ? sphereOf(read('mass', 'g')) : read('diameter')
    return { rate: along(diameter / 2), depth: diameter }
  },
}

/** The diameter of a ball of meat of a mass, in mm. */
function sphereOf(grams: number): number {
  return 2 * ((3 * grams * 1000) / (4 * Math.PI * meatDensity)) ** (1 / 3)
}

/** Longer than this is no dish. Judgement: two metres. */
const mostLength = 2000

/**
 * How fast heat goes through a dish, from its shape and size.
 *
 * @param parameter how the caller named the dish, for errors
 * @throws PottleError `bad-option` for an unknown shape, a missing size, and one that is not above zero
 * @example paceOf({ shape: 'tart', size: { diameter: 70, depth: 25 } }, 'from').depth   // 25
 */
export function paceOf(dish: BakeDish, parameter: string): Pace {
  const { shape } = dish ?? {}
  const form = typeof shape === 'string' && Object.hasOwn(forms, shape) ? forms[shape] : undefined
  if (!form) throw badOption(`${parameter}.shape`, `${show(shape)} is not a shape of dish; give one of ${Object.keys(forms).join(', ')}`)
  const size = dish.size ?? {}
  const read: Read = (name, unit = 'mm') => {
    const value = size[name]
    if (value === undefined) throw badOption(`${parameter}.size.${name}`, `a ${dish.shape} needs its ${name} in ${unit}`)
    requirePositive(`${parameter}.size.${name}`, value, unit)
    if (unit === 'mm' && value > mostLength)
      throw badOption(`${parameter}.size.${name}`, `${value} mm is more than any dish; give millimetres`)
    return value
  }
  return paces[form]({ ...dish, size }, read)
}
