import type { Answer } from './answer.js'
import { badOption } from './error.js'
import { LazyAnswer } from './lazy-answer.js'
import { type ConvertOptions, checkOptions, mostPhrase } from './options.js'
import { readPhrase } from './reading/index.js'

/**
 * Turns a period phrase into a modern measure: with a band, the possible senses, every step and its source.
 *
 * @param phrase the words as the book has them, at most 1,000 characters: `a pottle of cream`
 * @throws PottleError `bad-option` names each option that is wrong; `unreadable` says which words were understood; `no-answer` says why there is none
 * @example convert('a pottle of cream', { year: 1690, place: 'london' }).text   // 'about 1.9 litres, 8 US cups; 1.9 kg'
 */
export function convert(phrase: string, options: ConvertOptions = {}): Answer {
  const checked = checkOptions(options)
  if (typeof phrase !== 'string' || phrase.trim() === '')
    throw badOption('phrase', 'give the words of a measure, such as "a pottle of cream"')
  if (phrase.length > mostPhrase)
    throw badOption(
      'phrase',
      `the phrase has ${phrase.length} characters; at most ${mostPhrase} are read. Send a whole receipt as a receipt`,
    )
  const reading = readPhrase(phrase)
  return new LazyAnswer(phrase, checked.thing ? { ...reading, thing: checked.thing } : reading, checked)
}
