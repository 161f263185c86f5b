/** How long a dish bakes by the receipt's own words, or by a table of goods of its name. */
import type { FoundTime, Range } from '../reading/index.js'
import { bakeGoods } from '../tables/index.js'
import type { SheetOven } from './sheet.js'

/** A time stands for the heat that it is said with when no more than this lies between them, in characters. */
export const nearby = 100

const gap = (a: { start: number; end: number }, start: number, end: number): number => Math.max(0, start - a.end, a.start - end)

/** The time that is said with a heat. */
function timeWith({ start, end }: SheetOven, times: readonly FoundTime[]): Range | undefined {
  if (start === null || end === null) return undefined
  const near = times.filter((time) => time.minutes !== null && gap(time, start, end) <= nearby)
  const [nearest] = near.sort((a, b) => gap(a, start, end) - gap(b, start, end))
  return nearest?.minutes ?? undefined
}

const sayRange = ({ low, high }: Range): string => (low === high ? String(low) : `${low} to ${high}`)

/** A time to start from: the receipt's own, else that of a table of the 1920s and 30s for goods of that name. */
export interface KnownTime {
  readonly minutes: Range
  readonly said: string
  /** Whether the receipt itself states it. */
  readonly own: boolean
  readonly sources: (typeof bakeGoods)[number]['source']
}

export function knownTime(title: string, oven: SheetOven, times: readonly FoundTime[]): KnownTime | undefined {
  const stated = timeWith(oven, times)
  if (stated !== undefined) return { minutes: stated, said: `the receipt's own ${sayRange(stated)} minutes`, own: true, sources: [] }
  const words = ` ${title.toLowerCase().replace(/[^a-z]{1,20}/g, ' ')} `
  const rows = bakeGoods.flatMap((row) => row.names.filter((name) => words.includes(` ${name} `)).map((name) => ({ row, name })))
  const [longest] = rows.sort((a, b) => b.name.length - a.name.length)
  if (!longest) return undefined
  const { minutes, label, source } = longest.row
  return {
    minutes: { low: minutes[0], high: minutes[1] },
    said: `${minutes.join(' to ')} minutes for ${label} in tables of about 1930`,
    own: false,
    sources: source,
  }
}
