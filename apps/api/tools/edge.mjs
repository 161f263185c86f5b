// Bundles the app for an edge runtime: one file without imports, put beside the configuration that serves it, or where it is asked for.
import { fileURLToPath } from 'node:url'
import { build } from 'esbuild'

const path = (relative) => fileURLToPath(new URL(relative, import.meta.url))

const [outfile = path('../deploy/worker.mjs')] = process.argv.slice(2)

await build({
  entryPoints: [path('../src/edge.ts')],
  outfile,
  alias: {
    '@pottle/core': path('../../../packages/core/src/index.ts'),
    '@pottle/core/tables': path('../../../packages/core/src/tables/index.ts'),
    '@pottle/embed/view': path('../../../packages/embed/src/view/index.ts'),
    '@pottle/embed/library': path('../../../packages/embed/src/library/index.ts'),
  },
  bundle: true,
  minify: true,
  format: 'esm',
  target: 'es2023',
  platform: 'browser',
  conditions: ['workerd', 'worker', 'browser'],
  logLevel: 'warning',
})
console.log(`The app for an edge runtime is in ${outfile}`)
