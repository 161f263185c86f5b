/** A line of a ruled scale: its value, and where it lies. */
export interface Tick {
  readonly value: number
  readonly at: number
}

/** Values to places on paper, and the round values worth a line. */
export interface Scale {
  readonly place: (value: number) => number
  readonly ticks: readonly Tick[]
}

/** A scale of weights, which can also be ruled in another unit. */
export interface WeightScale extends Scale {
  readonly logarithmic: boolean
  /** Lines at round numbers of a unit of so many grams. */
  readonly inUnits: (grams: number) => readonly Tick[]
}

/** 1, 2 or 5 times a power of ten, so that about `count` of them fill the distance. */
function roundStep(distance: number, count: number): number {
  const rough = distance / count
  const power = 10 ** Math.floor(Math.log10(rough))
  const lead = rough / power
  return power * (lead < 1.5 ? 1 : lead < 3.5 ? 2 : lead < 7.5 ? 5 : 10)
}

/** Multiples of a step from one value to another, both included where they are multiples. */
function multiples(step: number, from: number, to: number): number[] {
  const first = Math.ceil(from / step)
  const count = Math.floor(to / step + 1e-9) - first + 1
  return Array.from({ length: Math.max(0, count) }, (_, i) => Number(((first + i) * step).toPrecision(12)))
}

/** Years, evenly spaced; a lone year stands in the middle. */
export function yearScale(from: number, to: number, left: number, right: number): Scale {
  if (from === to) return { place: () => (left + right) / 2, ticks: [{ value: from, at: (left + right) / 2 }] }
  const place = (year: number): number => left + ((year - from) / (to - from)) * (right - left)
  const years = multiples(Math.max(1, roundStep(to - from, 10)), from, to)
  return { place, ticks: years.map((value) => ({ value, at: place(value) })) }
}

/** Weights that differ by more than this between the lightest and the heaviest are drawn by ratio, or the light ones would lie flat. */
const widest = 6

/** Weights from the foot of the paper to its head. */
export function weightScale(low: number, high: number, foot: number, head: number): WeightScale {
  return high / low > widest ? byRatio(low, high, foot, head) : byDistance(high, foot, head)
}

function byDistance(high: number, foot: number, head: number): WeightScale {
  const step = roundStep(high, 7)
  const top = Math.ceil((high * 1.1) / step) * step
  const place = (value: number): number => foot + (value / top) * (head - foot)
  const inUnits = (grams: number): Tick[] =>
    multiples(roundStep(top / grams, 7), 0, top / grams).map((value) => ({ value, at: place(value * grams) }))
  return { place, ticks: inUnits(1), inUnits, logarithmic: false }
}

function byRatio(low: number, high: number, foot: number, head: number): WeightScale {
  const [bottom, top] = [low / 1.35, high * 1.35]
  const place = (value: number): number => foot + (Math.log(value / bottom) / Math.log(top / bottom)) * (head - foot)
  const round = Array.from({ length: 9 }, (_, i) => 10 ** (i - 2)).flatMap((power) => [power, 2 * power, 5 * power])
  const inUnits = (grams: number): Tick[] =>
    round.filter((value) => value * grams > bottom && value * grams < top).map((value) => ({ value, at: place(value * grams) }))
  return { place, ticks: inUnits(1), inUnits, logarithmic: true }
}
