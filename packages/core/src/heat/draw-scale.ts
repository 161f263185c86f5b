import { requireFields } from '../error.js'
import { allHeats, type OvenHeat } from './catalogue.js'
import { toCelsius } from './degrees.js'
import { bandForYear } from './find-heat.js'
import { allGasMarks, markSigns } from './gas.js'
import { accent, circle, faint, ink, label, line, type PlateOptions, plate, rectangle } from './plate.js'
import { coreOfHeat } from './scale.js'
import { readYear } from './year.js'

/** How the scale of heats is drawn. */
export interface HeatScaleOptions extends PlateOptions {
  /** When the words were written; the thin rules widen with it. */
  readonly year?: number
}

const width = 820
const left = 190
const right = 690
const top = 104
const rowHeight = 30
const coldest = 25
const hottest = 420

const across = (celsius: number): number => left + ((celsius - coldest) / (hottest - coldest)) * (right - left)

function axes(bottom: number): readonly string[] {
  const celsius = [50, 100, 150, 200, 250, 300, 350, 400]
  const fahrenheit = [100, 200, 300, 400, 500, 600, 700]
  return [
    ...celsius.flatMap((c) => [
      line(across(c), top - 8, across(c), bottom, { stroke: faint, 'stroke-width': 0.5 }),
      label(across(c), bottom + 18, String(c), { 'text-anchor': 'middle' }),
    ]),
    label(right + 14, bottom + 18, '°C'),
    ...fahrenheit.flatMap((f) => [
      line(across(toCelsius(f)), top - 14, across(toCelsius(f)), top - 8),
      label(across(toCelsius(f)), top - 19, String(f), { 'text-anchor': 'middle' }),
    ]),
    label(right + 14, top - 19, '°F'),
    line(left, top - 8, right, top - 8),
    line(left, bottom, right, bottom),
    ...allGasMarks().flatMap(({ mark, degC }) => [
      line(across(degC), bottom + 26, across(degC), bottom + 32),
      label(across(degC), bottom + 45, markSigns[mark] ?? mark, { 'text-anchor': 'middle', 'font-size': 11 }),
    ]),
    line(across(allGasMarks()[0]!.degC), bottom + 26, across(allGasMarks().at(-1)!.degC), bottom + 26),
    label(right + 14, bottom + 45, 'gas mark', { 'font-size': 11 }),
  ]
}

/** What a claim says, as a rule under the heat's own, or a dot where it is one figure. Claims that have no vote are hollow. */
function claimMarks({ claims }: OvenHeat, y: number): readonly string[] {
  return claims.map(({ low, high, unit, votes }) => {
    const [from, to] = [low, high ?? low].map((value) => across(unit === 'degF' ? toCelsius(value) : value))
    const shown = { stroke: accent, 'stroke-width': 1, fill: votes ? accent : 'none' }
    return circle((from! + to!) / 2, y, 2.2, shown)
  })
}

function row(heat: OvenHeat, year: number | null, index: number, id: string): readonly string[] {
  const y = top + rowHeight * (index + 0.5)
  const { low, high } = bandForYear(coreOfHeat(heat.id), heat.rank, year)
  const [from, to, coreFrom, coreTo] = [low, high, heat.core.low, heat.core.high].map(across)
  const tick = { 'stroke-width': 1.2 }
  return [
    label(left - 14, y + 4, heat.label, { 'text-anchor': 'end', 'font-size': 13 }),
    line(from!, y - 3, to!, y - 3, tick),
    line(from!, y - 7, from!, y + 1, tick),
    line(to!, y - 7, to!, y + 1, tick),
    rectangle(coreFrom!, y - 7, Math.max(2, coreTo! - coreFrom!), 8, {
      fill: heat.core.byVote ? ink : `url(#${id}-hatch)`,
      stroke: ink,
      'stroke-width': 1,
    }),
    ...claimMarks(heat, y + 8),
    label(right + 14, y + 2, `${Math.round(low)}–${Math.round(high)} °C`, { 'font-size': 12 }),
  ]
}

/**
 * The scale of oven heats as a picture: each heat with its ends, what its books agree on, and what each of them prints.
 *
 * @returns a standalone SVG document
 * @throws PottleError `bad-option` for a year outside 1000 to 2100
 * @example drawHeatScale({ year: 1796 }).startsWith('<svg')   // true
 */
export function drawHeatScale(options: HeatScaleOptions = {}): string {
  const { year: asked, title, id = 'heat-scale' } = requireFields('options', options)
  const year = readYear(asked)
  const heats = [...allHeats()].reverse()
  const bottom = top + rowHeight * heats.length + 6
  const when = year === null ? 'words without a year' : `words of ${year}`
  const said = heats.map((heat) => {
    const { low, high } = bandForYear(coreOfHeat(heat.id), heat.rank, year)
    return `${heat.label}: ${Math.round(low)} to ${Math.round(high)} degrees Celsius`
  })
  const body = [...axes(bottom), ...heats.flatMap((heat, i) => row(heat, year, i, id))]
  return plate(
    { width, height: bottom + 108 },
    {
      id,
      title: title ?? `Oven heats, ${when}`,
      description: `A scale of twelve oven heats, the hottest at the top. ${said.join('; ')}.`,
      caption: [
        'Rule: nine times in ten. Bar: what the books agree on, solid by their vote, hatched by judgement.',
        'Dots: the middle of what each book prints, hollow where it has no vote.',
      ],
    },
    body,
  )
}
