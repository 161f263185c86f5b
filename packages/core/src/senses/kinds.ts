import { capacity } from './capacity.js'
import { count } from './count.js'
import type { Question, SenseKind } from './sense.js'
import { weight } from './weight.js'

/** Every kind of measure, in the order they are asked. A new kind is a new file and a new entry here. */
const kinds: readonly SenseKind[] = [weight, capacity, count]

/** The first kind that knows what to do with a question; undefined where none does. */
export function kindFor(question: Question): SenseKind | undefined {
  return kinds.find((kind) => kind.answers(question))
}
