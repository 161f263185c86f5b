import type { Context } from 'hono'
import type { z } from 'zod'
import { mediaType, readText } from './body.js'
import type { Exact } from './exact.js'
import { ProblemError, type ProblemFault, pointerTo, problem } from './problem.js'

/** Faults of a body that does not fit its schema, as JSON pointers (RFC 6901). */
function bodyFaults(error: z.ZodError): ProblemFault[] {
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
 * @throws ProblemError 400 for what is not JSON or does not fit, 415 for another media type, and as `readText`
 */
export async function readJson<Schema extends z.ZodType>(
  context: Context,
  schema: Schema,
  seconds: number,
): Promise<Exact<z.output<Schema>>> {
  mediaType(context, ['application/json'])
  return fit(schema, parseJson(await readText(context, seconds)))
}
