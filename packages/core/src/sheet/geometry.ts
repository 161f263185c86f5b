/** The inside of a dish in mm: across the rim both ways, how much less across at the bottom, and how deep. */
export interface Inside {
  readonly base: 'ellipse' | 'rectangle'
  readonly length: number
  readonly width: number
  readonly taper: number
  readonly depth: number
}

const areaOf = (base: Inside['base'], length: number, width: number): number => length * width * (base === 'ellipse' ? Math.PI / 4 : 1)

/** The inside that is left once a paste of some thickness lines bottom and side. */
export function lined(inside: Inside, thick: number): Inside {
  return { ...inside, length: inside.length - 2 * thick, width: inside.width - 2 * thick, depth: inside.depth - thick }
}

/**
 * What a dish holds when it is filled to a part of its depth, in ml.
 *
 * The prismoidal rule, V = h (A₀ + 4 Aₘ + A₁) / 6, is exact for boxes, cylinders and their tapering kin, since the area of a level changes
 * with the square of its height at most.
 *
 * @example contentOf({ base: 'ellipse', length: 200, width: 200, taper: 0, depth: 50 }, 1).toFixed(1)   // '1570.8'
 */
export function contentOf({ base, length, width, taper, depth }: Inside, fill: number): number {
  const areaAt = (part: number): number => areaOf(base, length - taper * (1 - part), width - taper * (1 - part))
  return (depth * fill * (areaAt(0) + 4 * areaAt(fill / 2) + areaAt(fill))) / 6 / 1000
}
