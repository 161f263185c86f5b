import { capacity } from './capacity.js'
import { comparison } from './comparison.js'
import { count } from './count.js'
import { egg } from './egg.js'
import { loaf } from './loaf.js'
import type { Question, SenseKind } from './sense.js'
import { vessel } from './vessel.js'
import { weight } from './weight.js'

/** Every kind of measure, in the order they are asked: those of narrow words before those of wide ones. A new kind is a new file and a new entry here. */
const kinds: readonly SenseKind[] = [loaf, egg, comparison, vessel, weight, capacity, count]

/** The first kind that knows what to do with a question; undefined where none does. */
export function kindFor(question: Question): SenseKind | undefined {
  return kinds.find((kind) => kind.answers(question))
}
