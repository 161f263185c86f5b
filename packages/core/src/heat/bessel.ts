/**
 * The Bessel function of the first kind and of order 0 or 1, by Bessel's own integral: J_n(x) = (1/π) ∫ cos(nτ - x sin τ) dτ from 0 to π.
 *
 * The integrand is even and periodic, so that the trapezoid rule converges faster than any power of the step: to the last digits of a double
 * once there are some thirty points more than x (F. W. Bessel 1824; Carslaw & Jaeger 1959, appendix III).
 *
 * @example besselJ(0, 1)   // 0.76519768655…
 */
export function besselJ(order: 0 | 1, x: number): number {
  const points = Math.ceil(Math.abs(x)) + 40
  const at = (i: number): number => {
    const angle = (Math.PI * i) / points
    return Math.cos(order * angle - x * Math.sin(angle))
  }
  let sum = (at(0) + at(points)) / 2
  for (let i = 1; i < points; i++) sum += at(i)
  return sum / points
}
