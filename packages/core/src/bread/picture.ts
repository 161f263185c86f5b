import { type Attributes, drawCircle, drawPath, drawRectangle, escapeText } from '../drawing/index.js'
import { badOption } from '../error.js'
import { changesIn, extremes, grams, gramsPerOunce, ink, line, type Paper, plate, quiet, text } from './plate.js'
import { changes, ruling } from './ruling.js'
import { weightScale, yearScale } from './scale.js'
import type { LoafYearWeight } from './series.js'

/** What a plate says of the loaf that it draws. */
export interface LoafPlate {
  readonly coin: string
  readonly kind: string
  /** As it is to be read: `London`. */
  readonly place: string
  /** The share of the doubt inside the band; 0.9 where nothing is said. */
  readonly coverage?: number
}

/** As much of the name of a place as there is room for. */
const mostPlace = 80

/** With more years than this a heavy line would fill its own band. */
const crowd = 150

const shade: Attributes = { fill: ink.band, 'fill-opacity': '0.6' }
const edge: Attributes = { fill: 'none', stroke: ink.quiet, 'stroke-width': 0.8 }

/** The band as a shade with drawn edges, the best weight as a heavy line; a lone year as a bar with a dot. */
function curves({ series, years, weights }: Paper): string {
  const along = (end: 'low' | 'best' | 'high') => series.map((row) => [years.place(row.year), weights.place(row[end])] as const)
  const [low, best, high] = [along('low'), along('best'), along('high')]
  if (series.length === 1) {
    const [x, top] = high[0]!
    const bar = drawRectangle(x - 14, top, 28, low[0]![1] - top, { fill: ink.band, stroke: ink.quiet })
    return `${bar}\n${drawCircle(x, best[0]![1], 5, { fill: ink.line })}`
  }
  const heavy = { fill: 'none', stroke: ink.line, 'stroke-width': series.length > crowd ? 1.2 : 2.2, 'stroke-linejoin': 'round' }
  return [drawPath([...high, ...[...low].reverse()], shade), drawPath(high, edge), drawPath(low, edge), drawPath(best, heavy)].join('\n')
}

/** Bold, with a rim of paper so that it can be read over the curves. */
const bold: Attributes = {
  'font-size': 15,
  'font-weight': 'bold',
  'paint-order': 'stroke',
  stroke: ink.paper,
  'stroke-width': 4,
  'stroke-linejoin': 'round',
}

/** The heaviest and the lightest loaf, by year and weight. */
function marks({ series, years, weights }: Paper): string {
  const { light, heavy } = extremes(series)
  const rows = [{ row: heavy, side: -1 }, ...(light === heavy ? [] : [{ row: light, side: 1 }])]
  return rows
    .map(({ row, side }) => {
      const x = years.place(row.year)
      const end = weights.place(side < 0 ? row.high : row.low)
      const y = Math.min(Math.max(end + (side < 0 ? -12 : 22), plate.head + 14), plate.foot - 6)
      const near = x > plate.right - 70 ? 'end' : x < plate.left + 70 ? 'start' : 'middle'
      const inset = near === 'start' ? 5 : near === 'end' ? -5 : 0
      return (
        drawCircle(x, weights.place(row.best), 3.5, { fill: ink.line }) + text(x + inset, y, `${row.year}: ${grams(row.best)}`, near, bold)
      )
    })
    .join('\n')
}

function key({ series }: Paper, coverage: number): string {
  const { left, foot } = plate
  const y = foot + 62
  const ruled = changesIn(series).length > 0 ? ' Dotted rules: the law of bread changed.' : ''
  const words = { 'font-size': 15 }
  const share = `${Number((coverage * 100).toFixed(1))} chances in 100 that the loaf lay in the band.`
  return [
    series.length === 1
      ? drawCircle(left + 17, y - 5, 5, { fill: ink.line })
      : line(left, y - 5, left + 34, y - 5, ink.line, { 'stroke-width': 2.2 }),
    text(left + 44, y, 'best estimate', 'start', words),
    drawRectangle(left + 160, y - 13, 34, 16, { ...shade, stroke: ink.quiet, 'stroke-width': 0.8 }),
    text(left + 204, y, share, 'start', words),
    text(left, y + 25, `Computed from the price of wheat through the Assize of Bread.${ruled}`, 'start', quiet),
  ].join('\n')
}

/** *a penny white loaf*, *an eighteenpenny household loaf*, *a penny manchet*. */
function nameOf({ coin, kind }: LoafPlate): string {
  const loaf = kind === 'roll' || kind === 'manchet' ? kind : `${kind} loaf`
  return `${/^[aeiou]/.test(coin) ? 'an' : 'a'} ${coin} ${loaf}`
}

function requireSeries(series: readonly LoafYearWeight[]): void {
  if (series.length === 0) throw badOption('series', 'there is no year in it to draw')
  const broken = series.find(({ low, best, high }) => !(low > 0 && low <= best && best <= high && Number.isFinite(high)))
  if (broken) throw badOption('series', `the weights of ${broken.year} are not rising numbers above 0`)
}

/**
 * Draws the weight of a loaf against the year, with its band, as a plate of a ledger: a standalone SVG that needs no font, script or colour
 * to be read. Weights that differ more than sixfold are spaced by ratio.
 *
 * @returns the SVG's text
 * @throws PottleError `bad-option` for an empty series or weights that are none
 * @example drawLoafSeries(loafSeries({ from: 1660, to: 1710 }), { coin: 'penny', kind: 'white', place: 'England' })   // '<svg …'
 */
export function drawLoafSeries(series: readonly LoafYearWeight[], loaf: LoafPlate): string {
  requireSeries(series)
  const { width, height, left, right, head, foot } = plate
  const [from, to] = [series[0]!.year, series.at(-1)!.year]
  const years = yearScale(from, to, left, right)
  const weights = weightScale(Math.min(...series.map(({ low }) => low)), Math.max(...series.map(({ high }) => high)), foot, head)
  const paper: Paper = { series, years, weights, ounces: weights.inUnits(gramsPerOunce) }
  const { light, heavy } = extremes(series)
  const span = `${loaf.place.slice(0, mostPlace)}, ${from === to ? from : `${from} to ${to}`}`
  const title = `The weight of ${nameOf(loaf)}`
  const how = weights.logarithmic ? 'Baked weight, spaced by ratio' : 'Baked weight'
  const story = `Best estimates run from ${grams(light.best)} in ${light.year} to ${grams(heavy.best)} in ${heavy.year}; the band around them runs from ${grams(Math.min(...series.map(({ low }) => low)))} to ${grams(Math.max(...series.map(({ high }) => high)))}.`
  const frame = { fill: 'none', stroke: ink.line }
  return `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 ${width} ${height}" width="${width}" height="${height}" role="img" aria-labelledby="loaf-title loaf-story" font-family="Georgia, 'Times New Roman', serif" fill="${ink.line}">
<title id="loaf-title">${escapeText(`${title}, ${span}`)}</title>
<desc id="loaf-story">${story}</desc>
${drawRectangle(0, 0, width, height, { fill: ink.paper })}
${drawRectangle(14, 14, width - 28, height - 28, frame)}
${drawRectangle(19, 19, width - 38, height - 38, { ...frame, 'stroke-width': 0.5 })}
${text(left, 62, title, 'start', { 'font-size': 23 })}
${text(left, 86, `${span}. ${how}.`, 'start', quiet)}
${ruling(paper)}
${curves(paper)}
${changes(paper)}
${marks(paper)}
${key(paper, loaf.coverage ?? 0.9)}
</svg>
`
}
