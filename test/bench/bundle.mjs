/** The test's own tools for benches: TypeScript of test/api as a module that Node can load. */
import { mkdtempSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { fileURLToPath, pathToFileURL } from 'node:url'
import { build } from 'esbuild'

/** Loads a module of the tests; what it imports from packages stays what `npm run build` made. */
export async function load(path) {
  const folder = mkdtempSync(join(tmpdir(), 'pottle-bench-'))
  try {
    const outfile = join(folder, 'module.mjs')
    const banner = { js: "import { createRequire } from 'node:module'\nconst require = createRequire(import.meta.url)" }
    const entry = fileURLToPath(new URL(`../../${path}`, import.meta.url))
    // What it finds beside itself it is to find where it was written.
    const define = { 'import.meta.url': JSON.stringify(pathToFileURL(entry).href) }
    await build({ entryPoints: [entry], outfile, bundle: true, format: 'esm', platform: 'node', logLevel: 'error', banner, define })
    return await import(pathToFileURL(outfile).href)
  } finally {
    rmSync(folder, { recursive: true })
  }
}
