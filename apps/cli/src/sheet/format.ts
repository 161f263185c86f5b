import { extname } from 'node:path'
import { type Sheet, sheetToCsv, sheetToHtml, sheetToJsonLd, sheetToMarkdown } from '@pottle/core'
import type { Page } from '../terminal.js'
import { showSheet } from '../views/sheet.js'

/** Every form that a sheet can be had in, by the name that asks for it. */
const renderings = {
  text: (sheet: Sheet, page: Page) => showSheet(sheet, page),
  markdown: sheetToMarkdown,
  html: sheetToHtml,
  json: (sheet: Sheet) => `${JSON.stringify(sheet, null, 2)}\n`,
  jsonld: (sheet: Sheet) => `${JSON.stringify(sheetToJsonLd(sheet), null, 2)}\n`,
  csv: sheetToCsv,
} as const satisfies Readonly<Record<string, (sheet: Sheet, page: Page) => string>>

export type Format = keyof typeof renderings
export const formats = Object.keys(renderings) as readonly Format[]

const byEnding: Readonly<Record<string, Format>> = {
  '.txt': 'text',
  '.md': 'markdown',
  '.html': 'html',
  '.htm': 'html',
  '.json': 'json',
  '.jsonld': 'jsonld',
  '.csv': 'csv',
}

/** The form that a file's name asks for; undefined where it asks for none. */
export const formatOf = (path: string): Format | undefined => byEnding[extname(path).toLowerCase()]

export function render(sheet: Sheet, format: Format, page: Page): string {
  return renderings[format](sheet, page)
}
