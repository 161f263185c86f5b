import { noAnswer } from '../error.js'
import { fourierFor, type Solid } from './conduction.js'
import { requirePositive } from './degrees.js'

/** A body in an oven: lengths in mm, W/(m² K), W/(m K), m²/s, degC. */
export interface Body {
  readonly solid: Solid
  /** Half the thickness of a slab heated on both faces; the radius of a cylinder or sphere. */
  readonly half: number
  readonly conductivity: number
  readonly diffusivity: number
  /** Of heat from the air to the surface; `Infinity` for a surface that takes the oven's heat at once. */
  readonly surface: number
  readonly start: number
  readonly oven: number
  readonly target: number
}

/**
 * Minutes until the centre of a body has a temperature, by conduction alone: no crust, no steam, no rising (Carslaw & Jaeger 1959,
 * chapters III, VII and IX).
 *
 * @throws PottleError `bad-option` for a size or property that is not above zero; `no-answer` when the oven is not beyond the target
 * @example minutesToReach({ solid: 'slab', half: 12.5, conductivity: 0.5, diffusivity: 1.4e-7, surface: 20, start: 20, oven: 176.7, target: 82 })   // 24.9…
 */
export function minutesToReach({ solid, half, conductivity, diffusivity, surface, start, oven, target }: Body): number {
  requirePositive('half', half, 'mm')
  requirePositive('conductivity', conductivity, 'W/(m K)')
  requirePositive('diffusivity', diffusivity, 'm2/s')
  const left = (target - oven) / (start - oven)
  if (!(left > 0 && left < 1)) throw noAnswer('target', `an oven of ${oven} degC does not bring a body from ${start} to ${target} degC`)
  const metres = half / 1000
  return (fourierFor(solid, (surface * metres) / conductivity, left) * metres * metres) / diffusivity / 60
}
