import { type Child, card, type Entry, h, type Kind, parameters, type Question, questionOf, wordsOf } from '../view/index.js'
import { grow } from './grow.js'
import { disclose, inline } from './inline.js'
import { makeSheet } from './style.js'

/** How an element comes by its answer, and where a reader finds the whole working. */
export interface Oracle {
  answer(question: Question, api: string | null): Promise<Entry>
  address(question: Question, api: string | null): string | undefined
}

/** Sent when an answer is shown: `detail` is the entry. */
export const answeredEvent = 'pottle-answer'
/** Sent when there is none: `detail` says why. The words in the page stay as they are. */
export const silentEvent = 'pottle-silence'

/** What the author left for the answer's place, while there is none. */
const standIn = h('slot', { name: 'answer' })

function elementFor(kind: Kind, oracle: Oracle, style: CSSStyleSheet): CustomElementConstructor {
  return class PottleElement extends HTMLElement {
    static readonly observedAttributes: readonly string[] = [...parameters[kind], 'display', 'api']

    #root = this.attachShadow({ mode: 'open' })
    #asked: string | undefined
    #entry: Entry | undefined

    constructor() {
      super()
      // A shadow hides what has no slot in it: the words get theirs before anything can go wrong.
      this.#show([h('slot', {}), standIn])
      this.#root.adoptedStyleSheets = [style]
      // A parser connects an element before it has read what stands inside.
      this.#root.addEventListener('slotchange', () => this.#ask())
    }

    /** What is shown; undefined while there is no answer. */
    get entry(): Entry | undefined {
      return this.#entry
    }

    connectedCallback(): void {
      this.#ask()
    }

    attributeChangedCallback(): void {
      if (this.isConnected) this.#ask()
    }

    /** The words that the author put between the tags, without what is to stand in for the answer. */
    get #own(): string {
      const nodes = [...this.childNodes].filter((node) => !(node instanceof Element && node.slot))
      return nodes.map((node) => node.textContent).join('')
    }

    get #question(): Question {
      return questionOf(kind, (name) => this.getAttribute(name) ?? (name === 'phrase' ? this.#own : null))
    }

    get #api(): string | null {
      return this.getAttribute('api') ?? this.closest<HTMLElement>('[data-pottle-api]')?.dataset.pottleApi ?? null
    }

    async #ask(): Promise<void> {
      // Attributes that are set one after the other make one question.
      await Promise.resolve()
      const [question, api] = [this.#question, this.#api]
      const asked = JSON.stringify([question, api, this.getAttribute('display')])
      if (asked === this.#asked) return
      this.#asked = asked
      if (!this.#entry) this.#showWords(question)
      // The words may still be on their way.
      if (kind !== 'loaf' && !question.asked.phrase) return
      try {
        const entry = await oracle.answer(question, api)
        if (asked === this.#asked) this.#tell(entry, oracle.address(question, api))
      } catch (reason) {
        if (asked === this.#asked) this.#fallSilent(question, reason)
      }
    }

    /** The author's words where there are any; space between two tags is none. */
    #words(otherwise: string): Child {
      return this.#own.trim() === '' ? h('span', {}, h('slot', {}), otherwise) : h('slot', {})
    }

    #showWords(question: Question): void {
      this.#show([this.#words(wordsOf(question)), standIn])
    }

    #show(children: readonly Child[]): void {
      this.#root.replaceChildren(...children.map((child) => grow(child)))
    }

    #tell(entry: Entry, address: string | undefined): void {
      this.#entry = entry
      const asCard = this.getAttribute('display') === 'card'
      const words = this.#words(entry.words)
      this.#show(asCard ? [card(entry, words, address)] : inline(entry, words, address))
      disclose(this.#root)
      this.dispatchEvent(new CustomEvent(answeredEvent, { detail: entry, bubbles: true, composed: true }))
    }

    #fallSilent(question: Question, reason: unknown): void {
      this.#entry = undefined
      this.#showWords(question)
      // For whoever writes the page; a reader has the words.
      console.warn(`<${this.localName}>`, reason instanceof Error ? reason.message : reason)
      this.dispatchEvent(new CustomEvent(silentEvent, { detail: reason, bubbles: true, composed: true }))
    }
  }
}

/**
 * Makes the browser know the three elements, unless another script of ours has done so.
 *
 * @throws TypeError in a browser that makes no sheet of style by script: it then knows no element, and the page stays as it was written
 */
export function defineElements(oracle: Oracle): void {
  // A site that is made on a server imports its modules there as well, where there is no page to define anything for.
  if (typeof customElements === 'undefined') return
  const style = makeSheet()
  for (const kind of ['measure', 'heat', 'loaf'] as const) {
    const name = `pottle-${kind}`
    if (!customElements.get(name)) customElements.define(name, elementFor(kind, oracle, style))
  }
}
