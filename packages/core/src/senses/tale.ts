/** Things counted by a number word that meant more than it says: a hundred of oranges, by the long hundred, is 120, and of raisins a weight. */
import { times } from '../bands/index.js'
import { piece } from './piece.js'
import { qualify } from './qualifier.js'
import type { Question, Sense, SenseKind } from './sense.js'
import { tally } from './tally.js'
import { saysPlainly, type Told, taleOf, toldBy, weighedBy } from './told.js'

/** The same question with the number word taken at its face. */
function atItsFace(question: Question): Question {
  const { tale: _, ...reading } = question.reading
  return { ...question, reading }
}

function told(sense: Sense, { id, label, each, likelihood, step }: Told): Sense {
  return {
    ...sense,
    id: `${sense.id}.${id}`,
    label: `${label}; ${sense.label}`,
    likelihood: sense.likelihood * likelihood,
    value: times(sense.value, each),
    each,
    ...(sense.exact === undefined ? {} : { exact: String(Number(sense.exact) * each) }),
    steps: [step, ...sense.steps],
  }
}

/**
 * Whole things told by the hundred and its like, by their weight where the tables know it, else by their number.
 *
 * @example convert('a hundred of oranges', { year: 1700 }).value.best   // 15600
 */
export const tale: SenseKind = {
  name: 'tale',
  answers: ({ reading }) => reading.tale !== undefined && reading.kind === 'counted' && taleOf(reading) !== undefined,
  senses: (question) => {
    const weighed = weighedBy(question)
    if (weighed.length > 0) return weighed
    const plain = atItsFace(question)
    const senses = piece.answers(plain)
      ? piece.senses(plain).map((sense) => qualify(sense, plain.reading.qualifier, piece.name))
      : tally.senses(plain)
    const tales = toldBy(question)
    return saysPlainly(tales) ? senses : tales.flatMap((one) => senses.map((sense) => told(sense, one)))
  },
}
