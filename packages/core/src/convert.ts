import type { Answer } from './answer.js'
import { badOption } from './error.js'
import { LazyAnswer } from './lazy-answer.js'
import { type CheckedOptions, type ConvertOptions, checkOptions, mostPhrase } from './options.js'
import { type Reading, readPhrase } from './reading/index.js'
import { resolve } from './resolve.js'
import type { Resolved } from './resolved.js'
import { Slots } from './slots.js'

/** A phrase with its options, and what came of it. */
interface Asked {
  readonly checked: CheckedOptions
  readonly read: Reading
  readonly resolved: Resolved
}

const lately = new Slots<Asked>(4096)

/** Whether the same was asked of a phrase; only settings that are the same have the same object. */
function isSame(one: CheckedOptions, other: CheckedOptions): boolean {
  return (
    one.setting === other.setting &&
    one.coverage === other.coverage &&
    one.thing === other.thing &&
    one.quantity === other.quantity &&
    one.standard === other.standard
  )
}

function ask(phrase: string, checked: CheckedOptions): Asked {
  const known = lately.get(phrase)
  if (known && isSame(known.checked, checked)) return known
  const said = readPhrase(phrase)
  const read = checked.thing ? { ...said, thing: checked.thing } : said
  const fresh = { checked, read, resolved: resolve(read, checked) }
  lately.set(phrase, fresh)
  return fresh
}

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
  const { read, resolved } = ask(phrase, checked)
  return new LazyAnswer(phrase, read, checked, resolved)
}
