import type { Writable } from 'node:stream'
import { write } from '../write.js'

/** Text on its way to a stream. */
export interface Gathering {
  /** @returns true where so much has come together that it is time to flush */
  add(text: string): boolean
  /** Writes what came together, and waits for a reader that is slower. */
  flush(): Promise<void>
}

/** Each writing costs more than gathering so many characters does. */
const enough = 64 * 1024

export function gather(stream: Writable): Gathering {
  let texts: string[] = []
  let length = 0
  return {
    add(text) {
      texts.push(text)
      length += text.length
      return length >= enough
    },
    async flush() {
      if (length === 0) return
      const text = texts.join('')
      texts = []
      length = 0
      await write(stream, text)
    },
  }
}
