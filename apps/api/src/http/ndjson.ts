import { takeTurns } from './turns.js'

/** No line of ours is longer; a longer one is answered with a problem and skipped to its end. */
const mostLine = 64 * 1024

/** One line of the input by its number from 1, or the news that it was too long to read. */
export interface Line {
  readonly number: number
  readonly text: string
  readonly tooLong: boolean
}

/** Splits a stream of bytes into lines, holding never more than one. Empty lines are passed over but counted. */
export async function* linesOf(body: AsyncIterable<Uint8Array>): AsyncGenerator<Line> {
  const decoder = new TextDecoder()
  let rest = ''
  let number = 0
  let tooLong = false
  for await (const chunk of body) {
    const pieces = decoder.decode(chunk, { stream: true }).split('\n')
    for (const [i, piece] of pieces.entries()) {
      tooLong ||= rest.length + piece.length > mostLine
      rest = tooLong ? '' : rest + piece
      if (i === pieces.length - 1) continue
      number++
      if (tooLong || rest.trim() !== '') yield { number, text: rest, tooLong }
      rest = ''
      tooLong = false
    }
  }
  rest += decoder.decode()
  if (tooLong || rest.trim() !== '') yield { number: number + 1, text: rest, tooLong }
}

/**
 * Answers a stream line by line: a line in, a line out. The next line is read only when the reader has taken the last answer, so memory stays
 * flat whatever the length (back-pressure by the Streams Standard's `pull`); other requests get their turn between lines.
 */
export function answerLines(body: AsyncIterable<Uint8Array>, answer: (line: Line) => string): ReadableStream<Uint8Array> {
  const lines = linesOf(body)
  const encoder = new TextEncoder()
  const othersTurn = takeTurns()
  return new ReadableStream({
    async pull(controller) {
      await othersTurn()
      const { value, done } = await lines.next()
      if (done) controller.close()
      else controller.enqueue(encoder.encode(`${answer(value)}\n`))
    },
    async cancel() {
      await lines.return(undefined)
    },
  })
}
