import type { Context } from 'hono'
import type { z } from 'zod'
import type { Exact } from './exact.js'
import { ProblemError, type ProblemFault, pointerTo, problem } from './problem.js'

/** A megabyte of prose fits, with room for its options; longer work goes as NDJSON. */
export const mostBytes = 2 * 1024 * 1024

const mediaOf = (context: Context): string => (context.req.header('content-type') ?? '').split(';')[0]!.trim().toLowerCase()

/**
 * The media type of the body, one of those that the route reads.
 *
 * @throws ProblemError 415 that lists them
 */
export function mediaType<Type extends string>(context: Context, types: readonly Type[]): Type {
  const media = mediaOf(context)
  const found = types.find((type) => type === media)
  if (found) return found
  const detail = `send ${types.join(' or ')}${media ? `, not ${media.slice(0, 60)}` : ''}`
  throw new ProblemError(problem('unsupported-media-type', detail, { errors: [{ parameter: 'Content-Type', detail }] }))
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

/** The body as text. Its length is checked before it is read, where the request tells it. */
function readText(context: Context, seconds: number): Promise<string> {
  const length = context.req.header('content-length')
  if (length === undefined) return inTime(readChunks((context.req.raw.body ?? []) as AsyncIterable<Uint8Array>), seconds)
  if (Number(length) > mostBytes) throw tooLarge()
  return inTime(context.req.text(), seconds)
}

/** Faults of a body that does not fit its schema, as JSON pointers (RFC 6901). */
export function bodyFaults(error: z.ZodError): ProblemFault[] {
  return error.issues.flatMap((issue) =>
    issue.code === 'unrecognized_keys'
      ? issue.keys.map((key) => ({ pointer: pointerTo([...issue.path, key]), detail: 'there is no such field here' }))
      : [{ pointer: pointerTo(issue.path), detail: issue.message }],
  )
}

/** Whether a value nests deeper than any body of ours, found without recursion. */
function tooDeep(text: string): boolean {
  const most = 64
  let depth = 0
  let quoted = false
  for (let i = 0; i < text.length; i++) {
    const mark = text[i]
    if (quoted) {
      if (mark === '\\') i++
      else if (mark === '"') quoted = false
    } else if (mark === '"') quoted = true
    else if (mark === '{' || mark === '[') {
      if (++depth > most) return true
    } else if (mark === '}' || mark === ']') depth--
  }
  return false
}

export function parseJson(text: string): unknown {
  if (tooDeep(text))
    throw new ProblemError(
      problem('bad-body', 'the JSON nests deeper than any body here', { errors: [{ pointer: '', detail: 'nest at most 64 deep' }] }),
    )
  try {
    return JSON.parse(text)
  } catch (error) {
    const detail = `the body is not JSON: ${(error as Error).message.slice(0, 120)}`
    throw new ProblemError(problem('bad-body', detail, { errors: [{ pointer: '', detail }] }))
  }
}

/** @throws ProblemError 400 that points at each place in the value which does not fit */
export function fit<Schema extends z.ZodType>(schema: Schema, value: unknown): Exact<z.output<Schema>> {
  const result = schema.safeParse(value)
  if (result.success) return result.data as Exact<z.output<Schema>>
  const errors = bodyFaults(result.error)
  throw new ProblemError(
    problem('bad-body', errors.map(({ pointer, detail }) => `${pointer || 'the body'}: ${detail}`).join('; '), { errors }),
  )
}

/**
 * The body as JSON that fits a schema.
 *
 * @param seconds by when it has to be there
 * @throws ProblemError 400 for what is not JSON or does not fit, 408 for a body that is late, 413 for too much of it, 415 for another media type
 */
export async function readJson<Schema extends z.ZodType>(
  context: Context,
  schema: Schema,
  seconds: number,
): Promise<Exact<z.output<Schema>>> {
  mediaType(context, ['application/json'])
  return fit(schema, parseJson(await readText(context, seconds)))
}
