import { writeFile as writeAll } from 'node:fs/promises'
import { type Exit, exits } from './exit.js'
import { FileError } from './fault.js'
import type { Terminal } from './terminal.js'
import { write } from './write.js'

/** Why the system refused, in plain words where the code is a usual one. */
export function reasonOf(error: unknown): string {
  const { code, message } = error as NodeJS.ErrnoException
  const reasons: Readonly<Record<string, string>> = {
    ENOENT: 'there is no such file or folder',
    EISDIR: 'it is a folder',
    EACCES: 'permission is denied',
    ENOSPC: 'the disk is full',
    EROFS: 'the disk can only be read',
  }
  return reasons[code ?? ''] ?? message
}

/**
 * Writes a file and says so on the standard error; `-` is the standard output.
 *
 * @throws FileError where the file can't be written
 */
export async function writeFile(path: string, text: string, { stdout, stderr }: Terminal): Promise<Exit> {
  if (path === '-') {
    await write(stdout, text)
    return exits.done
  }
  try {
    await writeAll(path, text)
  } catch (error) {
    throw new FileError(`${path}: can't be written: ${reasonOf(error)}`)
  }
  await write(stderr, `Written: ${path}\n`)
  return exits.done
}
