import { sayNearest } from '@pottle/core'
import type { Command } from './command.js'
import { commands } from './commands/index.js'
import { type Exit, exits } from './exit.js'
import { explain } from './explain.js'
import { FileError, UsageError } from './fault.js'
import { helpFor, helpForAll } from './help.js'
import { parseOptions } from './options.js'
import { pageOn, type Terminal } from './terminal.js'
import { version } from './version.js'
import { write } from './write.js'
import { reasonOf } from './write-file.js'

const asksForHelp = (args: readonly string[]): boolean => {
  const end = args.indexOf('--')
  return (end < 0 ? args : args.slice(0, end)).some((arg) => arg === '--help' || arg === '-h')
}

function findCommand(name: string): Command {
  const found = commands.find((one) => one.name === name)
  if (found) return found
  if (name.startsWith('-')) throw new UsageError(name, 'begin with a command, such as convert')
  const near = sayNearest(
    name,
    commands.map((one) => one.name),
  )
  const asPhrase = /\s/.test(name) ? `. For a phrase: pottle convert '${name.slice(0, 60)}'` : ''
  throw new UsageError(`"${name.slice(0, 60)}"`, `there is no such command${near}${asPhrase}`)
}

/** The help that was asked for; undefined where none was. */
function helpText([first, second]: readonly string[], args: readonly string[], { stdout, env }: Terminal): string | undefined {
  const page = pageOn(stdout, env)
  if (first === '--version' || first === '-V') return `${version}\n`
  if (first === 'help' && second !== undefined) return helpFor(findCommand(second), page)
  if (first === 'help' || first === '--help' || first === '-h') return helpForAll(commands, page)
  return first !== undefined && asksForHelp(args) ? helpFor(findCommand(first), page) : undefined
}

async function answer(args: readonly string[], terminal: Terminal): Promise<Exit> {
  const help = helpText(args, args, terminal)
  if (help !== undefined) {
    await write(terminal.stdout, help)
    return exits.done
  }
  const [name, ...rest] = args
  const one = findCommand(name!)
  const { words, given } = parseOptions(rest, one.options)
  const reply = await one.run({ words, given, terminal, page: pageOn(terminal.stdout, terminal.env) })
  if (typeof reply === 'number') return reply
  await write(terminal.stdout, reply)
  return exits.done
}

/** Trouble with the standard streams themselves, told like that with any file. */
function streamFault(thrown: unknown): unknown {
  const { syscall } = thrown as NodeJS.ErrnoException
  if (syscall === 'read') return new FileError(`the standard input: can't be read: ${reasonOf(thrown)}`)
  return syscall === 'write' ? new FileError(`the standard output: can't be written: ${reasonOf(thrown)}`) : thrown
}

/** Whoever reads the output has read enough: nothing is wrong with that. */
const isClosed = (thrown: unknown): boolean => thrown instanceof Error && (thrown as NodeJS.ErrnoException).code === 'EPIPE'

/**
 * Runs a command line.
 *
 * @param args the words behind the program's name
 * @returns what the process is to end with
 */
export async function run(args: readonly string[], terminal: Terminal): Promise<Exit> {
  const { stderr, env, signal } = terminal
  if (args.length === 0) {
    await write(stderr, helpForAll(commands, pageOn(stderr, env)))
    return exits.wrongUsage
  }
  try {
    return await answer(args, terminal)
  } catch (thrown) {
    if (signal.aborted) return exits.interrupted
    if (isClosed(thrown)) return exits.done
    const one = commands.find(({ name }) => name === args[0])
    const { text, exit } = explain(streamFault(thrown), one, pageOn(stderr, env), args.includes('--json'))
    await write(stderr, text)
    return exit
  }
}
