import type { AnswerCaution } from './answer.js'
import { type Caution, cautionsFor } from './cautions/index.js'
import { citeShort } from './cite/index.js'
import { Memory } from './memory.js'
import type { Reading } from './reading/index.js'

/** A caution as an answer carries it. */
export function answerCaution({ id, title, text, source }: Caution): AnswerCaution {
  return { id, title, text, sources: source.map(citeShort) }
}

const remembered = new Memory<string, readonly AnswerCaution[]>(2500)

/** Figures warn of nothing: *2 pints* are as dangerous as *3 pints*. */
const figures = /[\d.,/¼-¾⅐-⅞]+/g

/**
 * Warnings that a phrase touches: by its thing, its eggs and its heat, and by its own words, of which a reading keeps no more than what was
 * measured: water hemlock is no water.
 */
export function cautionsAbout(phrase: string, { thing, eggs, heat }: Reading): readonly AnswerCaution[] {
  const text = phrase.replace(figures, ' ')
  const key = `${thing}|${eggs !== null}|${heat}|${text}`
  const known = remembered.get(key)
  if (known) return known
  const things = thing ? [thing] : []
  return remembered.set(key, cautionsFor({ things, eggs: eggs !== null, ...(heat ? { heat } : {}), text }).map(answerCaution))
}
