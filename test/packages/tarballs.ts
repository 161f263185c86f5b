/** The packages as npm would publish them. */
import { execFileSync } from 'node:child_process'
import { existsSync, mkdtempSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { fileURLToPath } from 'node:url'

export const root: string = fileURLToPath(new URL('../../', import.meta.url))

/** Each package and the folder that it is made of. */
export const folders = {
  '@pottle/core': 'packages/core',
  '@pottle/data': 'data',
  '@pottle/embed': 'packages/embed',
  '@pottle/remark': 'packages/remark',
  '@pottle/cli': 'apps/cli',
} as const

export type PackageName = keyof typeof folders
export const names = Object.keys(folders) as PackageName[]

export interface Tarball {
  readonly name: PackageName
  readonly path: string
  readonly files: readonly string[]
  readonly bytes: number
}

interface Packed {
  readonly name: PackageName
  readonly filename: string
  readonly files: readonly { readonly path: string }[]
  readonly size: number
}

/** npm, which is a script of cmd.exe on Windows. */
export function npm(folder: string, ...args: readonly string[]): string {
  return execFileSync('npm', args, { cwd: folder, encoding: 'utf8', shell: process.platform === 'win32', maxBuffer: 2 ** 26 })
}

/** Packs what the build has made, into a folder for temporary files. */
export function packAll(): ReadonlyMap<PackageName, Tarball> {
  if (!existsSync(join(root, 'packages/core/dist/index.js'))) throw new Error('packages are made of what was built: run npm run build')
  const folder = mkdtempSync(join(tmpdir(), 'pottle-tarballs-'))
  const said = npm(root, 'pack', '--json', '--pack-destination', folder, ...names.flatMap((name) => ['-w', name]))
  return new Map(
    (JSON.parse(said) as Packed[]).map(({ name, filename, files, size }) => [
      name,
      { name, path: join(folder, filename), files: files.map(({ path }) => path), bytes: size },
    ]),
  )
}
