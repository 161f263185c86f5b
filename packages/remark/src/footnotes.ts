import { type Entry, footnote } from '@pottle/embed/view'
import type { FootnoteDefinition, ListItem, Paragraph, PhrasingContent } from 'mdast'

const plain = (value: string): PhrasingContent => ({ type: 'text', value })
const paragraph = (...children: PhrasingContent[]): Paragraph => ({ type: 'paragraph', children })

function stepItem({ text, source }: { readonly text: string; readonly source: string }): ListItem {
  const cited: PhrasingContent = { type: 'emphasis', children: [plain(source)] }
  return { type: 'listItem', spread: false, children: [paragraph(plain(`${text} `), cited)] }
}

function definitionOf(identifier: string, entry: Entry): FootnoteDefinition {
  const { text, steps, imprint } = footnote(entry)
  const list = { type: 'list' as const, ordered: false, spread: false, children: steps.map(stepItem) }
  return { type: 'footnoteDefinition', identifier, label: identifier, children: [paragraph(plain(text)), list, paragraph(plain(imprint))] }
}

/** The footnotes of one document: the same question, asked again, points to the same note. */
export class Footnotes {
  readonly #definitions = new Map<string, FootnoteDefinition>()

  get definitions(): readonly FootnoteDefinition[] {
    return [...this.#definitions.values()]
  }

  /** A reference to the note of an entry; `key` tells questions apart. */
  referTo(key: string, entry: Entry): PhrasingContent {
    const definition = this.#definitions.get(key) ?? definitionOf(`pottle-${this.#definitions.size + 1}`, entry)
    this.#definitions.set(key, definition)
    const { identifier } = definition
    return { type: 'footnoteReference', identifier, label: identifier }
  }
}
