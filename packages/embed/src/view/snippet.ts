import type { Entry } from './entry.js'
import { type Question, wordsOf } from './question.js'
import { h, print } from './tree.js'

/**
 * The markup that puts an answer into a web page. What stands inside reads well where no script runs: the words, and the answer of today in the
 * place of the fresh one.
 *
 * @example snippet({ kind: 'measure', asked: { phrase: 'half an hour' } }, entryOfMeasure(convert('half an hour')))   // '<pottle-measure phrase="half an hour">half an hour <span slot="answer">(30 min)</span></pottle-measure>'
 */
export function snippet(question: Question, { short }: Entry): string {
  const standIn = h('span', { slot: 'answer' }, `(${short})`)
  return print(h(`pottle-${question.kind}`, question.asked, `${wordsOf(question)} `, standIn))
}
