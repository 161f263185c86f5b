import type { Expression } from './expression.js'
import { sum } from './expression.js'

/** One way in which the lines of a choice may fall out together. */
export interface Case {
  readonly weight: number
  readonly value: Expression
}

/** One option of one line, and how much of its weight is still to be given out. */
interface Share {
  readonly id: string
  readonly value: Expression
  left: number
}

/** Weights below this are what rounding leaves over. */
const NOTHING = 1e-12

/**
 * Lets several lines choose together.
 *
 * Every line keeps its own weights. As far as those allow, all lines take the option of the same id; what is left over is dealt out in the
 * order of the ids. Lines of the same weights thus have one case for each id: the same pint throughout.
 */
export function couple(lines: readonly (readonly { id: string; weight: number; value: Expression }[])[]): readonly Case[] {
  const ids = [...new Set(lines.flatMap((options) => options.map(({ id }) => id)))]
  const shares = lines.map((options) => ids.flatMap((id) => sharesOf(options, id)))
  const together = ids.flatMap((id) => deal(shares.map((line) => line.filter((share) => share.id === id))))
  return [...together, ...deal(shares)]
}

function sharesOf(options: readonly { id: string; weight: number; value: Expression }[], id: string): Share[] {
  return options.filter((option) => option.id === id).map(({ value, weight }) => ({ id, value, left: weight }))
}

/** Deals out the shares of all lines side by side until one line has none left. */
function deal(lines: readonly (readonly Share[])[]): Case[] {
  const cases: Case[] = []
  for (;;) {
    const heads = lines.map((line) => line.find(({ left }) => left > NOTHING))
    if (!heads.every((head) => head !== undefined)) return cases
    const weight = Math.min(...heads.map(({ left }) => left))
    for (const head of heads) head.left -= weight
    cases.push({ weight, value: sum(...heads.map(({ value }) => value)) })
  }
}
