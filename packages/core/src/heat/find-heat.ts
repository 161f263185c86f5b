import type { Band } from '../bands/index.js'
import { requireFields, requireWord } from '../error.js'
import { Memory } from '../memory.js'
import { method, widen } from './consensus.js'
import { bandInCelsius, tidy, toCelsius } from './degrees.js'
import { stepsOf, weakestOf } from './derivation.js'
import { claimsFor, goodsFor, testsFor } from './evidence.js'
import type { Found } from './found.js'
import { grammatical } from './grammar.js'
import { byDegrees, findIn, halves, unreadable } from './phrase.js'
import type { HeatReading, HeatSetting } from './reading.js'
import { ofFire } from './relations.js'
import { coreOfHeat, heatRow, nameOf } from './scale.js'
import { modernSettings } from './settings.js'
import { type Word, wordsOf } from './words.js'
import { readYear } from './year.js'

type Core = Found['core']

const middleOf = ({ low, best, high }: Core): number => best ?? (low + high) / 2

/**
 * A heat's ends for a year as a band in degC.
 *
 * @example bandForYear({ low: 350, high: 375 }, 6, 1861).best   // 183.611
 */
export function bandForYear(core: Core, rank: number, year: number | null): Band {
  return bandInCelsius({ ...widen(core, rank, year), best: middleOf(core) })
}

const fireNote = 'Of a fire the word gives the order alone; the degrees are those of an oven of the same name.'

function bandOfFound({ core, heat, via, relation }: Found, year: number | null): Band {
  // Relations, goods and stated degrees bring their whole doubt with them; the scale's own words are widened for their years.
  const settled = relation !== undefined || via === 'goods' || via === 'degrees' || (via === 'test' && core.best !== undefined)
  if (!settled) return bandForYear(core, heatRow(heat).rank, year)
  return bandInCelsius({ low: core.low, best: middleOf(core), high: core.high })
}

function assemble(phrase: string, words: readonly Word[], found: Found, year: number | null, then: HeatReading | null): HeatReading {
  const band = bandOfFound(found, year)
  const { heat, core, relation, others, notes } = found
  const fire = ofFire(words)
  const used = new Set(found.used)
  const steps = stepsOf(found, year)
  return {
    phrase,
    setting: { year },
    heat: nameOf(heatRow(heat)),
    value: { quantity: 'temperature', unit: 'degC', ...band },
    core: { low: tidy(toCelsius(core.low)), high: tidy(toCelsius(core.high)) },
    modern: modernSettings(band),
    claims: claimsFor(heat, year),
    goods: goodsFor([heat, ...(relation ? [relation.id] : [])], year),
    tests: testsFor(heat, year),
    relation: relation ? { id: relation.id, label: relation.label, falling: relation.falling } : null,
    of: fire ? 'fire' : 'oven',
    likelihood: found.likelihood,
    others: others.map((other) => ({
      ...nameOf(heatRow(other.heat)),
      likelihood: other.likelihood,
      value: bandForYear(coreOfHeat(other.heat), heatRow(other.heat).rank, year),
      note: other.note ?? null,
    })),
    steps,
    weakest: weakestOf(steps),
    notes: fire ? [...notes, fireNote] : notes,
    unread: words.filter(({ at, key }) => !used.has(at) && !grammatical.has(key)).map(({ text }) => text),
    then,
    method,
  }
}

function read(phrase: string, year: number | null): HeatReading {
  const words = wordsOf(phrase)
  const stated = byDegrees(phrase, words)
  if (stated) return assemble(phrase, words, stated, year, null)
  const [first, second] = halves(words) ?? [words, []]
  const [before, afterwards] = [findIn(first, year), findIn(second, year)]
  if (before && afterwards) return assemble(phrase, first, before, year, assemble(phrase, second, afterwards, year, null))
  const found = findIn(words, year)
  if (!found) throw unreadable(phrase, words)
  return assemble(phrase, words, found, year, null)
}

/** A receipt book says the same heats over and over. */
const remembered = new Memory<string, HeatReading>(1000)

/**
 * What an oven-heat phrase means: its place on the scale, degrees with a band, what dated sources print, and what to set a modern oven to.
 *
 * Takes adjectives in any old spelling (*a slacke ouen*), bent (*pretty quick*, *not too hot*), compared (*something slower than for bread*), told
 * by what else is baked (*as hot as for manchet*, *after the bread is drawn*, *all night*), and plain degrees or gas marks. A year widens or
 * shifts the meaning: *gentle* is slow before 1800 and moderate after.
 *
 * @param setting `year`: when the words were written; without one the slack is that of undated words
 * @throws PottleError `unreadable` with the nearest heats when no heat is named; `bad-option` for words that contradict each other
 * @example findHeat('a slack oven', { year: 1796 }).heat.id   // 'slow'
 */
export function findHeat(phrase: string, setting: HeatSetting = {}): HeatReading {
  requireWord('phrase', phrase)
  const year = readYear(requireFields('setting', setting).year)
  const key = `${year}|${phrase}`
  return remembered.get(key) ?? remembered.set(key, read(phrase, year))
}
