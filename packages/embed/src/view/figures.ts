/** Low, best and high of one quantity in one unit. */
export interface Figures {
  readonly low: number
  readonly best: number
  readonly high: number
}

/**
 * A figure to so many significant digits, grouped as English books group them.
 *
 * @example figure(35239.1, 3)   // '35,200'
 */
export function figure(value: number, digits: number): string {
  return value.toLocaleString('en-GB', { maximumSignificantDigits: digits })
}

/** As few digits, two to four, as still tell the ends and the best apart: no more than the band supports (GUM, section 7.2.6). */
export function digitsFor({ low, best, high }: Figures): number {
  const distinct = (digits: number): boolean => {
    const [below, middle, above] = [low, best, high].map((value) => figure(value, digits))
    return (below !== middle || low === best) && (middle !== above || best === high)
  }
  return [2, 3].find(distinct) ?? 4
}

const spoken = ['', 'one', 'two', 'three', 'four', 'five', 'six', 'seven', 'eight', 'nine']

/**
 * A coverage in words.
 *
 * @example timesIn(0.9)   // 'nine times in ten'
 */
export function timesIn(coverage: number): string {
  const tenths = Number((coverage * 10).toFixed(3))
  return Number.isInteger(tenths) ? `${spoken[tenths]} times in ten` : `${figure(coverage * 100, 3)} times in 100`
}

/** Joins the figure of a measure to its unit, so that no line breaks between them. */
export function bind(text: string): string {
  return text.replace(/(\d|[¼-¾⅐-⅞]) /g, '$1\u00a0')
}
