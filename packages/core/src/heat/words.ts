import { badOption } from '../error.js'

/** One word of a phrase, and the key under which all its spellings fall together. */
export interface Word {
  readonly text: string
  readonly key: string
  readonly at: number
}

/** Longer phrases than this are receipts. */
const mostCharacters = 1000

/** Spellings that no rule below reaches. */
const alike: ReadonlyMap<string, string> = new Map([
  ['houshold', 'household'],
  ['howshold', 'household'],
  ['howsholde', 'household'],
  ['housholde', 'household'],
  ['feirce', 'fierce'],
  ['fearce', 'fierce'],
  ['drawen', 'drawn'],
  ['skorching', 'scorching'],
  ['prety', 'pretty'],
  ['prettie', 'pretty'],
  ['verrie', 'very'],
  ['oue', 'oven'],
  ['souffle', 'soufflé'],
])

const doubled = /([b-df-hj-np-tv-z])\1/g

/**
 * A word without the letters that its spellings differ in: final e, doubled consonants, y for i, v for u, the wh of *whot*. Keys are only
 * compared with keys.
 *
 * @example keyOf('Whote') === keyOf('hot')   // true
 */
export function keyOf(word: string): string {
  const plain = word.toLowerCase().replaceAll('ſ', 's').replaceAll('vv', 'w')
  return (alike.get(plain) ?? plain)
    .normalize('NFKD')
    .replace(/[̀-ͯ]/g, '')
    .replaceAll('v', 'u')
    .replaceAll('j', 'i')
    .replaceAll('y', 'i')
    .replaceAll('ck', 'k')
    .replaceAll('tch', 'ch')
    .replace(/^who/, 'ho')
    .replace(doubled, '$1')
    .replace(/[ae]i|au|ea/g, (pair) => (pair === 'ea' || pair === 'ei' ? 'e' : 'a'))
    .replaceAll('oa', 'o')
    .replace(/(.{3})s$/, '$1')
    .replace(/il$/, 'l')
    .replace(/eli$/, 'li')
    .replace(/ie$/, 'i')
    .replace(/e$/, '')
}

/**
 * The words of a phrase; hyphens and every other mark part them.
 *
 * @throws PottleError `bad-option` for an empty phrase and one of more than 1,000 characters
 */
export function wordsOf(phrase: string): readonly Word[] {
  if (typeof phrase !== 'string' || phrase.trim() === '') throw badOption('phrase', 'give the words of a heat, such as "a slack oven"')
  if (phrase.length > mostCharacters)
    throw badOption('phrase', `the phrase has ${phrase.length} characters; at most ${mostCharacters} are read`)
  return (phrase.match(/[\p{L}\p{N}]+/gu) ?? []).map((text, at) => ({ text, key: keyOf(text), at }))
}

export const keysOf = (words: string): readonly string[] => wordsOf(words).map(({ key }) => key)

/** Whether a run of keys stands in the words from a place on. */
export function standsAt(words: readonly Word[], at: number, keys: readonly string[]): boolean {
  return keys.every((key, i) => words[at + i]?.key === key)
}

/** A set of words by their keys. */
export const wordSet = (words: string): ReadonlySet<string> => new Set(words.split(' ').map(keyOf))
