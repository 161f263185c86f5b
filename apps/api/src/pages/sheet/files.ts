import { type Sheet, sheetToCsv, sheetToHtml, sheetToJsonLd, sheetToMarkdown } from '@pottle/core'
import { keyFor } from '../parts/citing.js'

interface Rendering {
  readonly type: string
  readonly ending: string
  readonly render: (sheet: Sheet) => string
}

/** What a sheet can be kept as. */
const renderings: Readonly<Record<string, Rendering>> = {
  html: { type: 'text/html; charset=utf-8', ending: 'html', render: sheetToHtml },
  markdown: { type: 'text/markdown; charset=utf-8', ending: 'md', render: sheetToMarkdown },
  csv: { type: 'text/csv; charset=utf-8', ending: 'csv', render: sheetToCsv },
  jsonld: {
    type: 'application/ld+json; charset=utf-8',
    ending: 'jsonld',
    render: (sheet) => JSON.stringify(sheetToJsonLd(sheet), null, 2),
  },
}

/** A sheet as a file: its text, its media type and a name to keep it by; undefined where there is no such form. */
export function fileOf(sheet: Sheet, as: string): { readonly type: string; readonly name: string; readonly text: string } | undefined {
  const rendering = Object.hasOwn(renderings, as) ? renderings[as] : undefined
  if (!rendering) return undefined
  return { type: rendering.type, name: `${keyFor(sheet.title) || 'sheet'}.${rendering.ending}`, text: rendering.render(sheet) }
}
