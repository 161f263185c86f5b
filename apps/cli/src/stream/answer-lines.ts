import type { Answer, Fault, Sheet } from '@pottle/core'
import { type Exit, exits } from '../exit.js'
import { type Problem, problem, problemFrom } from '../problem.js'
import type { Terminal } from '../terminal.js'
import { type Gathering, gather } from './gather.js'
import { type Line, linesOf } from './lines.js'
import { type Progress, startProgress, type Tally } from './progress.js'
import { answerTo, type Defaults } from './question.js'

export interface StreamOptions {
  readonly defaults: Defaults
  /** Only these fields of each answer; null for all. */
  readonly fields: readonly string[] | null
  /** The number of the first line. */
  readonly firstLine: number
}

/** A longer line is no question: the longest receipt that any book prints is a hundredth of it. */
const mostBytes = 1024 * 1024
/** A place in the line by JSON pointer (RFC 6901). */
function pointed({ parameter, detail }: Fault): { readonly pointer: string; readonly detail: string } {
  if (parameter === '') return { pointer: '', detail }
  return {
    pointer: `/${parameter
      .split('.')
      .map((name) => name.replaceAll('~', '~0').replaceAll('/', '~1'))
      .join('/')}`,
    detail,
  }
}

function problemWith(thrown: unknown, number: number): Problem & { readonly line: number } {
  return { ...problemFrom(thrown, 'bad-line', pointed), line: number }
}

function pick(answer: Answer | Sheet, fields: readonly string[] | null): object {
  if (!fields) return answer
  // Parts of an answer are made when they are first asked for: what is not wanted costs nothing.
  const parts = answer as unknown as Readonly<Record<string, unknown>>
  return Object.fromEntries(fields.filter((name) => name in parts).map((name) => [name, parts[name]]))
}

const isBlank = (bytes: Uint8Array): boolean => bytes.every((byte) => byte === 32 || byte === 9 || byte === 13)

/** The answer to one line, or what is wrong with it; null for an empty one. */
function replyTo({ number, bytes }: Line, { defaults, fields }: StreamOptions, tally: Tally): object | null {
  if (bytes && isBlank(bytes)) return null
  tally.lines++
  try {
    if (bytes) return pick(answerTo(bytes, defaults), fields)
    tally.failed++
    return { ...problem('too-long', `the line is longer than ${mostBytes.toLocaleString('en-GB')} bytes`), line: number }
  } catch (thrown) {
    tally.failed++
    return problemWith(thrown, number)
  }
}

/** Lets signals and timers have their turn: reading and writing may both go on without one. */
const turn = (): Promise<void> => new Promise((resolve) => setImmediate(resolve))

async function answerBatches(
  { stdin, signal }: Terminal,
  options: StreamOptions,
  tally: Tally,
  answers: Gathering,
  progress: Progress,
): Promise<void> {
  for await (const lines of linesOf(stdin as AsyncIterable<Uint8Array>, options.firstLine, mostBytes)) {
    for (const line of lines) {
      const reply = replyTo(line, options, tally)
      if (!reply || !answers.add(`${JSON.stringify(reply)}\n`)) continue
      await answers.flush()
      await turn()
      progress.show(tally)
      if (signal.aborted) return
    }
    // Whoever asks line by line is answered line by line.
    await answers.flush()
    progress.show(tally)
  }
}

/**
 * Answers a stream of questions, a line for a line, in their order and in constant memory: the next lines are read when the reader has taken
 * the answers to the last. A line that can't be answered gives a problem object with its number.
 *
 * @returns 1 where any line failed, 130 where the user stopped it; the lines that were written are whole
 */
export async function answerLines(terminal: Terminal, options: StreamOptions): Promise<Exit> {
  const { stdin, stdout, signal } = terminal
  const tally: Tally = { lines: 0, failed: 0 }
  const answers = gather(stdout)
  const progress = startProgress(terminal)
  const stop = (): void => void stdin.destroy()
  signal.addEventListener('abort', stop)
  try {
    await answerBatches(terminal, options, tally, answers, progress)
  } catch (thrown) {
    // Input that is closed under the reader's hands is how a stop arrives there.
    if (!signal.aborted) throw thrown
  } finally {
    signal.removeEventListener('abort', stop)
    progress.end(tally)
  }
  await answers.flush()
  if (signal.aborted) return exits.interrupted
  return tally.failed > 0 ? exits.noAnswer : exits.done
}
