import { clean } from '../layout/index.js'
import type { Terminal } from '../terminal.js'

/** How many lines were read, and how many of them failed. */
export interface Tally {
  lines: number
  failed: number
}

/** No eye reads faster. */
const everyMilliseconds = 250
const introducer = '\u001b['
/** To the beginning of the line, and that cleared to its end (ECMA-48, 8.3.41). */
const again = `\r${introducer}K`

const grouped = (count: number): string => count.toLocaleString('en-GB')

function say({ lines, failed }: Tally, seconds: number): string {
  const pace = seconds >= 1 ? `, ${grouped(Math.round(lines / seconds))} a second` : ''
  return clean(`${grouped(lines)} lines, ${grouped(failed)} failed${pace}`)
}

/** What a stream tells of itself while it runs. */
export interface Progress {
  /** Shows how far it is, unless that was shown a moment ago. */
  show(tally: Tally): void
  end(tally: Tally): void
}

const silent: Progress = { show: () => {}, end: () => {} }

/**
 * A line on the standard error that tells how far a stream is, where that is a terminal and the answers go elsewhere: on the same terminal it
 * would be written over by them.
 */
export function startProgress({ stdout, stderr, env }: Terminal, now: () => number = Date.now): Progress {
  if (!stderr.isTTY || stdout.isTTY || env.TERM === 'dumb') return silent
  const start = now()
  let shown = start
  const seconds = (): number => (now() - start) / 1000
  return {
    show(tally) {
      if (now() - shown < everyMilliseconds) return
      shown = now()
      stderr.write(`${again}${say(tally, seconds())}`)
    },
    end: (tally) => void stderr.write(`${again}${say(tally, seconds())}\n`),
  }
}
