import { mkdtempSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { fileURLToPath } from 'node:url'
import { type BuildOptions, build, type Plugin } from 'esbuild'

const source = (path: string): string => fileURLToPath(new URL(`../../${path}`, import.meta.url))

/** Our own packages by their sources. */
const ownSources: Plugin = {
  name: 'own-sources',
  setup: ({ onResolve }) =>
    onResolve({ filter: /^@pottle\/\w+/ }, ({ path }) => {
      const [, name, room] = path.split('/')
      return { path: source(`packages/${name}/src/${room ? `${room}/` : ''}index.ts`) }
    }),
}

/**
 * One file out of the sources, so that a process of its own can run what was just written without a build.
 *
 * @returns the file's path, in a folder for temporary files
 */
export async function bundle(entry: string, options: BuildOptions = {}): Promise<string> {
  const outfile = join(mkdtempSync(join(tmpdir(), 'pottle-')), 'bundle.mjs')
  await build({
    entryPoints: [source(entry)],
    outfile,
    bundle: true,
    format: 'esm',
    target: 'es2023',
    logLevel: 'error',
    jsx: 'automatic',
    jsxImportSource: 'hono/jsx',
    plugins: [ownSources],
    ...options,
  })
  return outfile
}

/** The server as it is written, without what the build does to its bundle. */
export function bundleServer(): Promise<string> {
  // Packages of the older kind ask for Node's own modules by require().
  const banner = { js: "import { createRequire } from 'node:module'\nconst require = createRequire(import.meta.url)" }
  return bundle('apps/api/src/main.ts', { platform: 'node', banner })
}
