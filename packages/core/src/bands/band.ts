import { badOption } from '../error.js'
import type { Expression, Term, Unknown } from './expression.js'
import type { Shape } from './shapes.js'
import { bestOfShape, requireFinite, sameShape } from './shapes.js'

/** A summary of a distribution: its best value, and the ends that leave equal shares of the doubt outside. */
export interface Band {
  readonly low: number
  readonly best: number
  readonly high: number
  readonly coverage: number
}

/** One part of a mixture. */
export interface Weighted {
  readonly weight: number
  readonly value: Expression
}

/** One line of a receipt: what it may come to. */
export interface Line {
  readonly choice?: string
  readonly options: readonly (Weighted & { readonly id: string })[]
}

const POINTS = 8191

export function bestOf(e: Expression): number {
  return round(rawBest(e))
}

export function bandOf(e: Expression, coverage = 0.9): Band {
  return mixtureBand([{ weight: 1, value: e }], coverage)
}

export function mixtureBand(parts: readonly Weighted[], coverage = 0.9): Band {
  return jointBand([{ options: parts.map((part, i) => ({ ...part, id: String(i) })) }], coverage)
}

export function jointBand(lines: readonly Line[], coverage = 0.9): Band {
  if (!(coverage > 0 && coverage < 1)) throw badOption('coverage', `${coverage} is not between 0 and 1`)
  const unknowns = collect(lines)
  const choices = [...new Set(lines.map((line, i) => line.choice ?? i))]
  const sample = new Float64Array(POINTS)
  for (let i = 0; i < POINTS; i++) {
    const at = new Map([...unknowns].map(([id, shape], j) => [id, quantile(shape, fraction(i, j))]))
    for (const [l, line] of lines.entries()) {
      const u = fraction(i, unknowns.size + choices.indexOf(line.choice ?? l))
      sample[i]! += evaluate(pick(line, u).value, (x) => at.get(x.id)!)
    }
  }
  sample.sort()
  const tail = (1 - coverage) / 2
  const best = lines.reduce((total, line) => total + rawBest(heaviest(line).value), 0)
  return { low: round(at(sample, tail)), best: round(best), high: round(at(sample, 1 - tail)), coverage }
}

export function scaleBand(band: Band, by: number): Band {
  requireFinite('by', by)
  const [low, high] = by < 0 ? [band.high, band.low] : [band.low, band.high]
  return { low: round(low * by), best: round(band.best * by), high: round(high * by), coverage: band.coverage }
}

function heaviest(line: Line): Weighted {
  return line.options.reduce((most, option) => (option.weight > most.weight ? option : most))
}

function pick(line: Line, u: number): Weighted {
  const total = line.options.reduce((w, option) => w + option.weight, 0)
  let left = u * total
  for (const option of line.options) {
    left -= option.weight
    if (left < 0) return option
  }
  return line.options.at(-1)!
}

function collect(lines: readonly Line[]): Map<string, Shape> {
  const found = new Map<string, Shape>()
  const factors = lines.flatMap((line) => line.options.flatMap((o) => o.value.flatMap((term) => term.factors)))
  for (const { unknown } of factors) {
    const met = found.get(unknown.id)
    if (met && !sameShape(met, unknown.shape)) throw badOption(unknown.id, 'this unknown is given two different shapes')
    found.set(unknown.id, unknown.shape)
  }
  return found
}

function rawBest(e: Expression): number {
  return evaluate(e, (x) => bestOfShape(x.shape))
}

function evaluate(e: Expression, valueOf: (x: Unknown) => number): number {
  const termOf = (term: Term) => term.factors.reduce((value, f) => value * valueOf(f.unknown) ** f.power, term.coefficient)
  return e.reduce((total, term) => total + termOf(term), 0)
}

function fraction(i: number, j: number): number {
  return ((i + 0.5) * (Math.sqrt(2 + j * j + j) % 1)) % 1
}

function at(sorted: Float64Array, p: number): number {
  return sorted[Math.min(POINTS - 1, Math.floor(p * POINTS))]!
}

function quantile(shape: Shape, p: number): number {
  if (shape.shape === 'exact') return shape.value
  if (shape.shape === 'rectangle') return shape.low + p * (shape.high - shape.low)
  if (shape.shape === 'lognormal') return shape.best * shape.factor ** (Math.log(p / (1 - p)) / Math.log(19))
  const { low, best, high } = shape
  const rise = (best - low) / (high - low)
  return p < rise ? low + Math.sqrt(p * (high - low) * (best - low)) : high - Math.sqrt((1 - p) * (high - low) * (high - best))
}

function round(value: number): number {
  return Number(value.toPrecision(6))
}
