import { type CoinConstantRow, type CoinIssueRow, coinConstants, type Spread } from '../tables/index.js'

/** A figure that every coin is reckoned with, by its id: `repose`, `layer`, `rim`, or a metal for its density. */
export function constant(id: string): CoinConstantRow {
  return coinConstants.find((row) => row.id === id)!
}

/**
 * A cone of powder on a disc, in ml.
 *
 * @param diameter of the disc, in mm
 * @param angle of repose of the powder, in degrees
 * @example coneOn(19.4, 35).toFixed(2)   // '0.67'
 */
export function coneOn(diameter: number, angle: number): number {
  return ((Math.PI / 3) * (diameter / 2) ** 3 * Math.tan((angle * Math.PI) / 180)) / 1000
}

/** A layer on a disc, in ml. */
const layerOn = (diameter: number, depth: number): number => (Math.PI * (diameter / 2) ** 2 * depth) / 1000

/** The heap of a powder on a coin, in ml: a cone, or at the least a layer. */
export function heapOn({ diameter }: CoinIssueRow, angle: Spread): Spread {
  const best = coneOn(diameter.best, angle.best)
  return { low: Math.min(best, layerOn(diameter.low, constant('layer').best)), best, high: coneOn(diameter.high, angle.high) }
}

/** The thickness of a coin in mm: its mean, and the rim that stands above it. */
export function thicknessOf({ diameter, mass, metal }: CoinIssueRow): Spread {
  const mean = (1000 * mass.best) / (constant(metal).best * Math.PI * (diameter.best / 2) ** 2)
  const { low, best, high } = constant('rim')
  return { low: low * mean, best: best * mean, high: high * mean }
}
