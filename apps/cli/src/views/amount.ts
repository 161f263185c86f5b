import type { Value } from '@pottle/core'

/** Three digits, as a reader compares them: no band of these tables supports more. */
export const figure = (value: number): string => String(Number(value.toPrecision(3)))

interface Reading {
  readonly name: string
  /** How many of the base unit one is. */
  readonly of: number
}

/** From how many of a base unit on a larger one is read. */
const larger: Readonly<Record<string, readonly (Reading & { readonly from: number })[]>> = {
  g: [{ from: 10_000, name: 'kg', of: 1000 }],
  ml: [{ from: 10_000, name: 'litres', of: 1000 }],
  mm: [{ from: 2000, name: 'm', of: 1000 }],
  s: [
    { from: 7200, name: 'hours', of: 3600 },
    { from: 120, name: 'minutes', of: 60 },
  ],
}

const names: Readonly<Record<string, string>> = { degC: '°C', s: 'seconds', each: '', '1': '' }

/** The unit that a value is read in. */
function readIn(unit: string, best: number): Reading {
  return larger[unit]?.find(({ from }) => best >= from) ?? { name: names[unit] ?? unit, of: 1 }
}

type Bare = Pick<Value, 'low' | 'best' | 'high' | 'unit'>

const digits = (unit: string): ((value: number) => string) => (unit === 'degC' ? (value) => String(Math.round(value)) : figure)

/** `1890 ml` */
export function sayBest({ best, unit }: Bare): string {
  const { name, of } = readIn(unit, best)
  return `${digits(unit)(best / of)} ${name}`.trim()
}

/** `1870 to 2320 ml`; one figure where both ends are the same. */
export function sayEnds({ low, best, high, unit }: Bare): string {
  const { name, of } = readIn(unit, best)
  const say = digits(unit)
  const [from, to] = [say(low / of), say(high / of)]
  return `${from === to ? say(best / of) : `${from} to ${to}`} ${name}`.trim()
}

/** The two ends apart, as they stand at the ends of a ruler: `1870` and `2320 ml`. */
export function endsOf({ low, best, high, unit }: Bare): readonly [string, string] {
  const { name, of } = readIn(unit, best)
  const say = digits(unit)
  return [say(low / of), `${say(high / of)} ${name}`.trim()]
}

/** `90 times in 100` */
export const times = (share: number): string => `${Number((share * 100).toFixed(1))} times in 100`

/** `78 in 100`; what is possible is never told as none, nor what is not sure as all. */
export function chance(likelihood: number): string {
  const share = Math.min(Math.max(Math.round(likelihood * 100), likelihood > 0 ? 1 : 0), likelihood < 1 ? 99 : 100)
  return `${share} in 100`
}
