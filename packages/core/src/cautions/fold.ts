/** Most names of the tables, which have no marks to take away. */
const unmarked = /^[a-z]+(?: [a-z]+)*$/

/** Words in lower case: the long s made short, hyphens and all other marks taken as gaps, the sign of possession dropped. */
export function deedWords(text: string): readonly string[] {
  if (unmarked.test(text)) return text.split(' ')
  const plain = text.toLowerCase().replaceAll('ſ', 's').replaceAll('’', "'").replaceAll("'s", '').replaceAll("'", '')
  return plain.match(/[\p{L}\p{N}]+/gu) ?? []
}

/** Lungs are *lights*, and a light paste is none. */
const plurals = new Set(['lights'])

/** One form for the singular and the plural of a noun: it need not be a word, only the same for both. */
function singular(word: string): string {
  if (word.length < 4 || !word.endsWith('s') || plurals.has(word)) return word
  if (/(?:lea|loa|kni|cal|hal)ves$/.test(word)) return `${word.slice(0, -3)}f`
  if (word.endsWith('ies')) return `${word.slice(0, -3)}y`
  if (/(?:ch|sh|ss|x|o)es$/.test(word)) return word.slice(0, -2)
  return word.endsWith('ss') ? word : word.slice(0, -1)
}

/** The words of a deed with nouns in one form for singular and plural. */
export function nounWords(deed: readonly string[]): readonly string[] {
  return deed.map(singular)
}

/** The key under which a noun, its plural and its marks meet: *Peach kernels* and *peach-kernel*. */
export function nounKey(name: string): string {
  return nounWords(deedWords(name)).join(' ')
}

/** The key of a deed, word for word: *potted* is not *pots*. */
export function deedKey(deed: string): string {
  return deedWords(deed).join(' ')
}
