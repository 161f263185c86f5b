/** The help: complete, and every example in it is run as it stands. */
import { readFileSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { describe, expect, test, vi } from 'vitest'
import { commands } from '../../apps/cli/src/commands/index.js'
import { exits } from '../../apps/cli/src/exit.js'
import { ask, type Heard, say } from './ask.js'
import { folder, hasParallel, missingParallel, shell } from './shell.js'

const examples = commands.flatMap(({ name, examples }) => examples.map(({ line }) => [line, name] as const))
const needsShell = (line: string): boolean => /[|$]/.test(line)

/** Divides a line at blanks outside quotes, as a shell does. */
const wordsOf = (line: string): readonly string[] =>
  [...line.matchAll(/'([^']*)'|"([^"]*)"|(\S+)/g)].map(([, single, double, bare]) => (single ?? double ?? bare)!)

const inFolder = (word: string): string => (/^[\w-]+\.(txt|svg|html|bib|csv|ndjson)$/.test(word) ? join(folder, word) : word)

/** Runs a simple line without a shell: `pottle`, its words, and where its input comes from and its output goes. */
async function runSimple(line: string): Promise<Heard> {
  const [program, ...words] = wordsOf(line).map(inFolder)
  expect(program).toBe('pottle')
  const [from, to] = ['<', '>'].map((sign) => (words.includes(sign) ? words[words.indexOf(sign) + 1] : undefined))
  const signs = ['<', '>'].map((sign) => words.indexOf(sign)).filter((at) => at >= 0)
  const args = signs.length > 0 ? words.slice(0, Math.min(...signs)) : words
  const heard = await ask(args, from ? { stdin: readFileSync(from) } : {})
  if (to) writeFileSync(to, heard.out)
  return heard
}

// Each starts a process or several, on a machine that may be busy.
vi.setConfig({ testTimeout: 60_000 })

describe('every example of the help can be run as it stands', () => {
  test.each(examples)('%s', async (line, name) => {
    if (line.startsWith('parallel') && !hasParallel) return console.log(`skipped: ${missingParallel()}: ${line}`)
    const { exit, out, err } = needsShell(line) ? shell(line) : await runSimple(line)
    expect({ exit, err: err.replace(/^Written: .*\n/, '') }).toEqual({ exit: exits.done, err: '' })
    if (!/>|--svg| -o /.test(line)) expect(out.length).toBeGreaterThan(40)
    expect(line).toContain(`pottle ${name}`)
  })

  test('and none is left out', () => {
    expect(examples.length).toBeGreaterThan(25)
    for (const { name, examples } of commands) expect(examples.length, name).toBeGreaterThan(1)
    console.log(`examples: ${examples.length} in the help`)
  })
})

describe('the help', () => {
  test('of all names every command with its summary and first example', async () => {
    const help = await say('--help')
    const flat = help.replace(/\s+/g, ' ')
    for (const { name, summary, examples } of commands) {
      expect(help).toContain(`\n  ${name.padEnd(8)}  `)
      expect(flat).toContain(summary)
      expect(help).toContain(`\n  ${examples[0]!.line}\n`)
    }
    for (const code of Object.values(exits)) expect(help).toMatch(new RegExp(`^ +${code}  \\S`, 'm'))
    expect(await say('help')).toBe(help)
    expect(await say('-h')).toBe(help)
  })

  test.each(commands.map(({ name }) => name))('of %s names every option, every example and every exit code', async (name) => {
    const help = await say(`${name} --help`)
    const one = commands.find((command) => command.name === name)!
    for (const [option, { value }] of Object.entries(one.options)) expect(help).toContain(`--${option}${value ? ` ${value}` : ''}`)
    for (const { line } of one.examples) expect(help).toContain(`\n  ${line}\n`)
    for (const code of Object.values(exits)) expect(help).toMatch(new RegExp(`^ +${code}  \\S`, 'm'))
    expect(await say(`help ${name}`)).toBe(help)
    expect(await say(`${name} -h`)).toBe(help)
  })

  test('fits the page, but for the examples, which are to be copied', async () => {
    const lines = new Set(commands.flatMap(({ examples }) => examples.map(({ line }) => `  ${line}`)))
    for (const columns of [40, 80])
      for (const name of ['', ...commands.map(({ name }) => name)]) {
        const { out } = await ask([...(name ? [name] : []), '--help'], { columns })
        for (const line of out.split('\n')) if (!lines.has(line)) expect([...line].length, line).toBeLessThanOrEqual(columns)
      }
  })

  test('is not what a phrase asks for behind --', async () => {
    expect((await ask(['convert', '--', '-h'])).exit).not.toBe(0)
  })
})

test('options that commands share are called by the same letter', () => {
  const letters = new Map<string, string>()
  for (const { name, options } of commands) {
    const own = new Set<string>()
    for (const [option, { short }] of Object.entries(options)) {
      if (!short) continue
      expect(own.has(short), `${name} -${short}`).toBe(false)
      own.add(short)
      if (['year', 'place'].includes(option)) letters.set(option, short)
    }
  }
  expect(Object.fromEntries(letters)).toEqual({ year: 'y', place: 'p' })
})

test('the version tells the program and its tables', async () => {
  expect(await say('--version')).toMatch(/^pottle \d+\.\d+\.\d+, tables \d{4}\.\d+\.\d+\n$/)
})
