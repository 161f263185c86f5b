import type { Context, MiddlewareHandler } from 'hono'
import { faulty, ProblemError, problem } from './problem.js'

/** A megabyte of prose fits, with room for its options; longer work goes as NDJSON. */
export const mostBytes = 2 * 1024 * 1024

const mediaOf = (context: Context): string => (context.req.header('content-type') ?? '').split(';')[0]!.trim().toLowerCase()

/** A short body may unfold to a long one, so that none is unfolded here. */
function refuseCoded(context: Context): void {
  const coding = context.req.header('content-encoding')
  if (coding === undefined || coding.toLowerCase() === 'identity') return
  throw faulty('unsupported-media-type', [
    { parameter: 'Content-Encoding', detail: `send the body as it is, not in ${coding.slice(0, 40)}` },
  ])
}

/**
 * The media type of the body, one of those that the route reads.
 *
 * @throws ProblemError 415 that lists them, or for a body that is compressed
 */
export function mediaType<Type extends string>(context: Context, types: readonly Type[]): Type {
  refuseCoded(context)
  const media = mediaOf(context)
  const found = types.find((type) => type === media)
  if (found) return found
  throw faulty('unsupported-media-type', [
    { parameter: 'Content-Type', detail: `send ${types.join(' or ')}${media ? `, not ${media.slice(0, 60)}` : ''}` },
  ])
}

function tooLarge(): ProblemError {
  return new ProblemError(problem('too-large', `the body has more than ${mostBytes} bytes`))
}

/** What is read, unless it takes too long. */
async function inTime<Value>(reading: Promise<Value>, seconds: number): Promise<Value> {
  let timer: ReturnType<typeof setTimeout> | undefined
  const late = new Promise<never>((_, reject) => {
    const fault = problem('too-slow', `the body was not there after ${seconds} seconds`)
    timer = setTimeout(() => reject(new ProblemError(fault)), seconds * 1000)
  })
  try {
    return await Promise.race([reading, late])
  } finally {
    clearTimeout(timer)
  }
}

/** A body of unknown length, read no further than the limit. */
async function readChunks(body: AsyncIterable<Uint8Array>): Promise<string> {
  const decoder = new TextDecoder()
  let text = ''
  let bytes = 0
  for await (const chunk of body) {
    bytes += chunk.byteLength
    if (bytes > mostBytes) throw tooLarge()
    text += decoder.decode(chunk, { stream: true })
  }
  return text + decoder.decode()
}

/**
 * The body as text. Its length is checked before it is read, where the request tells it.
 *
 * @param seconds by when it has to be there
 * @throws ProblemError 408 for a body that is late, 413 for too much of it
 */
export function readText(context: Context, seconds: number): Promise<string> {
  const length = context.req.header('content-length')
  if (length === undefined) return inTime(readChunks((context.req.raw.body ?? []) as AsyncIterable<Uint8Array>), seconds)
  if (Number(length) > mostBytes) throw tooLarge()
  return inTime(context.req.text(), seconds)
}

/** Reads a form as a whole, within the same limits, before the page that it was sent to does. */
export function holdForm(seconds: number): MiddlewareHandler {
  return async (context, next) => {
    const body = await readText(context, seconds)
    context.req.raw = new Request(context.req.raw, { body })
    return next()
  }
}
