import type { Readable, Writable } from 'node:stream'

type Output = Writable & { readonly isTTY?: boolean; readonly columns?: number }

/** What a command reads and writes: the process's own streams, or a test's. */
export interface Terminal {
  readonly stdin: Readable & { readonly isTTY?: boolean }
  readonly stdout: Output
  readonly stderr: Output
  readonly env: Readonly<Record<string, string | undefined>>
  /** Aborts when the user asks to stop. */
  readonly signal: AbortSignal
}

/** How text is set: the width of a line, and how words are made to stand out. Without a terminal the inks do nothing. */
export interface Page {
  readonly width: number
  bold(text: string): string
  quiet(text: string): string
}

/** Prose is hard to read in longer lines than this, and nothing can be set in shorter ones. */
const [narrowest, usual, widest] = [24, 80, 100]

function widthOf(stream: Output, env: Terminal['env']): number {
  const told = stream.isTTY && stream.columns ? stream.columns : Number(env.COLUMNS)
  const width = Number.isInteger(told) && told > 0 ? told : usual
  return Math.min(Math.max(width, narrowest), widest)
}

/** Whether a stream may get escape sequences; see no-color.org for `NO_COLOR`. */
export function hasInk(stream: Output, env: Terminal['env']): boolean {
  return stream.isTTY === true && !env.NO_COLOR && env.TERM !== 'dumb'
}

const introducer = '\u001b['

/** SGR codes (ECMA-48, 8.3.117): each begins with its code and ends with the one that takes it back. */
function ink(on: number, off: number): (text: string) => string {
  return (text) => (text === '' ? '' : `${introducer}${on}m${text}${introducer}${off}m`)
}

const plain = (text: string): string => text

export function pageOn(stream: Output, env: Terminal['env']): Page {
  const inked = hasInk(stream, env)
  return { width: widthOf(stream, env), bold: inked ? ink(1, 22) : plain, quiet: inked ? ink(2, 22) : plain }
}
