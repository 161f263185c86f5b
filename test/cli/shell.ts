/** The built command in a shell of its own. */
import { spawnSync } from 'node:child_process'
import { chmodSync, existsSync, mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { fileURLToPath } from 'node:url'
import { demoReceipts } from '@pottle/core'
import { afterAll } from 'vitest'

export const built: string = fileURLToPath(new URL('../../apps/cli/dist/main.js', import.meta.url))
if (!existsSync(built)) throw new Error('the command line is not built: run `npm run -s build` first')

/** A folder with what the examples of the help speak of, and `pottle` on the path. */
export const folder: string = mkdtempSync(join(tmpdir(), 'pottle-'))
afterAll(() => rmSync(folder, { recursive: true }))

const bin = join(folder, 'bin')
mkdirSync(bin)
writeFileSync(join(bin, 'pottle'), `#!/bin/sh\nexec '${process.execPath}' '${built}' "$@"\n`)
chmodSync(join(bin, 'pottle'), 0o755)
writeFileSync(join(folder, 'receipt.txt'), demoReceipts[0]!.text)

const phrases = ['a pottle of cream', 'half a peck of fine flour', 'two ounces of mace', 'a gill of yeast']

/** Lines of a corpus: some phrases with some years, over and over; where it is not clean, a bad line now and then. */
export function corpus(lines: number, clean = false): string {
  const line = (i: number): string => {
    if (!clean && i % 997 === 5) return '{"phrase":"zzyzx"}'
    if (!clean && i % 1999 === 7) return 'no JSON at all'
    return JSON.stringify({ phrase: phrases[i % phrases.length], year: 1650 + (i % 5) * 10 })
  }
  return Array.from({ length: lines }, (_, i) => `${line(i)}\n`).join('')
}
writeFileSync(join(folder, 'phrases.ndjson'), corpus(40, true))

export interface Ended {
  readonly exit: number | null
  readonly out: string
  readonly err: string
}

/** Runs a line in bash. */
export function shell(line: string): Ended {
  const env = { ...process.env, PATH: `${bin}:${process.env.PATH}`, COLUMNS: '80' }
  const { status, stdout, stderr } = spawnSync('bash', ['-c', line], {
    cwd: folder,
    env,
    encoding: 'utf8',
    maxBuffer: 1e9,
  })
  return { exit: status, out: stdout, err: stderr }
}

/** Whether GNU parallel is there: a program of the same name that is not GNU's does not count. */
export const hasParallel: boolean = /GNU parallel/.test(spawnSync('parallel', ['--version'], { encoding: 'utf8' }).stdout ?? '')

/** Why a test with GNU parallel is left out; where the tests run for everyone (CI), none may be. */
export function missingParallel(): string {
  const advice = 'GNU parallel is not installed (Debian: apt-get install parallel)'
  if (process.env.CI) throw new Error(`${advice}; CI must have it`)
  return advice
}
