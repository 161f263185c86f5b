import {
  type AnswerSource,
  type Band,
  type Caution,
  cautionsFor,
  findHeat,
  type HeatReading,
  oneYear,
  PottleError,
  settingOf,
} from '@pottle/core'
import { sourceNotes } from '../../plain.js'
import type { Asked } from '../parts/asked.js'

/** What is known of a heat phrase, with what the page says besides. */
export interface HeatAnswer {
  readonly reading: HeatReading
  readonly place: string
  readonly notes: readonly string[]
  readonly cautions: readonly Caution[]
  readonly sources: readonly AnswerSource[]
}

/** Every source that a reading rests on, each once. */
export function sourcesOf(
  readings: readonly Pick<HeatReading, 'claims' | 'goods' | 'tests' | 'steps'>[],
  cautions: readonly Caution[],
): readonly AnswerSource[] {
  const cited = readings.flatMap(({ steps, claims, goods, tests }) =>
    [...steps, ...claims, ...goods, ...tests].flatMap(({ sources }) => sources),
  )
  return sourceNotes([...cited, ...cautions.flatMap(({ source }) => source)])
}

function readHeat({ phrase = '', year, place = 'england' }: Asked): HeatAnswer {
  settingOf(null, place)
  const when = oneYear(year)
  const reading = findHeat(phrase, when.year === null ? {} : { year: when.year })
  const cautions = cautionsFor({ heat: phrase })
  const readings = reading.then ? [reading, reading.then] : [reading]
  return { reading, place, notes: [...when.notes, ...reading.notes], cautions, sources: sourcesOf(readings, cautions) }
}

/** What the form asks of the library, or why there is no answer. */
export function askHeat(asked: Asked): HeatAnswer | PottleError {
  try {
    return readHeat(asked)
  } catch (error) {
    if (error instanceof PottleError) return error
    throw error
  }
}

const dial = (celsius: number): number => Math.round(celsius / 5) * 5

/** What to set each kind of oven to. */
export interface OvenDial {
  readonly oven: string
  readonly set: string
  readonly ends: string
}

/** The four dials that a kitchen may have. The texts of the library carry their ends in brackets; here they stand apart. */
export function dialsFor(band: Band, modern: HeatReading['modern']): readonly OvenDial[] {
  const textOf = (unit: string): readonly [string, string] => {
    const text = modern.find((one) => one.unit === unit)?.text ?? ''
    const open = text.indexOf(' (')
    return open < 0 ? [text, ''] : [text.slice(0, open), text.slice(open + 2, -1)]
  }
  const [degF, degFEnds] = textOf('degF')
  const [fan, fanEnds] = textOf('degC-fan')
  return [
    { oven: 'Celsius', set: `${dial(band.best)}\u00a0°C`, ends: `${dial(band.low)} to ${dial(band.high)}` },
    { oven: 'With a fan', set: fan.replace(' fan', ''), ends: fanEnds },
    { oven: 'Fahrenheit', set: degF, ends: degFEnds },
    { oven: 'Gas', set: textOf('gas-mark')[0].replace('gas mark', 'mark'), ends: '' },
  ]
}
