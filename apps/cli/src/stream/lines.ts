/** One line of the input by its number from 1, as bytes; null where it was too long to be held. */
export interface Line {
  readonly number: number
  readonly bytes: Uint8Array | null
}

const newline = 10

/** A buffer that takes the pieces of a line as they come, up to a length. */
function startLine(most: number): { add(piece: Uint8Array): void; take(): Uint8Array | null; readonly empty: boolean } {
  let pieces: Uint8Array[] = []
  let length = 0
  return {
    add(piece) {
      length += piece.byteLength
      // What is too long to be read is not kept either: memory stays flat whatever comes.
      if (length > most) pieces = []
      else if (piece.byteLength > 0) pieces.push(piece)
    },
    take() {
      const line = length > most ? null : pieces.length === 1 ? pieces[0]! : Buffer.concat(pieces)
      pieces = []
      length = 0
      return line
    },
    get empty() {
      return length === 0
    },
  }
}

/**
 * Cuts a stream of bytes into lines, a batch for each chunk as it comes, holding never more than one unfinished line.
 *
 * @param first the number of the first line
 * @param most the longest line in bytes
 */
export async function* linesOf(chunks: AsyncIterable<Uint8Array>, first: number, most: number): AsyncGenerator<readonly Line[]> {
  const line = startLine(most)
  let number = first
  for await (const chunk of chunks) {
    const lines: Line[] = []
    let at = 0
    for (let end = chunk.indexOf(newline); end >= 0; end = chunk.indexOf(newline, at)) {
      line.add(chunk.subarray(at, end))
      lines.push({ number: number++, bytes: line.take() })
      at = end + 1
    }
    line.add(chunk.subarray(at))
    yield lines
  }
  if (!line.empty) yield [{ number, bytes: line.take() }]
}
