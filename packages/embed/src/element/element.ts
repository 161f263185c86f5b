import { type Child, card, type Entry, type Kind, parameters, type Question, questionOf, wordsOf } from '../view/index.js'
import { grow } from './grow.js'
import { disclose, inline, standIn, words } from './inline.js'
import { styleSheet } from './style.js'

/** How an element comes by its answer, and where a reader finds the whole working. */
export interface Oracle {
  answer(question: Question, api: string | null): Promise<Entry>
  address(question: Question, api: string | null): string | undefined
}

/** Sent when an answer is shown: `detail` is the entry. */
export const answeredEvent = 'pottle-answer'
/** Sent when there is none: `detail` says why. The words in the page stay as they are. */
export const silentEvent = 'pottle-silence'

/** Sees to it that attributes set one after the other make one question. */
const afterThis = (): Promise<void> => Promise.resolve()

function elementFor(kind: Kind, oracle: Oracle): CustomElementConstructor {
  return class PottleElement extends HTMLElement {
    static readonly observedAttributes: readonly string[] = [...parameters[kind], 'display', 'api']

    #root = this.attachShadow({ mode: 'open' })
    #turn = 0
    #entry: Entry | undefined

    /** What is shown; undefined while there is no answer. */
    get entry(): Entry | undefined {
      return this.#entry
    }

    connectedCallback(): void {
      this.#root.adoptedStyleSheets = [styleSheet()]
      this.#ask()
    }

    attributeChangedCallback(): void {
      if (this.isConnected) this.#ask()
    }

    /** The phrase attribute, or else the words that the author put between the tags. */
    #question(): Question {
      const own = [...this.childNodes].filter((node) => !(node instanceof Element && node.slot)).map((node) => node.textContent)
      return questionOf(kind, (name) => this.getAttribute(name) ?? (name === 'phrase' ? own.join('') : null))
    }

    get #api(): string | null {
      return this.getAttribute('api') ?? this.closest<HTMLElement>('[data-pottle-api]')?.dataset.pottleApi ?? null
    }

    async #ask(): Promise<void> {
      const turn = ++this.#turn
      await afterThis()
      if (turn !== this.#turn) return
      const question = this.#question()
      if (!this.#entry) this.#show([words(wordsOf(question)), standIn])
      try {
        const entry = await oracle.answer(question, this.#api)
        if (turn === this.#turn) this.#tell(entry, oracle.address(question, this.#api))
      } catch (reason) {
        if (turn === this.#turn) this.#fallSilent(question, reason)
      }
    }

    #show(children: readonly Child[]): void {
      this.#root.replaceChildren(...children.map((child) => grow(child)))
    }

    #tell(entry: Entry, address: string | undefined): void {
      this.#entry = entry
      const asCard = this.getAttribute('display') === 'card'
      this.#show(asCard ? [card(entry, words(entry.words), address)] : inline(entry, address))
      disclose(this.#root)
      this.dispatchEvent(new CustomEvent(answeredEvent, { detail: entry, bubbles: true, composed: true }))
    }

    #fallSilent(question: Question, reason: unknown): void {
      this.#entry = undefined
      this.#show([words(wordsOf(question)), standIn])
      // For whoever writes the page; a reader has the words.
      console.warn(`<${this.localName}>`, reason instanceof Error ? reason.message : reason)
      this.dispatchEvent(new CustomEvent(silentEvent, { detail: reason, bubbles: true, composed: true }))
    }
  }
}

/** Makes the browser know the three elements, unless another script of ours has done so. */
export function defineElements(oracle: Oracle): void {
  for (const kind of ['measure', 'heat', 'loaf'] as const) {
    const name = `pottle-${kind}`
    if (!customElements.get(name)) customElements.define(name, elementFor(kind, oracle))
  }
}
