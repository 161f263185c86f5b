import type { Entry, EntrySense } from './entry.js'
import { type Scale, scaleFor } from './scale.js'
import { type Child, h, type Tree } from './tree.js'

/** Rows of the drawing, in pixels from its top: the bar, the ruled line, its figures; letters need a row of their own above. */
interface Rows {
  readonly letters: number
  readonly bar: number
  readonly line: number
  readonly figures: number
  readonly height: number
}

const thick = 20

function rowsFor(lettered: boolean): Rows {
  const bar = lettered ? 22 : 6
  const line = bar + thick
  return { letters: 12, bar, line, figures: line + 18, height: line + 24 }
}

/** Letters nearer to each other than this part of the length would overprint. */
const nearest = 0.045

const at = (scale: Scale, value: number): string => `${(100 * scale.place(value)).toFixed(2)}%`

function upright(x: string, from: number, to: number, part: string): Tree {
  return h('line', { x1: x, x2: x, y1: String(from), y2: String(to), class: part })
}

/** Meanings that stand on nearly the same spot share a mark: *a c*. */
function gathered(senses: readonly EntrySense[], scale: Scale): { best: number; letters: string }[] {
  const marks: { best: number; letters: string }[] = []
  for (const { best, mark } of senses) {
    const beside = marks.find((other) => Math.abs(scale.place(other.best) - scale.place(best)) < nearest)
    if (beside) beside.letters += ` ${mark}`
    else marks.push({ best, letters: mark })
  }
  return marks
}

function senseMarks(senses: readonly EntrySense[], scale: Scale, row: Rows): Child[] {
  return gathered(senses, scale).flatMap(({ best, letters }) => {
    const x = at(scale, best)
    return [upright(x, row.letters + 4, row.line, 'sense'), h('text', { x, y: String(row.letters), class: 'letter' }, letters)]
  })
}

/** The best value as a lozenge: an inner picture carries it, so that its place may be a part of any width. */
function lozenge(x: string, row: Rows): Tree {
  const y = row.bar + thick / 2
  return h(
    'svg',
    { x, y: String(y), overflow: 'visible', width: '1', height: '1' },
    h('path', { d: 'M0-7 5.5 0 0 7-5.5 0z', class: 'best' }),
  )
}

function ruled(scale: Scale, row: Rows): Child[] {
  return scale.ticks.flatMap(({ value, text }) => {
    const x = at(scale, value)
    return [upright(x, row.line, row.line + 6, 'tick'), h('text', { x, y: String(row.figures), class: 'figure' }, text)]
  })
}

function spokenPicture({ senses }: Entry, text: string): string {
  const marked = senses.map(({ mark, text: value }) => `${mark} ${value}`).join(', ')
  return `A ruled scale: ${text}${marked ? `; meanings at ${marked}` : ''}`
}

/**
 * Where the true value probably lies: the band as a bar on a ruled line, the best value as a lozenge, each meaning as a letter.
 * Lengths along the line are parts of its width, so that its lettering keeps its size on a phone and on a wall.
 *
 * @returns an SVG element; undefined where the answer is exact and there is nothing to draw
 * @example gauge(entryOfHeat({ ...findHeat('a slack oven', { year: 1796 }), steps: [], dataset }))?.attributes.role   // 'img'
 */
export function gauge(entry: Entry): Tree | undefined {
  const { band, senses } = entry
  if (!band) return undefined
  const scale = scaleFor(
    band,
    senses.map(({ best }) => best),
  )
  const row = rowsFor(senses.length > 0)
  const [low, high] = [at(scale, band.low), at(scale, band.high)]
  const width = `${(100 * (scale.place(band.high) - scale.place(band.low))).toFixed(2)}%`
  return h(
    'svg',
    {
      class: 'gauge',
      part: 'gauge',
      role: 'img',
      'aria-label': spokenPicture(entry, band.text),
      width: '100%',
      height: String(row.height),
    },
    h('rect', { x: low, width, y: String(row.bar), height: String(thick), class: 'band' }),
    upright(low, row.bar, row.line, 'end'),
    upright(high, row.bar, row.line, 'end'),
    h('line', { x1: '0', x2: '100%', y1: String(row.line), y2: String(row.line), class: 'rule' }),
    ruled(scale, row),
    senseMarks(senses, scale, row),
    lozenge(at(scale, band.best), row),
  )
}
