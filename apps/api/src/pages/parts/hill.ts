/** One meaning or witness, with its share of the likelihood. */
export interface Peak {
  readonly low: number
  readonly best: number
  readonly high: number
  readonly share: number
}

/** Ends that hold 90 of 100 of a normal curve lie this many deviations out. */
const ninety = 1.645
/** Nothing is drawn narrower than this part of the picture, else an exact sense would be a needle that hides the rest. */
const narrowest = 1 / 70

function heightAt(value: number, { low, best, high, share }: Peak, least: number): number {
  const [left, right] = [Math.max((best - low) / ninety, least), Math.max((high - best) / ninety, least)]
  const off = (value - best) / (value < best ? left : right)
  return (share / (left + right)) * Math.exp(-(off * off) / 2)
}

/**
 * A hill that stands where the true value probably lies: for every meaning a curve around its best value that falls to both ends, as large as the
 * meaning is likely.
 *
 * @returns heights from 0 to 1 at evenly spaced places from `from` to `to`
 */
export function hill(peaks: readonly Peak[], from: number, to: number, places = 240): readonly number[] {
  const least = (to - from) * narrowest
  const heights = Array.from({ length: places + 1 }, (_, i) => {
    const value = from + ((to - from) * i) / places
    return peaks.reduce((sum, peak) => sum + heightAt(value, peak, least), 0)
  })
  const top = Math.max(...heights)
  return heights.map((height) => height / top)
}

/** Round numbers between two ends: at most `most` of them, 1, 2 or 5 times a power of ten apart. */
export function ticks(from: number, to: number, most = 5): readonly number[] {
  const rough = (to - from) / most
  const power = 10 ** Math.floor(Math.log10(rough))
  const step = [1, 2, 5, 10].map((lead) => lead * power).find((one) => one >= rough)!
  const first = Math.ceil(from / step)
  return Array.from({ length: Math.floor(to / step) - first + 1 }, (_, i) => Number(((first + i) * step).toPrecision(12)))
}
