import type { Band } from '../bands/index.js'
import { badOption, noAnswer, show } from '../error.js'
import { type OvenTestRow, ovenTests } from '../tables/index.js'
import { type Cited, cited } from './cited.js'
import { celsiusSteps, coverage, requireOvenHeat, requirePositive, tidy, toCelsius } from './degrees.js'
import { median } from './median.js'
import { bestOfHeat, type HeatName, heatNearest, heatRow, nameOf } from './scale.js'

/** A cook's test of an oven, as a dated book has it. */
export interface OvenTest extends Cited {
  readonly id: string
  readonly kind: OvenTestRow['kind']
  readonly observation: string
  readonly meaning: string
  readonly heat: string
  /** Degrees where the book itself prints them; else null. */
  readonly degF: readonly [number, number] | null
  readonly year: number
}

/** What was seen: how long the hand was borne, or when paper or flour took which colour. */
export interface OvenSign {
  readonly kind: 'paper' | 'flour' | 'hand'
  readonly seconds?: number
  readonly colour?: PaperColour
}

/** What paper or flour turns to, from unchanged to black. */
export type PaperColour = 'white' | 'light-yellow' | 'dark-yellow' | 'light-brown' | 'golden-brown' | 'dark-brown' | 'black'

/** The place of a colour is its number in data/oven-tests.json. */
const colours: readonly PaperColour[] = ['white', 'light-yellow', 'dark-yellow', 'light-brown', 'golden-brown', 'dark-brown', 'black']

/** The heat that a test stands for, by the books that have one like it. */
export interface TestReading {
  readonly sign: OvenSign
  readonly heat: HeatName
  /** In degC. */
  readonly value: Band
  /** The tests that bear on it. */
  readonly matches: readonly OvenTest[]
  readonly advice: string
}

/** Two books differ by this much over one count of the hand, in degF (Beecher 1846 and Kellogg 1893 both say that people differ). Judgement. */
const slack = 50
const advice = 'An oven thermometer replaces this test; never try an oven with the bare hand or with burning paper.'

/** A row in its public form. */
export function asTest(row: OvenTestRow): OvenTest {
  const { id, kind, observation, meaning, heat, degF = null, year } = row
  return { id, kind, observation, meaning, heat, degF, year, ...cited(row) }
}

/** The middle of what a test stands for, in degC: its own degrees, or its heat's. */
function middleOf({ degF, heat }: OvenTestRow): number {
  return degF ? toCelsius((degF[0] + degF[1]) / 2) : bestOfHeat(heat)
}

/** How far a row is from what was seen: one for each doubling of the time and one for each shade. Rows that lack what was seen are far. */
function distance(row: OvenTestRow, seconds: number | undefined, shade: number | undefined): number {
  const far = 2
  const time = seconds === undefined ? 0 : row.seconds === undefined ? far : Math.abs(Math.log2(seconds / row.seconds))
  const colour = shade === undefined ? 0 : row.colour === undefined ? far : Math.abs(shade - row.colour)
  return time + colour
}

const farthest = 1
/** Rows this much farther than the nearest still speak. */
const besides = 0.3

/** The tests of the books nearest to what was seen; none where the nearest is far. */
function matching({ kind, seconds, colour }: OvenSign): readonly OvenTestRow[] {
  const shade = colour === undefined ? undefined : colours.indexOf(colour)
  const ranked = ovenTests.filter((row) => row.kind === kind).map((row) => ({ row, off: distance(row, seconds, shade) }))
  const nearest = Math.min(...ranked.map(({ off }) => off))
  return nearest > farthest ? [] : ranked.filter(({ off }) => off <= nearest + besides).map(({ row }) => row)
}

function checkSign({ kind, seconds, colour }: OvenSign): void {
  if (!['paper', 'flour', 'hand'].includes(kind))
    throw badOption('kind', `${show(kind)} is not a test of an oven; give paper, flour or hand`)
  if (seconds !== undefined) requirePositive('seconds', seconds, 'seconds')
  if (colour !== undefined && !colours.includes(colour))
    throw badOption('colour', `${show(colour)} is not a colour of these tests; give one of ${colours.join(', ')}`)
  if (kind === 'hand' && seconds === undefined) throw badOption('seconds', 'say how many seconds the hand was borne')
  if (kind !== 'hand' && seconds === undefined && colour === undefined)
    throw badOption('colour', `say what colour the ${kind} took, or after how many seconds`)
}

/**
 * The heat of an oven from a cook's test of it.
 *
 * The tests of the books that are nearest in time and colour speak, and the middle of what they stand for is taken, within 50 degF: the books
 * differ by as much as that among themselves.
 *
 * @param sign `seconds` the hand was borne; or the `colour` that paper or flour took, and after how many `seconds`
 * @throws PottleError `bad-option` for a sign that says too little, `no-answer` when no book has a test like it
 * @example heatFromTest({ kind: 'hand', seconds: 10 }).heat.id   // 'hot'
 */
export function heatFromTest(sign: OvenSign): TestReading {
  checkSign(sign)
  const reading = readTest(sign)
  if (!reading)
    throw noAnswer(
      'seconds',
      `no book has a ${sign.kind} test like that; the nearest takes less than half or more than twice the time, or another colour`,
    )
  return reading
}

/** As `heatFromTest`, with nothing where no book has a test like it. */
export function readTest(sign: OvenSign): TestReading | undefined {
  const rows = matching(sign)
  if (rows.length === 0) return undefined
  const best = median(rows.map(middleOf))
  const by = celsiusSteps(slack)
  // Where all the tests name one heat, that is the answer; else the heat nearest to their middle.
  const heat = new Set(rows.map((row) => row.heat)).size === 1 ? heatRow(rows[0]!.heat) : heatNearest(best)
  return {
    sign,
    heat: nameOf(heat),
    value: { low: tidy(best - by), best: tidy(best), high: tidy(best + by), coverage },
    matches: rows.map(asTest),
    advice,
  }
}

/**
 * The tests that a cook of old would have made of an oven of a temperature, the likest first.
 *
 * @param celsius the oven, in degC
 * @throws PottleError `bad-option` for a temperature that no oven has
 * @example testsForHeat(232)[0]?.heat   // 'hot'
 */
export function testsForHeat(celsius: number): readonly OvenTest[] {
  requireOvenHeat('celsius', celsius)
  const off = (row: OvenTestRow): number => Math.abs(middleOf(row) - celsius)
  return ovenTests
    .filter((row) => off(row) <= celsiusSteps(slack))
    .sort((a, b) => off(a) - off(b) || (a.id < b.id ? -1 : 1))
    .map(asTest)
}
