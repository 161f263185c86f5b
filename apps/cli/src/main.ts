import { exits } from './exit.js'
import { run } from './run.js'
import { reasonOf } from './write-file.js'

const stopping = new AbortController()

/** What a shell reports for a process that a signal ended: 128 and the signal's number. */
const signals = { SIGINT: exits.interrupted, SIGTERM: 143 }

/** The first signal lets the line in hand be finished; a second one does not wait. */
function stop(signal: keyof typeof signals): void {
  if (stopping.signal.aborted) process.exit(signals[signal])
  stopping.abort(signal)
}

for (const signal of ['SIGINT', 'SIGTERM'] as const) process.on(signal, stop)

process.stdout.on('error', (error: NodeJS.ErrnoException) => {
  // As with `| head`: whoever read the output has read enough.
  if (error.code === 'EPIPE') process.exit(exits.done)
  process.stderr.write(`pottle: the standard output: can't be written: ${reasonOf(error)}\n`)
  process.exit(exits.file)
})
// There is nowhere left to complain to.
process.stderr.on('error', () => process.exit(exits.file))

const { stdin, stdout, stderr, env } = process
const exit = await run(process.argv.slice(2), { stdin, stdout, stderr, env, signal: stopping.signal })
process.exitCode = exit === exits.interrupted ? signals[stopping.signal.reason as keyof typeof signals] : exit
// A terminal, or a pipe that nobody closes, would keep the process waiting for input that is not wanted any more.
stdin.destroy()
