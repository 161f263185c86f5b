import type { Lexicon } from './lexicon.js'
import { mark, type Word } from './word.js'

/** The words of a text, each with its place. Everything that reads walks along one of these. */
export class Line {
  readonly #words: Word[] = []
  readonly #starts: number[] = []
  readonly #ends: number[] = []

  readonly #lexicon: Lexicon

  constructor(
    readonly text: string,
    lexicon: Lexicon,
  ) {
    this.#lexicon = lexicon
  }

  get length(): number {
    return this.#words.length
  }

  /** The word at an index; past the end a mark that matches nothing. */
  at(index: number): Word {
    return index >= 0 && index < this.#words.length ? this.#words[index]! : mark.end
  }

  start(index: number): number {
    return this.#starts[index]!
  }

  end(index: number): number {
    return this.#ends[index]!
  }

  /** The number at an index, whether in words or in digits. */
  value(index: number): number {
    return this.#words[index]!.value
  }

  /** All the roles of the words at an index and behind it. */
  rolesAhead(index: number, count: number): number {
    let roles = 0
    const end = Math.min(index + count, this.#words.length)
    for (let at = index; at < end; at++) roles |= this.#words[at]!.roles
    return roles
  }

  /** All that the names beginning at an index or behind it lead to. */
  leadsAhead(index: number, count: number): number {
    let leads = 0
    const end = Math.min(index + count, this.#words.length)
    for (let at = index; at < end; at++) leads |= this.#words[at]!.leads
    return leads
  }

  is(index: number, role: number): boolean {
    return (this.at(index).roles & role) !== 0
  }

  /** Whether the word is written short, as `lb` or `℥`. */
  short(index: number): boolean {
    return this.#lexicon.isShort(this.text.slice(this.#starts[index], this.#ends[index]))
  }

  push(word: Word, start: number, end: number): void {
    this.#words.push(word)
    this.#starts.push(start)
    this.#ends.push(end)
  }
}
