/** A stranger's project: an empty folder into which npm has installed the tarballs, and what its owner writes there. */
import { mkdirSync, mkdtempSync, readFileSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { dirname, join } from 'node:path'
import { pathToFileURL } from 'node:url'
import { names, npm, type PackageName, root, type Tarball } from './tarballs.js'

/** Packages of others that ours need, and those that a site built with remark has beside ours. */
const needed = ['decimal.js', '@types/mdast', 'unist-util-visit', 'vfile']
const beside = ['unified', 'remark-parse', 'remark-directive', 'remark-rehype', 'rehype-stringify']

/** A package that this repository has already, so that no registry is asked. */
const installed = (name: string): [string, string] => [name, pathToFileURL(join(root, 'node_modules', name)).href]

export interface Project {
  readonly folder: string
  write(file: string, text: string): string
}

/** Installs the tarballs as npm does it for anyone. */
export function installInto(tarballs: ReadonlyMap<PackageName, Tarball>): Project {
  const folder = mkdtempSync(join(tmpdir(), 'pottle-stranger-'))
  const write = (file: string, text: string): string => {
    const path = join(folder, file)
    mkdirSync(dirname(path), { recursive: true })
    writeFileSync(path, text)
    return path
  }
  const ours = names.map((name) => [name, pathToFileURL(tarballs.get(name)!.path).href])
  const manifest = {
    private: true,
    type: 'module',
    dependencies: Object.fromEntries([...ours, ...beside.map(installed)]),
    overrides: Object.fromEntries(needed.map(installed)),
  }
  write('package.json', JSON.stringify(manifest))
  npm(folder, 'install', '--offline', '--ignore-scripts', '--no-audit', '--no-fund', '--no-package-lock')
  return { folder, write }
}

const blocks = (markdown: string): string[] => [...markdown.matchAll(/```ts\n([\s\S]*?)```/g)].map(([, code]) => code!)
const checked = /^(\S.*?)\s{2,}\/\/ (.+)$/gm

/**
 * The examples of the READMEs as the tarballs have them, each a program of its own: a line `expression   // value` must come to that value.
 *
 * @returns the names of the files
 */
export function writeExamples({ folder, write }: Project): string[] {
  return names.flatMap((name) =>
    blocks(readFileSync(join(folder, 'node_modules', name, 'README.md'), 'utf8')).map((code, i) => {
      const file = `examples/${name.slice('@pottle/'.length)}-${i + 1}.ts`
      write(file, `${code.replace(checked, 'same($1, $2)')}\ndeclare function same(found: unknown, promised: unknown): void\n`)
      return file
    }),
  )
}
