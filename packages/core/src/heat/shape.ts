import { type Band, exact, type Shape, triangle } from '../bands/index.js'

/** Rounds of the fixed point below; each gains a digit or so. */
const rounds = 60

/**
 * A triangle that has a band for its band: its peak is the best value, and as much doubt lies outside its ends as outside the band's.
 *
 * Its ends a and b are where `low = a + sqrt(t (b - a) (best - a))` and `high = b - sqrt(t (b - a) (b - best))`, with t half of what the
 * coverage leaves out: the quantiles of a triangular distribution.
 *
 * @example bandOf(product(1, unknown('oven', shapeOf({ low: 163, best: 184, high: 204, coverage: 0.9 })))).best   // 184
 */
export function shapeOf({ low, best, high, coverage }: Band): Shape {
  if (low === high) return exact(best)
  const tail = (1 - coverage) / 2
  let [a, b] = [low, high]
  for (let i = 0; i < rounds; i++) {
    const width = b - a
    const [below, above] = [Math.sqrt(tail * width * (best - a)), Math.sqrt(tail * width * (b - best))]
    a = low - below
    b = high + above
  }
  return triangle(a, best, b)
}
