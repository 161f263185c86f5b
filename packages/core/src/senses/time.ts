import { durations, type SizedRow } from '../tables/index.js'
import { byKey, keyOf } from './name.js'
import type { Question, SenseKind } from './sense.js'
import { sensesOfSized } from './sized.js'

const index = byKey(durations)

function durationIn({ reading }: Question): SizedRow | undefined {
  return reading.kind === 'time' && reading.measure ? index().get(keyOf(reading.measure)) : undefined
}

/**
 * Times, in seconds: by the clock, by prayers said, by the walking of a mile, by the boiling of a pot.
 *
 * @example convert('two hours', { year: 1700 }).value.best   // 7200
 */
export const time: SenseKind = {
  name: 'time',
  answers: (question) => durationIn(question) !== undefined,
  senses: (question) => sensesOfSized(durationIn(question)!, 'time', question),
}
