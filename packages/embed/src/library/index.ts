/**
 * Answers for embeds out of the library itself.
 *
 * @module @pottle/embed/library
 */
import {
  convert,
  dataset,
  findHeat,
  type HeatReading,
  inModernUnits,
  loavesOver,
  mixtureBand,
  PottleError,
  settingOf,
  tellStep,
} from '@pottle/core'
import { type Entry, entryOfHeat, entryOfLoaf, entryOfMeasure, type Question } from '../view/index.js'

type Asked = Question['asked']

function measure({ phrase = '', ...options }: Asked): Entry {
  return entryOfMeasure(convert(phrase, options))
}

/** The year that heat words are taken to be of: the middle of a date that leaves several open. */
function oneYear(date: string | undefined): { year?: number; notes: string[] } {
  if (date === undefined) return { notes: [] }
  if (/^\d{4}$/.test(date)) return { year: Number(date), notes: [] }
  const { from, to } = settingOf(date)
  const year = Math.floor((from + to) / 2)
  return { year, notes: from === to ? [] : [`The words are taken as those of ${year}, the middle of ${date}.`] }
}

function heat({ phrase = '', year: date }: Asked): Entry {
  const { notes, ...setting } = oneYear(date)
  const reading: HeatReading = findHeat(phrase, setting)
  return entryOfHeat({ ...reading, steps: reading.steps.map(tellStep), notes: [...notes, ...reading.notes], dataset })
}

/** The loaf of a year, or of the years that a date leaves open; the likeliest rule first. */
function loaf({ coin, kind, year: date, place }: Asked): Entry {
  if (date === undefined) throw new PottleError('bad-option', [{ parameter: 'year', detail: 'give the year of the loaf' }])
  const { moments, places, year, from, to } = settingOf(date, place)
  const asked = { place: places, ...(coin ? { coin } : {}), ...(kind ? { kind } : {}) }
  const loaves = loavesOver(asked, moments, year ?? 'undated')
    .map(({ loaf, years }) => ({ loaf, weight: years.reduce((sum, { weight }) => sum + weight, 0) }))
    .sort((a, b) => b.weight - a.weight)
  const band = mixtureBand(
    loaves.map(({ loaf, weight }) => ({ weight, value: loaf.value })),
    0.9,
  )
  const { label, exact, steps } = loaves[0]!.loaf
  return entryOfLoaf({
    setting: { year: from === to ? from : year, place: places[0]! },
    loaf: { label },
    value: { quantity: 'mass', unit: 'g', ...band },
    exact: loaves.length === 1 ? (exact ?? null) : null,
    modern: inModernUnits('mass', band),
    steps: steps.map(tellStep),
    dataset,
  })
}

const answers: Readonly<Record<Question['kind'], (asked: Asked) => Entry>> = { measure, heat, loaf }

/**
 * Answers a question by the library, with no server in between.
 *
 * @throws PottleError that names what was wrong and what would be right
 * @example answerQuestion({ kind: 'measure', asked: { phrase: 'a pottle of cream', year: '1690' } }).short   // 'about 1.9 litres'
 */
export function answerQuestion({ kind, asked }: Question): Entry {
  return answers[kind](asked)
}
