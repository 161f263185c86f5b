// Bundles the elements as single files for a script tag, and gives the API its copy as a module: an edge runtime has no files to read.
import { existsSync, mkdirSync, readFileSync, writeFileSync } from 'node:fs'
import { fileURLToPath } from 'node:url'
import { build } from 'esbuild'

const path = (relative) => fileURLToPath(new URL(relative, import.meta.url))

/** Either script as it is served: one ES module without imports. */
export async function bundle(entry) {
  const { outputFiles } = await build({
    entryPoints: [path(`../src/${entry}`)],
    alias: { '@pottle/core': path('../../core/src/index.ts') },
    bundle: true,
    minify: true,
    format: 'esm',
    target: 'es2022',
    write: false,
    legalComments: 'none',
  })
  return outputFiles[0].text
}

/** An unchanged file keeps its date, so that the compiler need not look at it again. */
function write(relative, text) {
  const file = path(relative)
  if (!existsSync(file) || readFileSync(file, 'utf8') !== text) writeFileSync(file, text)
}

if (process.argv[1] === fileURLToPath(import.meta.url)) {
  mkdirSync(path('../dist/'), { recursive: true })
  const script = await bundle('index.ts')
  write('../dist/pottle.js', script)
  write('../dist/pottle-offline.js', await bundle('offline/index.ts'))
  write('../../../apps/api/src/embed/script.ts', `export const script: string = ${JSON.stringify(script)}\n`)
}
