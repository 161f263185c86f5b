import type { Child, Tree } from '../view/index.js'

const html = 'http://www.w3.org/1999/xhtml'
const svg = 'http://www.w3.org/2000/svg'

function growElement({ tag, attributes, children }: Tree, around: string): Element {
  const namespace = tag === 'svg' ? svg : around
  const element = document.createElementNS(namespace, tag)
  for (const [name, value] of Object.entries(attributes)) element.setAttribute(name, value)
  element.append(...children.map((child) => grow(child, namespace)))
  return element
}

/** A tree as nodes of the document. Nothing is parsed, so it works where a page's policy forbids markup from text (Trusted Types). */
export function grow(child: Child, namespace: string = html): Node {
  return typeof child === 'string' ? document.createTextNode(child) : growElement(child, namespace)
}
