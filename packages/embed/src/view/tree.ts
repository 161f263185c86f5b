/** An element of a page before anyone decides whether it becomes a DOM node, HTML text or a syntax tree. */
export interface Tree {
  readonly tag: string
  readonly attributes: Readonly<Record<string, string>>
  readonly children: readonly Child[]
}

/** What stands inside an element. */
export type Child = Tree | string

/** What stands between two tags; what is absent leaves no trace. */
export type Content = Child | readonly Child[] | null | undefined

/**
 * Makes a tree.
 *
 * @example print(h('p', { class: 'answer' }, 'about ', h('b', {}, '1.9 litres')))   // '<p class="answer">about <b>1.9 litres</b></p>'
 */
export function h(tag: string, attributes: Readonly<Record<string, string>>, ...content: readonly Content[]): Tree {
  const children = content.flat().filter((child) => child !== null && child !== undefined && child !== '') as Child[]
  return { tag, attributes, children }
}

/** Elements that HTML writes without an end tag (HTML Living Standard, section 13.1.2). */
const empty = new Set(['link', 'meta', 'br'])

const inText = (text: string): string => text.replaceAll('&', '&amp;').replaceAll('<', '&lt;').replaceAll('>', '&gt;')
const inAttribute = (text: string): string => inText(text).replaceAll('"', '&quot;')

/**
 * A tree as HTML, or as SVG: text and attributes are escaped, so words of any origin can't become markup.
 *
 * @example print(h('p', {}, 'salt & <b>spice</b>'))   // '<p>salt &amp; &lt;b&gt;spice&lt;/b&gt;</p>'
 */
export function print(child: Child): string {
  if (typeof child === 'string') return inText(child)
  const { tag, attributes, children } = child
  const written = Object.entries(attributes).map(([name, value]) => ` ${name}="${inAttribute(value)}"`)
  const start = `<${tag}${written.join('')}>`
  return empty.has(tag) ? start : `${start}${children.map(print).join('')}</${tag}>`
}
