/**
 * Remembers what was worked out lately, in two generations: what is asked for is in the young one, which becomes the old one when it is full. So
 * what was not asked for since is forgotten, and nothing that is asked for often.
 */
export class Memory<Key, Value extends NonNullable<unknown>> {
  readonly #most: number
  #young = new Map<Key, Value>()
  #old = new Map<Key, Value>()

  /** @param most how many values a generation holds */
  constructor(most: number) {
    this.#most = most
  }

  get(key: Key): Value | undefined {
    const value = this.#young.get(key)
    if (value !== undefined) return value
    const aged = this.#old.get(key)
    if (aged !== undefined) this.set(key, aged)
    return aged
  }

  /** Remembers a value, and gives it back. */
  set(key: Key, value: Value): Value {
    if (this.#young.size >= this.#most) {
      this.#old = this.#young
      this.#young = new Map()
    }
    this.#young.set(key, value)
    return value
  }
}
