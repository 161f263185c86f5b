import type { Value } from '../answer.js'
import { type Band, jointBand, times } from '../bands/index.js'
import { baseUnits, type Citation, type Quantity } from '../tables/index.js'
import { displacementOf, type Kernel } from './kernel.js'
import type { Total } from './sheet.js'
import type { Worked } from './worked.js'

/** How many of each kernel there are in all: lines that say the same fall out together. */
function counted(lines: readonly Worked[]): ReadonlyMap<Kernel, number> {
  const counts = new Map<Kernel, number>()
  for (const { kernel, base } of lines) if (kernel) counts.set(kernel, (counts.get(kernel) ?? 0) + base)
  return counts
}

/**
 * The sum of what can be told in a quantity, with the same pint, egg and spoon throughout.
 *
 * @returns null where no line can be told in it
 */
export function totalOf(lines: readonly Worked[], of: 'mass' | 'volume' | 'room', coverage: number): Omit<Total, 'sources'> | null {
  // What is not named is a dose, a vessel or what is left of something, as often as it goes in.
  const told = lines.filter(({ kernel, reading, made }) => kernel?.[of] && reading.thing !== null && !made)
  if (told.length === 0) return null
  const sums = [...counted(told)].map(([kernel, count]) => ({
    ...(kernel.choice ? { choice: kernel.choice } : {}),
    options: kernel[of]!.map(({ id, weight, value }) => ({ id, weight, value: times(value, count) })),
  }))
  const without = lines.filter((line) => !told.includes(line)).map(({ number }) => number)
  return { ...toValue(of === 'mass' ? 'mass' : 'volume', jointBand(sums, coverage)), without }
}

/** What turned each kernel's own quantity into the one that was added up: densities, and how dry things pack. */
export function totalRestsOn(lines: readonly Worked[], of: 'mass' | 'room'): readonly Citation[] {
  return [...counted(lines).keys()].flatMap((kernel) => {
    const { good, quantity } = kernel
    const packed = of === 'room' && kernel.mass ? displacementOf(good) : undefined
    const turned = packed ? quantity === 'volume' : quantity !== (of === 'mass' ? 'mass' : 'volume')
    return kernel[of] ? [...(turned && good ? good.source : []), ...(packed?.source ?? [])] : []
  })
}

/** A band as an answer gives it. */
export function toValue(quantity: Quantity, { low, best, high, coverage }: Band): Value {
  return { quantity, unit: baseUnits[quantity], low, best, high, coverage }
}
