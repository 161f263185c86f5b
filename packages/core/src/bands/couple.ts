import type { Choice, Outcome } from './choice.js'

/** What one line may mean. */
export type Options = readonly (Outcome & { readonly id: string })[]

/** An option of a line, and how much of its weight is still to be given out. */
interface Share {
  readonly id: string
  readonly value: Outcome['value']
  left: number
}

/** Weights below this are what rounding leaves over. */
const NOTHING = 1e-12

/**
 * Lets several lines choose together.
 *
 * Every line keeps its own weights. As far as those allow, all lines take the option of the same id; what is left over is dealt out in the
 * order of the ids. Lines of the same weights thus have one outcome for each id: the same pint throughout.
 */
export function couple(lines: readonly Options[]): Choice {
  const ids = [...new Set(lines.flatMap((options) => options.map(({ id }) => id)))]
  const shares = lines.map((options) => ids.flatMap((id) => sharesOf(options, id)))
  const together = ids.flatMap((id) => deal(shares.map((line) => line.filter((share) => share.id === id))))
  return [...together, ...deal(shares)]
}

function sharesOf(options: Options, id: string): readonly Share[] {
  return options.filter((option) => option.id === id).map(({ value, weight }) => ({ id, value, left: weight }))
}

/** Deals out the shares of all lines side by side until one line has none left. */
function deal(lines: readonly (readonly Share[])[]): Choice {
  const outcomes: Outcome[] = []
  for (;;) {
    const heads = lines.map((line) => line.find(({ left }) => left > NOTHING))
    if (!heads.every((head) => head !== undefined)) return outcomes
    const weight = Math.min(...heads.map(({ left }) => left))
    for (const head of heads) head.left -= weight
    outcomes.push({ weight, value: heads.flatMap(({ value }) => value) })
  }
}
