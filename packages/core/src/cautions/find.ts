const none: readonly number[] = []

/**
 * Keys of some words each, to be found in a text: at each of its words only the keys that begin with it are looked at, so that the work grows
 * with the text and not with the number of keys.
 */
export class Keys {
  readonly #byFirst = new Map<string, (readonly string[])[]>()

  constructor(keys: Iterable<string>) {
    for (const key of keys) {
      const words = key.split(' ')
      const alike = this.#byFirst.get(words[0]!)
      if (alike) alike.push(words)
      else this.#byFirst.set(words[0]!, [words])
    }
  }

  /** Every key that stands in the words. */
  all(words: readonly string[]): ReadonlySet<string> {
    const found = new Set<string>()
    for (let start = 0; start < words.length; start++)
      for (const end of this.#endsFrom(words, start)) found.add(words.slice(start, end).join(' '))
    return found
  }

  /** The end of the longest key that begins at a word; that word's own place where none does. */
  endAt(words: readonly string[], start: number): number {
    return Math.max(start, ...this.#endsFrom(words, start))
  }

  /** At each word the longest key that begins there, and nothing inside it: a goose egg is no goose. */
  longest(words: readonly string[]): ReadonlySet<string> {
    const found = new Set<string>()
    for (let start = 0; start < words.length; ) {
      const end = this.endAt(words, start)
      if (end > start) found.add(words.slice(start, end).join(' '))
      start = Math.max(end, start + 1)
    }
    return found
  }

  /** Where the keys end that begin at a word. */
  #endsFrom(words: readonly string[], start: number): readonly number[] {
    const keys = this.#byFirst.get(words[start]!)
    if (keys === undefined) return none
    return keys.filter((key) => key.every((word, i) => word === words[start + i])).map((key) => start + key.length)
  }
}
