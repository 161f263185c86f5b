import { constant, type Expression, rectangle, times, unknown } from '../bands/index.js'
import { noAnswer, PottleError } from '../error.js'
import type { Found, Range, Reading } from '../reading/index.js'
import { numberOf } from '../resolved.js'
import { goodFor, isFixed, type Ruled, sensesFor, type Workshop } from './chosen.js'
import { type Kernel, kernelOf } from './kernel.js'
import type { Settled } from './references.js'

/** One line before it is scaled and rounded. */
export interface Worked {
  readonly number: number
  readonly found: Found
  /** The reading once its relation is settled. */
  readonly reading: Reading
  /** Null where the line could not be worked; `problem` then says why. */
  readonly kernel: Kernel | null
  /** How many of the kernel. */
  readonly base: number
  /** Worked out from the rest, since the receipt leaves it open. */
  readonly estimate: boolean
  readonly problem: string | null
  /** What is said of a line that was told for each of something. */
  readonly per?: string | null
  /** It is made of what went before, so that it adds nothing to the batch. */
  readonly made?: boolean
  /** Names of the fixes that ruled here. */
  readonly fixes: readonly string[]
}

/** Kernels met so far on this sheet, by what the words say. */
export type Met = Map<string, Ruled<Kernel>>

/** A range of amounts is one unknown of its own for each line: two *two or three* may fall out differently. */
function spanning(number: number, ratio: number): Expression {
  return ratio > 1 ? [{ coefficient: 1, factors: [{ unknown: unknown(`amount:${number}`, rectangle(1, ratio)), power: 1 }] }] : constant(1)
}

/** What the senses of a reading depend on, apart from its amount; undefined where they depend on the line itself. */
function keyOf(reading: Reading, number: number, shop: Workshop): string | undefined {
  const { kind, measure, thing, things, part, describing, qualifier, standard, tale, eggs, reference, amount } = reading
  if (isFixed(number, shop) || reference || reading.contradiction || (amount && amount.low !== amount.high)) return undefined
  return JSON.stringify([kind, measure, thing, things, part, describing, qualifier, standard, tale, eggs])
}

function freshKernel(reading: Reading, number: number, shop: Workshop): Ruled<Kernel> {
  const good = goodFor(reading, shop)
  const senses = sensesFor(reading, number, shop)
  const { ratio } = numberOf(reading.amount)
  return { value: kernelOf(senses.value, good.value, spanning(number, ratio)), fixes: [...senses.fixes, ...good.fixes] }
}

/** The kernel of a reading, worked once for all lines that say the same. */
function kernelFor(reading: Reading, number: number, shop: Workshop, met: Met): Ruled<Kernel> {
  const key = keyOf(reading, number, shop)
  if (key === undefined) return freshKernel(reading, number, shop)
  const counted = `${key}|${reading.amount?.low}`
  const known = met.get(key) ?? met.get(counted)
  if (known) return known
  const fresh = freshKernel(reading, number, shop)
  met.set(fresh.value.whole ? counted : key, fresh)
  return fresh
}

/** A line that is to weigh as much as another. */
function weighedKernel({ reading, weighs }: Settled, number: number, shop: Workshop, met: Met): Ruled<Kernel> {
  const { pan, times: by } = weighs!
  const { value: heavy, fixes } = kernelFor(pan, number, shop, met)
  if (!heavy.mass) throw noAnswer('text', `it is to weigh as much as the ${pan.thing ?? 'other'}, whose weight the tables can't tell`)
  const { base, ratio } = numberOf(by)
  const count = base * (heavy.whole ? 1 : numberOf(pan.amount).base)
  const multiple = times(spanning(number, ratio), count)
  const senses = heavy.mass.map(({ sense: { exact: _, ...sense }, value }) => ({
    ...sense,
    quantity: 'mass' as const,
    value: times(value, multiple),
    whole: true,
  }))
  const good = goodFor(reading, shop)
  return { value: kernelOf(senses, good.value), fixes: [...fixes, ...good.fixes] }
}

const baseOf = ({ whole }: Kernel, amount: Range | null): number => (whole ? 1 : numberOf(amount).base)

/** Works one line. What the tables can't answer is a problem of the line, not of the sheet; what the user got wrong is an error. */
export function workLine(found: Found, settled: Settled | PottleError, number: number, shop: Workshop, met: Met): Worked {
  const reading = settled instanceof PottleError ? found : settled.reading
  const known = { number, found, reading, estimate: false }
  try {
    if (settled instanceof PottleError) throw settled
    const weighed = settled.weighs && !isFixed(number, shop)
    const { value: kernel, fixes } = weighed ? weighedKernel(settled, number, shop, met) : kernelFor(reading, number, shop, met)
    return { ...known, kernel, base: baseOf(kernel, reading.amount), problem: null, fixes }
  } catch (error) {
    if (!(error instanceof PottleError) || error.code === 'bad-option') throw error
    return { ...known, kernel: null, base: 0, problem: error.faults.map(({ detail }) => detail).join('; '), fixes: [] }
  }
}
