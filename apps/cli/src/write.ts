import { once } from 'node:events'
import type { Writable } from 'node:stream'

/**
 * Writes, and waits where the reader is slower than we are.
 *
 * @throws the stream's own error where it can't be written to, such as EPIPE where nobody reads any more
 */
export async function write(stream: Writable, text: string): Promise<void> {
  if (stream.errored) throw stream.errored
  if (!stream.write(text)) await once(stream, 'drain')
}
