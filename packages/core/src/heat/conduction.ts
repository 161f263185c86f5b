import { badOption, show } from '../error.js'
import { besselJ } from './bessel.js'
import { requireNumber, requirePositive } from './degrees.js'

/** A plane slab heated on both faces, a long cylinder, a sphere. */
export type Solid = 'slab' | 'cylinder' | 'sphere'

/** One term of the series of a solid: C exp(-λ² Fo) f(λ ξ). */
export interface Term {
  /** λ: a root of the solid's boundary condition. */
  readonly root: number
  /** C: its share of a uniform beginning. */
  readonly coefficient: number
}

const solids: readonly Solid[] = ['slab', 'cylinder', 'sphere']

/** The boundary condition of each solid, as a function that is zero at the roots. Carslaw & Jaeger 1959: §3.11, §7.7 and §9.4. */
function boundary(solid: Solid, biot: number, x: number): number {
  if (biot === Number.POSITIVE_INFINITY) return solid === 'slab' ? Math.cos(x) : solid === 'cylinder' ? besselJ(0, x) : Math.sin(x)
  if (solid === 'slab') return x * Math.sin(x) - biot * Math.cos(x)
  if (solid === 'cylinder') return x * besselJ(1, x) - biot * besselJ(0, x)
  return (1 - biot) * Math.sin(x) - x * Math.cos(x)
}

/** The share of each root in a body that begins at one temperature throughout. Same sections. */
function coefficientOf(solid: Solid, root: number): number {
  const [sine, cosine] = [Math.sin(root), Math.cos(root)]
  if (solid === 'slab') return (4 * sine) / (2 * root + Math.sin(2 * root))
  if (solid === 'sphere') return (4 * (sine - root * cosine)) / (2 * root - Math.sin(2 * root))
  const [j0, j1] = [besselJ(0, root), besselJ(1, root)]
  return (2 * j1) / (root * (j0 * j0 + j1 * j1))
}

/** What the temperature is at a place between centre (0) and surface (1), for one root. */
function profile(solid: Solid, x: number): number {
  if (solid === 'slab') return Math.cos(x)
  if (solid === 'cylinder') return besselJ(0, x)
  return x === 0 ? 1 : Math.sin(x) / x
}

/** Neighbouring roots lie about π apart and never nearer than this, whatever the solid and the Biot number. */
const stride = 0.25

function bisect(from: number, to: number, f: (x: number) => number): number {
  let [low, high] = [from, to]
  const rising = f(low) < 0
  for (let i = 0; i < 60; i++) {
    const middle = (low + high) / 2
    if (f(middle) < 0 === rising) low = middle
    else high = middle
  }
  return (low + high) / 2
}

const known = new Map<string, Term[]>()
const mostKnown = 500

function nextTerm(solid: Solid, biot: number, terms: readonly Term[]): Term {
  const f = (x: number): number => boundary(solid, biot, x)
  // A root of a small Biot number lies near zero, where the boundary condition of every solid is negative (or, for no resistance, positive).
  let from = terms.length === 0 ? 1e-6 : terms.at(-1)!.root + 1e-3
  let to = from + stride
  while (f(from) < 0 === f(to) < 0) [from, to] = [to, to + stride]
  const root = bisect(from, to, f)
  return { root, coefficient: coefficientOf(solid, root) }
}

/** The first so many terms; they are kept, for the same Biot number comes again while a time is sought. */
function termsOf(solid: Solid, biot: number, count: number): readonly Term[] {
  const key = `${solid}|${biot}`
  if (known.size >= mostKnown) known.clear()
  const terms = known.get(key) ?? []
  known.set(key, terms)
  while (terms.length < count) terms.push(nextTerm(solid, biot, terms))
  return terms
}

/**
 * The leading root and coefficient of a solid: all that is left of the series once the Fourier number passes about 0.2.
 *
 * @param biot surface coefficient × half-thickness or radius / conductivity; `Infinity` for a surface that takes the oven's heat at once
 * @throws PottleError `bad-option` for an unknown solid or a Biot number that is not above zero
 * @example firstTerm('slab', 1).root   // 0.8603335…
 */
export function firstTerm(solid: Solid, biot: number): Term {
  checkSolid(solid, biot)
  return termsOf(solid, biot, 1)[0]!
}

function checkSolid(solid: Solid, biot: number): void {
  if (!solids.includes(solid)) throw badOption('shape', `${show(solid)} is not one of ${solids.join(', ')}`)
  if (biot !== Number.POSITIVE_INFINITY) requirePositive('biot', biot, 'Biot number')
}

/** Before this Fourier number no heat has come half-way in: what has, erfc(6.4), is less than a double can tell. */
const unfelt = 0.0015

/** Terms past this exponent are nothing to a double. */
const spent = 40
const mostTerms = 60

/**
 * How much of the first difference of temperature is left: 1 at the beginning, 0 when the body has the temperature around it.
 *
 * @param fourier diffusivity × time / (half-thickness or radius)²
 * @param at the place, from 0 at the centre to 1 at the surface
 * @throws PottleError `bad-option` as `firstTerm`, and for a negative Fourier number
 * @example temperatureLeft('sphere', Infinity, 0.1388)   // 0.499…
 */
export function temperatureLeft(solid: Solid, biot: number, fourier: number, at = 0): number {
  checkSolid(solid, biot)
  if (requireNumber('fourier', fourier) < 0) throw badOption('fourier', 'time runs forward; give a Fourier number from 0 up')
  if (fourier === 0 || (fourier < unfelt && at <= 0.5)) return 1
  let sum = 0
  for (let i = 0; i < mostTerms; i++) {
    const { root, coefficient } = termsOf(solid, biot, i + 1)[i]!
    const exponent = root * root * fourier
    if (exponent > spent && i > 0) break
    sum += coefficient * Math.exp(-exponent) * profile(solid, root * at)
  }
  return Math.min(1, Math.max(0, sum))
}

/**
 * The Fourier number at which so much of the first difference is left.
 *
 * @param left between 0 and 1
 * @throws PottleError `bad-option` when `left` is not between 0 and 1
 * @example fourierFor('slab', Infinity, 0.5)   // 0.3787…
 */
export function fourierFor(solid: Solid, biot: number, left: number, at = 0): number {
  if (!(requireNumber('left', left) > 0 && left < 1)) throw badOption('left', `${left} is not between 0 and 1`)
  let high = 1
  while (temperatureLeft(solid, biot, high, at) > left) high *= 2
  let low = 0
  for (let i = 0; i < 60; i++) {
    const middle = (low + high) / 2
    if (temperatureLeft(solid, biot, middle, at) > left) low = middle
    else high = middle
  }
  return (low + high) / 2
}
