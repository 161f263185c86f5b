/** Senses of measures that are a part or a multiple of a standard: a pottle is half a gallon, but of which gallon? */
import { noAnswer } from '../error.js'
import { type Dated, findMeasure, holds, type MeasureKind, type MeasureRow, type StandardRow, tolerances } from '../tables/index.js'
import { candidateCalled, standardsUnder, weighCandidates } from './candidate.js'
import type { Question, SenseKind } from './sense.js'
import { senseBy, toldApart } from './standard-sense.js'
import { usageOf } from './usage.js'
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

/** A measure's own rows, those of the standards that it may go by, and those that say which of them was used. */
function rowsOf(measure: MeasureRow): readonly Dated[] {
  const standards = measure.senses.flatMap((row) => standardsUnder(measure, row).map(({ standard }) => standard))
  const families = [...new Set(standards.map(({ family }) => family))]
  return [...measure.senses, ...standards, ...families.flatMap(usageOf)]
}

/** Every measure that the words may mean in one year or another. */
function measuresUnder({ measure, thing, standard }: Question['reading']): readonly MeasureRow[] {
  const plain = [measure, `${measure} of ${thing}`].flatMap((name) => findMeasure(name ?? '') ?? [])
  const special = plain.flatMap(({ id }) => [`heaped ${id}`, `${standard} ${id}`]).flatMap((name) => findMeasure(name) ?? [])
  return [...plain, ...special]
}

/** A kind whose measures all rest on standards. */
export function kindByStandard(kind: MeasureKind): SenseKind {
  return {
    name: kind,
    answers: ({ measure }) => measure?.kind === kind,
    dated: ({ reading }) => [...measuresUnder(reading).flatMap(rowsOf), ...tolerances],
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
