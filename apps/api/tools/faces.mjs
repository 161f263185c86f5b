// Gives the server the typeface of its pages as a module: an edge runtime has no files to read.
import { readFileSync } from 'node:fs'
import { fileURLToPath } from 'node:url'

/** Drawn for screens after the types that William Caslon cut in the 1720s (SIL Open Font Licence 1.1). */
const cut = (style) => `@fontsource/libre-caslon-text/files/libre-caslon-text-latin-400-${style}.woff2`

const base64 = (style) => readFileSync(fileURLToPath(import.meta.resolve(cut(style)))).toString('base64')

/** The module: each face as WOFF2 in base64. */
export function facesModule() {
  return `export const roman: string =\n  '${base64('normal')}'\nexport const italic: string =\n  '${base64('italic')}'\n`
}
