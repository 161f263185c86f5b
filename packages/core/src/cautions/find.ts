/** What the keys that begin with some words go on with, and whether one ends here. */
interface Branch {
  readonly next: Map<string, Branch>
  ends: boolean
}

const newBranch = (): Branch => ({ next: new Map(), ends: false })

/**
 * Keys of some words each, to be found in a text: at each of its words only the keys that begin there are followed, so that the work grows with
 * the text and not with the number of keys.
 */
export class Keys {
  readonly #root: Branch = newBranch()

  constructor(keys: Iterable<string>) {
    for (const key of keys) {
      let branch = this.#root
      for (const word of key.split(' ')) {
        const next = branch.next.get(word) ?? newBranch()
        branch.next.set(word, next)
        branch = next
      }
      branch.ends = true
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
    return this.#endsFrom(words, start).at(-1) ?? start
  }

  /** At each word the longest key that begins there, and nothing inside it: a goose egg is no goose. */
  longest(words: readonly string[]): ReadonlySet<string> {
    const found = new Set<string>()
    for (let start = 0; start < words.length; ) {
      const end = this.#endsFrom(words, start).at(-1)
      if (end !== undefined) found.add(words.slice(start, end).join(' '))
      start = end ?? start + 1
    }
    return found
  }

  /** Where the keys end that begin at a word, the shortest first. */
  #endsFrom(words: readonly string[], start: number): readonly number[] {
    let branch = this.#root.next.get(words[start]!)
    if (branch === undefined) return none
    const ends: number[] = []
    for (let end = start + 1; branch !== undefined; end++) {
      if (branch.ends) ends.push(end)
      branch = branch.next.get(words[end]!)
    }
    return ends
  }
}

const none: readonly number[] = []
