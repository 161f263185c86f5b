/** Low, best and high, as a ruler draws them. */
export interface Ends {
  readonly low: number
  readonly best: number
  readonly high: number
}

/** From where to where a ruler reaches. */
export interface Reach {
  readonly from: number
  readonly to: number
}

/** The reach that holds all of them. */
export function reachOf(bands: readonly Ends[]): Reach {
  return { from: Math.min(...bands.map(({ low }) => low)), to: Math.max(...bands.map(({ high }) => high)) }
}

/**
 * Draws a band in a line of text: its ends, and a dot at the best value.
 *
 * @example ruler({ low: 2, best: 4, high: 8 }, { from: 0, to: 10 }, 11)   // '  ├─●───┤  '
 */
export function ruler({ low, best, high }: Ends, { from, to }: Reach, width: number): string {
  const place = (value: number): number => (to > from ? Math.round(((value - from) / (to - from)) * (width - 1)) : Math.floor(width / 2))
  const [first, dot, last] = [place(low), place(best), place(high)]
  return Array.from({ length: width }, (_, at) => {
    if (at === dot) return '●'
    if (at < first || at > last) return ' '
    return at === first ? '├' : at === last ? '┤' : '─'
  }).join('')
}
