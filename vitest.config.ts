import { fileURLToPath } from 'node:url'
import { defineConfig } from 'vitest/config'

const source = (path: string) => fileURLToPath(new URL(path, import.meta.url))

export default defineConfig({
  resolve: {
    // Tests read the sources, so that a failing test points at the line that a person wrote.
    alias: [
      { find: /^@pottle\/core$/, replacement: source('packages/core/src/index.ts') },
      { find: /^@pottle\/core\/tables$/, replacement: source('packages/core/src/tables/index.ts') },
      { find: /^@pottle\/api$/, replacement: source('apps/api/src/app.ts') },
      { find: /^@pottle\/embed$/, replacement: source('packages/embed/src/index.ts') },
      { find: /^@pottle\/embed\/(view|library|offline)$/, replacement: source('packages/embed/src/$1/index.ts') },
      { find: /^@pottle\/remark$/, replacement: source('packages/remark/src/index.ts') },
      { find: /^@core\/(.*)$/, replacement: source('packages/core/src/$1/index.ts') },
    ],
  },
  test: {
    include: ['test/**/*.test.ts'],
    exclude: ['test/bench/**'],
    // One worker is left idle otherwise, which on two cores is half of the machine.
    maxWorkers: '100%',
    // These catch what hangs; a slow machine is no fault.
    testTimeout: 30_000,
    hookTimeout: 60_000,
  },
})
