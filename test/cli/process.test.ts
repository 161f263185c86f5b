/** The built command as a process: what it ends with, pipes, signals, a corpus in flat memory, and GNU parallel. */
import { type ChildProcessWithoutNullStreams, spawn } from 'node:child_process'
import { existsSync, readFileSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { describe, expect, test, vi } from 'vitest'
import { built, corpus, folder, hasParallel, missingParallel, shell } from './shell.js'

const lines = 20_000
const file = join(folder, 'corpus.ndjson')
writeFileSync(file, corpus(lines))
writeFileSync(join(folder, 'part.ndjson'), corpus(3000))

// Each starts a process or several, on a machine that may be busy.
vi.setConfig({ testTimeout: 60_000 })

const start = (...args: string[]): ChildProcessWithoutNullStreams => spawn(process.execPath, args)
const ended = (child: ChildProcessWithoutNullStreams): Promise<number | null> => new Promise((resolve) => child.once('close', resolve))

/** Reads what a process writes without keeping it. */
function count(child: ChildProcessWithoutNullStreams, perChunk: () => void = () => {}) {
  const sum = { bytes: 0, lines: 0, last: 0 }
  child.stdout.on('data', (chunk: Buffer) => {
    sum.bytes += chunk.length
    sum.last = chunk.at(-1)!
    for (let at = chunk.indexOf(10); at >= 0; at = chunk.indexOf(10, at + 1)) sum.lines++
    perChunk()
  })
  return sum
}

describe('the process ends with', () => {
  test.each([
    [0, 'pottle convert a pottle of cream -y 1690', /^a pottle of cream/, /^$/],
    [1, 'pottle convert zzyzx', /^$/, /^pottle convert: the phrase: states no measure/],
    [2, 'pottle convert a pint --yaer 1690', /^$/, /^pottle convert: --yaer: there is no such option/],
    [2, 'pottle', /^$/, /^Usage: pottle COMMAND/],
    [3, 'pottle sheet nowhere.txt', /^$/, /there is no such file/],
    [0, 'pottle sources | head -n 1', /^\d+ sources/, /^$/],
    [0, 'pottle sources --format bibtex | head -c 1', /^@$/, /^$/],
    [0, 'pottle sheet -y 1690 <<< "Take a pint of cream" | grep -c cream', /^\d+\n$/, /^$/],
  ] as const)('%i: %s', (code, line, out, err) => {
    const ended = shell(`set -o pipefail; ${line}`)
    expect(ended.exit).toBe(code)
    expect(ended.out).toMatch(out)
    expect(ended.err).toMatch(err)
  })

  test.skipIf(!existsSync('/dev/full'))('3 where the disk is full', () => {
    const { exit, err } = shell('pottle convert a pint > /dev/full')
    expect({ exit, err }).toEqual({ exit: 3, err: "pottle: the standard output: can't be written: the disk is full\n" })
  })
})

describe('a stream', () => {
  test('that nobody reads any more ends quietly', () => {
    const { exit, out, err } = shell('set -o pipefail; pottle stream -f phrase < corpus.ndjson | head -n 2')
    expect({ exit, err }).toEqual({ exit: 0, err: '' })
    expect(out).toBe('{"phrase":"a pottle of cream"}\n{"phrase":"half a peck of fine flour"}\n')
  })

  test('that waits for input stops at once on Ctrl-C', async () => {
    const child = start(built, 'stream', '-f', 'phrase')
    const sum = count(child)
    let err = ''
    child.stderr.on('data', (text) => {
      err += text
    })
    child.stdin.write('{"phrase":"a pint"}\n{"phrase":"a qu')
    await new Promise((resolve) => child.stdout.once('data', resolve))
    child.kill('SIGINT')
    expect(await ended(child)).toBe(130)
    expect({ lines: sum.lines, err }).toEqual({ lines: 1, err: '' })
  })

  test.each([
    ['SIGINT', 130],
    ['SIGTERM', 143],
  ] as const)('in full flow stops on %s behind a whole line', async (signal, code) => {
    const child = start(built, 'stream')
    child.stdin.on('error', () => {})
    child.stdin.end(readFileSync(file))
    const sum = count(child)
    await new Promise((resolve) => child.stdout.once('data', resolve))
    child.kill(signal)
    expect(await ended(child)).toBe(code)
    expect(sum.last).toBe(10)
    expect(sum.lines).toBeLessThan(lines)
  })
})

/** Less than the answers come to, so that keeping them would end the process. */
const heap = 64

test('a corpus of 20,000 lines is answered in flat memory', async () => {
  const child = start(`--max-old-space-size=${heap}`, built, 'stream')
  child.stdin.end(readFileSync(file))
  const status = `/proc/${child.pid}/status`
  const seen: number[] = []
  const sum = count(child, () => {
    const resident = existsSync(status) ? /VmRSS:\s+(\d+)/.exec(readFileSync(status, 'utf8'))?.[1] : undefined
    if (resident) seen.push(Number(resident) / 1024)
  })
  expect(await ended(child)).toBe(1)
  expect(sum.lines).toBe(lines)
  expect(sum.bytes).toBeGreaterThan(heap * 1024 * 1024)
  const half = Math.floor(seen.length / 2)
  if (half === 0)
    return console.log('stream: this system does not tell how much memory a process holds; only the limit of its heap was tried')
  const [before, after] = [Math.max(...seen.slice(0, half)), Math.max(...seen.slice(half))]
  const held = `${Math.round(before)} MB resident in the first half, ${Math.round(after)} in the second`
  console.log(`stream: ${lines} lines, ${Math.round(sum.bytes / 1e6)} MB of answers; at most ${held}`)
  expect(after).toBeLessThan(before * 1.15)
})

test('a corpus that GNU parallel divides gives the same bytes', (context) => {
  if (!hasParallel) {
    console.log(`skipped: ${missingParallel()}`)
    return context.skip()
  }
  const one = shell('pottle stream < part.ndjson')
  const all = shell("parallel --keep-order --pipe -N 1000 'pottle stream --first-line $(({#} * 1000 - 999))' < part.ndjson")
  expect(all.err).toBe('')
  expect(all.out).toBe(one.out)
  expect(one.out.match(/^\{"type":.*"line":\d+\}$/gm)?.map((line) => JSON.parse(line).line)).toEqual([6, 8, 1003, 2000, 2007, 2997])
  // GNU parallel ends with the number of jobs that failed: each of the three has a bad line.
  expect([one.exit, all.exit]).toEqual([1, 3])
})
