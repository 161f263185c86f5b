/** How many words the longest name or method of the tables has. */
const longest = 6

/** Words in lower case: the long s made short, hyphens and all other marks taken as gaps, the sign of possession dropped. */
function wordsOf(text: string): readonly string[] {
  const plain = text.toLowerCase().replaceAll('ſ', 's').replaceAll('’', "'").replaceAll("'s", '').replaceAll("'", '')
  return plain.match(/[\p{L}\p{N}]+/gu) ?? []
}

/** One form for the singular and the plural of a noun: it need not be a word, only the same for both. */
function singular(word: string): string {
  if (word.length < 4) return word
  if (/(?:lea|loa|kni|cal|hal)ves$/.test(word)) return `${word.slice(0, -3)}f`
  if (word.endsWith('ies')) return `${word.slice(0, -3)}y`
  if (/(?:ch|sh|ss|x|o)es$/.test(word)) return word.slice(0, -2)
  return word.endsWith('s') && !word.endsWith('ss') ? word.slice(0, -1) : word
}

/** The key under which a noun, its plural and its marks meet: *Peach kernels* and *peach-kernel*. */
export function nounKey(name: string): string {
  return wordsOf(name).map(singular).join(' ')
}

/** The key of a deed, word for word: *potted* is not *pots*. */
export function deedKey(deed: string): string {
  return wordsOf(deed).join(' ')
}

/** Every stretch of up to six words, the longest first, from each word on. The work grows with the length of the text alone. */
function* stretches(words: readonly string[], start: number): Generator<{ readonly key: string; readonly end: number }> {
  for (let end = Math.min(start + longest, words.length); end > start; end--) yield { key: words.slice(start, end).join(' '), end }
}

/**
 * What a text names: at each word the longest name that begins there, and nothing inside it. A goose egg is no goose.
 *
 * @param named what a key names, if anything
 * @example namesIn('Two laurel leaves', (key) => (key === 'laurel leaf' ? key : undefined))   // ['laurel leaf']
 */
export function namesIn<Named>(text: string, named: (key: string) => Named | undefined): readonly Named[] {
  const words = wordsOf(text).map(singular)
  const found: Named[] = []
  for (let start = 0; start < words.length; ) {
    let next = start + 1
    for (const { key, end } of stretches(words, start)) {
      const name = named(key)
      if (name === undefined) continue
      found.push(name)
      next = end
      break
    }
    start = next
  }
  return found
}

/** Every run of words of a text that may be a deed. */
export function deedsIn(text: string): ReadonlySet<string> {
  const words = wordsOf(text)
  const deeds = new Set<string>()
  for (let start = 0; start < words.length; start++) for (const { key } of stretches(words, start)) deeds.add(key)
  return deeds
}
