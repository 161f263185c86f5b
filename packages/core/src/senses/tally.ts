/** Things that are counted and that the tables have no weight for: a dozen larks are twelve. */
import { constant } from '../bands/index.js'
import type { SenseKind } from './sense.js'

/**
 * Things by their number, where nothing says what one weighs.
 *
 * @example convert('a dozen larks', { year: 1750 }).value.best   // 12
 */
export const tally: SenseKind = {
  name: 'count',
  answers: ({ reading }) => reading.kind === 'counted' && (reading.measure ?? 'none') === 'none' && reading.amount !== null,
  senses: ({ reading }) => [
    {
      id: 'count.told',
      label: `so many, told one by one; the tables have no weight of ${reading.thing ?? 'such a thing'}`,
      likelihood: 1,
      quantity: 'count',
      value: constant(1),
      exact: '1',
      steps: [{ text: 'counted', factor: '1', grade: 'practice', checked: 'none', sources: [{ id: 'common-practice' }] }],
    },
  ],
}
