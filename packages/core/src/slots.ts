/**
 * Remembers what belongs to texts met lately: two slots a hash and no chains. So a text that is new costs a store, and a stream of new ones holds no
 * more than there are slots.
 */
export class Slots<Value> {
  readonly #mask: number
  readonly #texts: string[]
  readonly #values: (Value | undefined)[]

  /** @param size a power of two */
  constructor(size: number) {
    this.#mask = size - 1
    this.#texts = new Array(size).fill('')
    this.#values = new Array(size).fill(undefined)
  }

  get(text: string): Value | undefined {
    const slot = this.#slotOf(text)
    if (this.#texts[slot] === text) return this.#values[slot]
    return this.#texts[slot ^ 1] === text ? this.#values[slot ^ 1] : undefined
  }

  /** The newest takes its slot; what it displaces moves next door if there is room. */
  set(text: string, value: Value): void {
    const slot = this.#slotOf(text)
    const beside = slot ^ 1
    if (this.#texts[slot] !== '' && this.#texts[beside] === '') {
      this.#texts[beside] = this.#texts[slot]!
      this.#values[beside] = this.#values[slot]
    }
    this.#texts[slot] = text
    this.#values[slot] = value
  }

  #slotOf(text: string): number {
    let hash = text.length
    const end = Math.min(text.length, 64)
    for (let i = 0; i < end; i++) hash = (Math.imul(hash, 31) + text.charCodeAt(i)) | 0
    return hash & this.#mask
  }
}
