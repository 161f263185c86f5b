/**
 * Thickness by likeness: *as thick as a pancake batter*, *stiff enough to roll*.
 *
 * The answer is a ratio, millilitres of liquid to a gram of the dry goods, so that an open quantity (*so much milk as will make it…*) can be
 * estimated from the other ingredients. Handbooks state it by measure: a pour batter is one of liquid to one of flour, a drop batter to two, a
 * soft dough to three (Williams and Fisher, Theory and Practice of Cookery, 1901).
 */
import { noAnswer } from '../error.js'
import { consistencies, type SizedRow } from '../tables/index.js'
import { byKey, keyOf } from './name.js'
import type { Question, SenseKind } from './sense.js'
import { sensesOfSized } from './sized.js'

const index = byKey(consistencies)

/** Words that lead to what a mixture is to be like. */
const lead =
  /^(?:the )?(?:(?:as )?(?:thick|thin|stiff|light|soft)(?:ness)? (?:as|of|like)|(?:consistency|consistence) of|like) (?:a |an |the )?/

function consistencyIn({ reading }: Question): SizedRow | undefined {
  const words = (reading.measure ?? reading.thing ?? '').toLowerCase()
  return index().get(keyOf(words)) ?? index().get(keyOf(words.replace(lead, '')))
}

/**
 * How much liquid goes to a gram of dry goods for a thickness, in ml.
 *
 * @throws PottleError `no-answer` for a likeness that no handbook puts in figures
 * @example convert('as thick as cream', { year: 1830 }).value.best   // 3.57
 */
export const consistency: SenseKind = {
  name: 'consistency',
  answers: ({ reading }) => reading.kind === 'consistency',
  senses: (question) => {
    const row = consistencyIn(question)
    if (row) return sensesOfSized(row, 'ratio', question)
    const said = (question.reading.measure ?? question.reading.thing ?? '').slice(0, 40)
    const known = consistencies.map(({ id }) => id.replaceAll('-', ' ')).join(', ')
    throw noAnswer('phrase', `no handbook puts a thickness like "${said}" in figures; there are figures for ${known}`)
  },
}
