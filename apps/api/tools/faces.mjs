// Gives the server the typeface of its pages as a module: an edge runtime has no files to read.
import { readFileSync } from 'node:fs'
import { fileURLToPath } from 'node:url'

/** Drawn for screens after the types that William Caslon cut in the 1720s (SIL Open Font Licence 1.1). */
const face = '@fontsource/libre-caslon-text'

const read = (file) => readFileSync(fileURLToPath(import.meta.resolve(`${face}/${file}`)))
const base64 = (style) => read(`files/libre-caslon-text-latin-400-${style}.woff2`).toString('base64')

/** The module: each face as WOFF2 in base64, with the licence, which goes with every copy. */
export function facesModule() {
  const licence = read('LICENSE').toString().trim().replaceAll('*/', '* /')
  return `/*!\n${licence}\n*/\n\nexport const roman: string =\n  '${base64('normal')}'\nexport const italic: string =\n  '${base64('italic')}'\n`
}
