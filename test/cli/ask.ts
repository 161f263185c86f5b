/** The command line in the test's own process, with streams that keep what is written. */
import { Readable, Writable } from 'node:stream'
import { run } from '../../apps/cli/src/run.js'
import type { Terminal } from '../../apps/cli/src/terminal.js'

export interface Circumstances {
  readonly stdin?: string | Uint8Array | AsyncIterable<Uint8Array>
  /** Which streams are a terminal. */
  readonly tty?: { readonly in?: boolean; readonly out?: boolean; readonly err?: boolean }
  readonly columns?: number
  readonly env?: Terminal['env']
  readonly signal?: AbortSignal
}

export interface Heard {
  readonly exit: number
  readonly out: string
  readonly err: string
}

function keep(isTTY = false, columns = 80) {
  const chunks: Buffer[] = []
  const stream = new Writable({
    write(chunk: Buffer, _, done) {
      chunks.push(chunk)
      done()
    },
  })
  return { stream: Object.assign(stream, { isTTY, columns }), text: () => Buffer.concat(chunks).toString('utf8') }
}

const bytesOf = (stdin: Circumstances['stdin'] = ''): Readable =>
  typeof stdin === 'string' || stdin instanceof Uint8Array
    ? Readable.from([Buffer.from(stdin)], { objectMode: false })
    : Readable.from(stdin)

/** Runs a command line: the words as the shell would divide them. */
export async function ask(args: readonly string[], given: Circumstances = {}): Promise<Heard> {
  const { tty = {}, columns = 80, env = {}, signal = new AbortController().signal } = given
  const [out, err] = [keep(tty.out, columns), keep(tty.err, columns)]
  const stdin = Object.assign(bytesOf(given.stdin), { isTTY: tty.in ?? false })
  const told = { COLUMNS: String(columns), ...env }
  const exit = await run(args, { stdin, stdout: out.stream, stderr: err.stream, env: told, signal })
  return { exit, out: out.text(), err: err.text() }
}

/** What the command line prints where all goes well. */
export async function say(line: string, given: Circumstances = {}): Promise<string> {
  const { exit, out, err } = await ask(line.split(' '), given)
  if (exit !== 0) throw new Error(`pottle ${line} ended with ${exit}: ${err}`)
  return out
}
