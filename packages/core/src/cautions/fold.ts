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

/**
 * Every run of up to six words of a text, as nouns and as deeds. The work grows with the length of the text alone.
 *
 * @example keysIn('Two laurel leaves').nouns.has('laurel leaf')   // true
 */
export function keysIn(text: string): { readonly nouns: ReadonlySet<string>; readonly deeds: ReadonlySet<string> } {
  const words = wordsOf(text)
  const stems = words.map(singular)
  const nouns = new Set<string>()
  const deeds = new Set<string>()
  for (let start = 0; start < words.length; start++)
    for (let end = start + 1; end <= Math.min(start + longest, words.length); end++) {
      nouns.add(stems.slice(start, end).join(' '))
      deeds.add(words.slice(start, end).join(' '))
    }
  return { nouns, deeds }
}
