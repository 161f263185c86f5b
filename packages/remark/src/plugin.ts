import { PottleError } from '@pottle/core'
import { answerQuestion } from '@pottle/embed/library'
import { type Kind, queryOf } from '@pottle/embed/view'
import type { PhrasingContent, Root } from 'mdast'
import type { TextDirective } from 'mdast-util-directive'
import { SKIP, visit } from 'unist-util-visit'
import type { VFile } from 'vfile'
import { type Defaults, questionIn } from './asked.js'
import { Footnotes } from './footnotes.js'

const kinds: readonly string[] = ['measure', 'heat', 'loaf'] satisfies Kind[]

/** The words between the brackets, without their markup. */
function wordsIn(nodes: readonly PhrasingContent[]): string {
  return nodes.map((node) => ('value' in node ? node.value : 'children' in node ? wordsIn(node.children) : '')).join('')
}

/** Puts the answer behind the words, and makes the directive an element that a site can style. */
function answer(node: TextDirective, defaults: Defaults, notes: Footnotes): void {
  const kind = node.name as Kind
  const { id, class: ownClass, ...attributes } = node.attributes ?? {}
  const question = questionIn(kind, wordsIn(node.children), attributes, defaults)
  const entry = answerQuestion(question)
  const className = [`pottle-${kind}`, ...(ownClass?.split(/\s+/) ?? [])]
  node.children.push({ type: 'text', value: ` (${entry.short})` }, notes.referTo(`${kind}?${queryOf(question)}`, entry))
  // How remark-rehype learns which element a node becomes (mdast-util-to-hast, "fields on nodes").
  node.data = Object.assign(node.data ?? {}, { hName: 'span', hProperties: { className, ...(id ? { id } : {}) } })
}

/**
 * Turns `:measure[a pottle of cream]{year=1690}`, `:heat[a slack oven]{year=1796}` and `:loaf[a penny white loaf]{year=1680}` into the words with
 * the modern measure in brackets and a footnote with its sources.
 *
 * `unified().use(remarkParse).use(remarkDirective).use(remarkPottle, { year: 1690 })` is the order of the plugins.
 * Where there is no answer the words stay as they were written, and the file gets a message with the place and the reason.
 *
 * @param defaults the year and place of whatever does not say its own
 */
export default function remarkPottle(defaults: Defaults = {}): (tree: Root, file: VFile) => void {
  return (tree, file) => {
    const notes = new Footnotes()
    visit(tree, 'textDirective', (node, index, parent) => {
      if (!kinds.includes(node.name)) return
      try {
        answer(node, defaults, notes)
        return SKIP
      } catch (error) {
        if (!(error instanceof PottleError)) throw error
        file.message(error.message, { place: node.position, ruleId: error.code, source: 'pottle' })
        parent!.children.splice(index!, 1, ...node.children)
        return index
      }
    })
    tree.children.push(...notes.definitions)
  }
}
