/**
 * Answers for embeds out of the library itself.
 *
 * @module @pottle/embed/library
 */
import { convert, dataset, findHeat, type HeatReading, oneYear, PottleError, tellStep, weighLoaf } from '@pottle/core'
import { type Entry, entryOfHeat, entryOfLoaf, entryOfMeasure, type Question } from '../view/index.js'

type Asked = Question['asked']

function measure({ phrase = '', ...options }: Asked): Entry {
  return entryOfMeasure(convert(phrase, options))
}

function heat({ phrase = '', year: date }: Asked): Entry {
  const { year, notes } = oneYear(date)
  const reading: HeatReading = findHeat(phrase, year === null ? {} : { year })
  return entryOfHeat({ ...reading, steps: reading.steps.map(tellStep), notes: [...notes, ...reading.notes], dataset })
}

function loaf({ year, ...asked }: Asked): Entry {
  if (year === undefined) throw new PottleError('bad-option', [{ parameter: 'year', detail: 'give the year of the loaf' }])
  return entryOfLoaf(weighLoaf({ ...asked, year }))
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
