/** Senses of measures that are a part or a multiple of a standard: a pottle is half a gallon, but of which gallon? */
import { noAnswer } from '../error.js'
import { findMeasure, holds, type MeasureKind, type MeasureRow, type StandardRow } from '../tables/index.js'
import { candidateCalled, standardsUnder, weighCandidates } from './candidate.js'
import type { Question, SenseKind } from './sense.js'
import { senseBy, toldApart } from './standard-sense.js'
import { isWordFor } from './worded.js'

/** Whether a measure has a sense, then and there, by a standard that meets a test. */
function isKnown(measure: MeasureRow, { moments, places }: Question['setting'], test: (standard: StandardRow) => boolean): boolean {
  return moments.some(({ year }) =>
    measure.senses.some(
      (row) =>
        holds(row, year, places) && standardsUnder(measure, row).some(({ standard }) => test(standard) && holds(standard, year, places)),
    ),
  )
}

/** *A heaped bushel* is a measure of its own while the law knew it, and so is a Scotch pint out of Scotland. */
function measureMeant({ measure, reading, setting }: Question): MeasureRow {
  const { qualifier, standard } = reading
  const heaped = qualifier === 'heaped' ? findMeasure(`heaped ${measure!.id}`) : undefined
  if (heaped && isKnown(heaped, setting, () => true)) return heaped
  const named = standard ? findMeasure(`${standard} ${measure!.id}`) : undefined
  return named && !isKnown(measure!, setting, (one) => isWordFor(standard!, one)) ? named : measure!
}

/** A kind whose measures all rest on standards. */
export function kindByStandard(kind: MeasureKind): SenseKind {
  return {
    name: kind,
    answers: ({ measure }) => measure?.kind === kind,
    senses: (question) => {
      const measure = measureMeant(question)
      const candidates = question.standard ? [candidateCalled(measure, question.standard)] : weighCandidates(question, measure)
      if (candidates.length === 0) throw noAnswer('year', `no ${measure.label} of that kind is known in that year and place`)
      const qualified = measure !== question.measure && question.reading.qualifier === 'heaped'
      const senses = candidates.sort((a, b) => b.weight - a.weight).map((candidate) => senseBy(question, measure, candidate))
      return toldApart(senses).map((sense) => ({ ...sense, ...(qualified ? { qualified } : {}) }))
    },
  }
}
