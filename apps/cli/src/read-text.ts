import { readFile } from 'node:fs/promises'
import { FileError } from './fault.js'
import type { Terminal } from './terminal.js'
import { write } from './write.js'
import { reasonOf } from './write-file.js'

/** A receipt book of a thousand pages is smaller; what is larger is some other kind of file. */
const mostBytes = 16 * 1024 * 1024

/** How the end of what is typed is told to a terminal. */
export const endOfInput = process.platform === 'win32' ? 'Ctrl-Z and Enter' : 'Ctrl-D'

/** Nothing of a text is altered, so bytes that are no UTF-8 are refused rather than guessed at. */
function decode(name: string, bytes: Uint8Array): string {
  if (bytes.byteLength > mostBytes)
    throw new FileError(`${name}: it is larger than ${mostBytes / 1024 / 1024} MB; give one receipt at a time`)
  try {
    return new TextDecoder('utf-8', { fatal: true }).decode(bytes)
  } catch {
    throw new FileError(`${name}: it is not text in UTF-8; save it as UTF-8, or convert it first (iconv -f latin1 -t utf-8)`)
  }
}

async function readStdin({ stdin, stderr, signal }: Terminal, hint: string): Promise<Uint8Array> {
  if (stdin.isTTY) await write(stderr, `${hint}\n`)
  signal.addEventListener('abort', () => stdin.destroy())
  const chunks: Uint8Array[] = []
  let size = 0
  for await (const chunk of stdin as AsyncIterable<Uint8Array>) {
    chunks.push(chunk)
    size += chunk.byteLength
    if (size > mostBytes) break
  }
  return Buffer.concat(chunks)
}

/**
 * The text of a file, or of the standard input where there is none or it is `-`. A terminal is told what to type.
 *
 * @throws FileError where it can't be read, is no text in UTF-8 or is far too large for a receipt
 */
export async function readText(path: string | undefined, terminal: Terminal, hint: string): Promise<string> {
  if (path === undefined || path === '-') return decode('the standard input', await readStdin(terminal, hint))
  try {
    return decode(path, await readFile(path))
  } catch (error) {
    if (error instanceof FileError) throw error
    throw new FileError(`${path}: can't be read: ${reasonOf(error)}`)
  }
}
