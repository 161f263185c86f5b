/**
 * The look that the pictures of heats share: a ruled plate in one ink on paper, as an engraver would letter it. Nothing is told by colour alone:
 * what matters differs in shape, weight or hatching, and stands in words in the description.
 */

import { type Attributes, drawCircle, drawLabel, drawLine, drawPath, drawRectangle, escapeText } from '../drawing/index.js'

/** System faces only, so that a picture needs nothing but itself. */
const faces = "Georgia, 'Times New Roman', 'Liberation Serif', serif"
export const ink = '#2a2622'
export const faint = '#8b8377'
export const accent = '#8c3a16'
const paper = '#fcfaf4'

export const line = (x1: number, y1: number, x2: number, y2: number, more: Attributes = {}): string =>
  drawLine(x1, y1, x2, y2, { stroke: ink, 'stroke-width': 1, ...more })

export const rectangle = (x: number, y: number, width: number, height: number, more: Attributes = {}): string =>
  drawRectangle(x, y, width, height, { fill: 'none', ...more })

export const circle = (x: number, y: number, radius: number, more: Attributes = {}): string =>
  drawCircle(x, y, radius, { fill: ink, ...more })

export const label = (x: number, y: number, text: string, more: Attributes = {}): string =>
  drawLabel(x, y, text, { 'font-size': 12, fill: ink, ...more })

export const path = (points: readonly (readonly [number, number])[], more: Attributes = {}): string =>
  drawPath(points, { fill: 'none', stroke: ink, ...more })

/** What every picture is given. */
export interface PlateOptions {
  readonly title?: string
  /** Begins every id inside, so that two pictures can stand in one page. */
  readonly id?: string
}

/** A frame of two rules with the title above and the caption below. */
export function plate(
  size: { readonly width: number; readonly height: number },
  text: { readonly id: string; readonly title: string; readonly description: string; readonly caption: readonly string[] },
  body: readonly string[],
): string {
  const { width, height } = size
  const id = text.id.replace(/[^\w-]/g, '') || 'plate'
  const hatch = `<pattern id="${id}-hatch" width="6" height="6" patternUnits="userSpaceOnUse" patternTransform="rotate(45)"><line x1="0" y1="0" x2="0" y2="6" stroke="${faint}" stroke-width="1.4"/></pattern>`
  return [
    `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 ${width} ${height}" role="img" aria-labelledby="${id}-title ${id}-desc" font-family="${escapeText(faces)}">`,
    `<title id="${id}-title">${escapeText(text.title)}</title>`,
    `<desc id="${id}-desc">${escapeText(text.description)}</desc>`,
    `<defs>${hatch}</defs>`,
    rectangle(0, 0, width, height, { fill: paper }),
    rectangle(8, 8, width - 16, height - 16, { stroke: ink, 'stroke-width': 1.6 }),
    rectangle(13, 13, width - 26, height - 26, { stroke: ink, 'stroke-width': 0.6 }),
    label(width / 2, 46, text.title, { 'font-size': 20, 'text-anchor': 'middle' }),
    ...body,
    ...text.caption.map((said, i) =>
      label(width / 2, height - 26 - 15 * (text.caption.length - 1 - i), said, {
        'font-size': 11,
        'text-anchor': 'middle',
        'font-style': 'italic',
      }),
    ),
    '</svg>',
  ].join('\n')
}
