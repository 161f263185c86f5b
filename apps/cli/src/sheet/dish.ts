import { dishShapes, type Plan } from '@pottle/core'
import { UsageError } from '../fault.js'

type Dish = Exclude<Plan['dish'], readonly unknown[] | string | undefined>
type Shape = NonNullable<Dish['shape']>

/** What is measured of each shape, in the order in which people say it. */
const sides: Readonly<Record<Shape, readonly (keyof Dish)[]>> = {
  round: ['diameter', 'depth'],
  square: ['side', 'depth'],
  rectangle: ['length', 'width', 'depth'],
  oval: ['length', 'width', 'depth'],
  loaf: ['length', 'width', 'depth'],
  mould: ['diameter', 'depth'],
}
const isShape = (word: string): word is Shape => Object.hasOwn(sides, word)

const counted = /^(\d{1,4}) (.+)$/
const shaped = /^([a-z]{1,12}) (\d.{0,80})$/
const measured = /^(\d[\d./ ]{0,12}?) ?(mm|cm|in|inch|inches|")?$/
const held = /^(\d{1,6}(?:\.\d{1,3})?) ?ml$/

/** For the help. */
export const dishForms =
  'a name (small-tart), or a shape with its measures inside the rim: round 23cm x 4cm, loaf 20 x 10 x 7 cm, mould 500ml. A number before it says how many: 6 small-tart'

function refuse(text: string, detail: string): never {
  throw new UsageError('--dish', `"${text.slice(0, 60)}" ${detail}; give ${dishForms}`)
}

/** Measures apart by `x`; one without a unit has that of the next one that has. */
function lengthsIn(text: string, measures: string): readonly string[] {
  let unit: string | undefined
  return measures
    .split(/ ?[x×] ?/)
    .reverse()
    .map((one) => {
      const [, digits, own] = measured.exec(one.trim()) ?? []
      if (digits === undefined) return refuse(text, `has "${one.slice(0, 20)}" where a length should be`)
      unit = own ?? unit
      if (unit === undefined) return refuse(text, 'has no unit; say mm, cm or in')
      return `${digits} ${unit}`
    })
    .reverse()
}

function fromShape(text: string, shape: Shape, measures: string): Dish {
  const [, volume] = shape === 'mould' ? (held.exec(measures) ?? []) : []
  if (volume !== undefined) return { shape, volume: Number(volume) }
  const lengths = lengthsIn(text, measures)
  const names = sides[shape]
  if (lengths.length !== names.length)
    return refuse(text, `has ${lengths.length} measure${lengths.length === 1 ? '' : 's'}; a ${shape} dish needs ${names.join(' x ')}`)
  return { shape, ...Object.fromEntries(names.map((name, i) => [name, lengths[i]!])) }
}

/**
 * A dish as a command line has it.
 *
 * @throws UsageError for a shape without its measures; whether a dish of that name exists is the library's to say
 * @example readDish('2 round 9 x 1.5 in')   // { shape: 'round', diameter: '9 in', depth: '1.5 in', count: 2 }
 */
export function readDish(text: string): Dish {
  const tidy = text
    .trim()
    .toLowerCase()
    .replace(/\s{1,20}/g, ' ')
  // Some names begin with a number: they are not so many of something else.
  if (dishShapes.some(({ label, names }) => label === tidy || names.includes(tidy))) return { id: tidy }
  const [, number, rest] = counted.exec(tidy) ?? []
  const count = number === undefined ? {} : { count: Number(number) }
  const name = rest ?? tidy
  const [, shape, measures] = shaped.exec(name) ?? []
  if (shape !== undefined && isShape(shape)) return { ...fromShape(text, shape, measures!), ...count }
  if (isShape(name)) return refuse(text, `has no measures; a ${name} dish needs ${sides[name].join(' x ')}`)
  return { id: name, ...count }
}
