/** The elements of an SVG picture, as text: words are made safe for XML, and coordinates kept to a tenth of a pixel. */

const escapes: Readonly<Record<string, string>> = { '&': '&amp;', '<': '&lt;', '>': '&gt;', '"': '&quot;', "'": '&#39;' }

/** Characters that XML 1.0 has: no control characters but tab and line breaks, no halves of a surrogate pair. */
function inXml(character: string): boolean {
  const code = character.codePointAt(0)!
  return (code >= 0x20 && code < 0xd800) || (code > 0xdfff && code < 0xfffe) || code > 0xffff || code === 9 || code === 10 || code === 13
}

/**
 * Text that is safe between tags and in attributes.
 *
 * @example escapeText('<b>&\u0000')   // '&lt;b&gt;&amp;'
 */
export function escapeText(text: string): string {
  return [...text].map((character) => (inXml(character) ? (escapes[character] ?? character) : '')).join('')
}

/** Attributes by their names; numbers are lengths. */
export type Attributes = Readonly<Record<string, string | number>>

const px = (value: number): string => String(Math.round(value * 10) / 10 + 0)

const written = (attributes: Attributes): string =>
  Object.entries(attributes)
    .map(([name, value]) => ` ${name}="${typeof value === 'number' ? px(value) : escapeText(value)}"`)
    .join('')

export const drawLine = (x1: number, y1: number, x2: number, y2: number, more: Attributes): string =>
  `<line${written({ x1, y1, x2, y2, ...more })}/>`

export const drawRectangle = (x: number, y: number, width: number, height: number, more: Attributes): string =>
  `<rect${written({ x, y, width, height, ...more })}/>`

export const drawCircle = (cx: number, cy: number, r: number, more: Attributes): string => `<circle${written({ cx, cy, r, ...more })}/>`

/** A line of text that begins, ends or has its middle at a place, as `text-anchor` says. */
export const drawLabel = (x: number, y: number, text: string, more: Attributes): string =>
  `<text${written({ x, y, ...more })}>${escapeText(text)}</text>`

/** A line through points. */
export const drawPath = (points: readonly (readonly [number, number])[], more: Attributes): string =>
  `<path${written({ d: points.map(([x, y], i) => `${i === 0 ? 'M' : 'L'}${px(x)} ${px(y)}`).join(''), ...more })}/>`
