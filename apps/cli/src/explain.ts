import { type Fault, PottleError } from '@pottle/core'
import type { Command } from './command.js'
import { type Exit, exits } from './exit.js'
import { FileError, NoAnswer, UsageError } from './fault.js'
import { hang } from './layout/index.js'
import { problemFrom } from './problem.js'
import type { Page } from './terminal.js'

/** The same for all commands, where the library's names are not the command line's. */
const common: Readonly<Record<string, string>> = { phrase: 'the phrase', text: 'the receipt' }

/** What the command line calls an option of the library: the longest beginning of its path that a name is known for. */
function nameOf(parameter: string, one: Command | undefined): string {
  const names = { ...common, ...one?.parameters }
  const parts = parameter.split('.')
  for (let length = parts.length; length > 0; length--) {
    const name = names[parts.slice(0, length).join('.')]
    if (name !== undefined) return [name, ...parts.slice(length)].join(' ')
  }
  return one && Object.hasOwn(one.options, parameter) ? `--${parameter}` : parameter
}

/** Names of the library's options within a sentence, such as *plan.scale and plan.guests both scale the receipt*. */
const paths = /\bplan(?:\.[\w'-]{1,40}){1,5}/g

function renamed({ parameter, detail }: Fault, one: Command | undefined): Fault {
  return { parameter: nameOf(parameter, one), detail: detail.replace(paths, (path) => nameOf(path, one)) }
}

/** The library's error in the words of the command line. */
function inOwnWords(thrown: unknown, one: Command | undefined): unknown {
  if (!(thrown instanceof PottleError)) return thrown
  const { code, faults, words } = thrown
  return new PottleError(
    code,
    faults.map((fault) => renamed(fault, one)),
    words,
  )
}

function exitFor(thrown: unknown): Exit {
  if (thrown instanceof UsageError) return exits.wrongUsage
  if (thrown instanceof FileError) return exits.file
  if (thrown instanceof NoAnswer) return exits.noAnswer
  if (thrown instanceof PottleError) return thrown.code === 'bad-option' ? exits.wrongUsage : exits.noAnswer
  return exits.ownFault
}

function faultLines(thrown: unknown): readonly string[] {
  if (thrown instanceof PottleError) return thrown.faults.map(({ parameter, detail }) => `${parameter}: ${detail}`)
  if (thrown instanceof UsageError || thrown instanceof NoAnswer || thrown instanceof FileError) return [thrown.message]
  return [`a fault of the program itself: ${thrown instanceof Error ? (thrown.stack ?? thrown.message) : String(thrown)}`]
}

function wordLines(thrown: unknown, width: number): readonly string[] {
  const words = thrown instanceof PottleError ? thrown.words : undefined
  if (!words) return []
  const rows = [
    ['understood', words.understood],
    ['not read', words.unread],
    ['nearest', words.nearest],
  ] as const
  return rows.filter(([, list]) => list.length > 0).flatMap(([head, list]) => hang(`  ${head.padEnd(10)}  `, list.join(', '), width))
}

/** What was thrown, for people or as a problem in JSON, and what the process ends with. */
export function explain(
  fault: unknown,
  one: Command | undefined,
  { width }: Page,
  json: boolean,
): { readonly text: string; readonly exit: Exit } {
  const exit = exitFor(fault)
  const thrown = inOwnWords(fault, one)
  if (json) return { text: `${JSON.stringify(problemFrom(thrown, 'bad-option'))}\n`, exit }
  const name = one ? `pottle ${one.name}` : 'pottle'
  const told = faultLines(thrown)
  const lines = [
    ...(exit === exits.ownFault ? told : told.flatMap((line) => hang(`${name}: `, line, Math.max(width, 40)))),
    ...wordLines(thrown, width),
    ...(exit === exits.wrongUsage ? [`Try: ${name} --help`] : []),
  ]
  return { text: `${lines.join('\n')}\n`, exit }
}
