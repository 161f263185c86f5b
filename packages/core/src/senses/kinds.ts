import { capacity } from './capacity.js'
import { coin } from './coin.js'
import { comparison } from './comparison.js'
import { consistency } from './consistency.js'
import { count } from './count.js'
import { egg } from './egg.js'
import { length } from './length.js'
import { loaf } from './loaf.js'
import { pennyworth } from './pennyworth.js'
import { piece, unknownPiece } from './piece.js'
import type { Question, SenseKind } from './sense.js'
import { tale } from './tale.js'
import { tally } from './tally.js'
import { temperature } from './temperature.js'
import { time } from './time.js'
import { vessel } from './vessel.js'
import { warmth } from './warmth.js'
import { weight } from './weight.js'

/** Every kind of measure, in the order they are asked: those of narrow words before those of wide ones. A new kind is a new file and a new entry here. */
const kinds: readonly SenseKind[] = [
  warmth,
  temperature,
  time,
  length,
  consistency,
  loaf,
  pennyworth,
  egg,
  tale,
  coin,
  comparison,
  piece,
  vessel,
  weight,
  capacity,
  unknownPiece,
  count,
  tally,
]

/** The first kind that knows what to do with a question; undefined where none does. */
export function kindFor(question: Question): SenseKind | undefined {
  return kinds.find((kind) => kind.answers(question))
}
