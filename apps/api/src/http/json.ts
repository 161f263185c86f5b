import type { Context } from 'hono'
import type { z } from 'zod'
import { mediaType, readText } from './body.js'
import type { Exact } from './exact.js'
import { fitting } from './misfits.js'
import { faulty, pointerTo } from './problem.js'

/** No body of ours nests deeper. */
const mostDeep = 64

/** Whether a value nests deeper than that, found without recursion. */
function tooDeep(text: string): boolean {
  let depth = 0
  let quoted = false
  for (let i = 0; i < text.length; i++) {
    const mark = text[i]
    if (quoted) {
      if (mark === '\\') i++
      else if (mark === '"') quoted = false
    } else if (mark === '"') quoted = true
    else if (mark === '{' || mark === '[') {
      if (++depth > mostDeep) return true
    } else if (mark === '}' || mark === ']') depth--
  }
  return false
}

export function parseJson(text: string): unknown {
  if (tooDeep(text)) throw faulty('bad-body', [{ pointer: '', detail: `nest no deeper than ${mostDeep}` }])
  try {
    return JSON.parse(text)
  } catch (error) {
    throw faulty('bad-body', [{ pointer: '', detail: `this is not JSON: ${(error as Error).message.slice(0, 120)}` }])
  }
}

/** @throws ProblemError 400 that points at each place in the value which does not fit */
export function fit<Schema extends z.ZodType>(schema: Schema, value: unknown): Exact<z.output<Schema>> {
  const result = fitting(schema, value, 'field')
  if ('data' in result) return result.data as Exact<z.output<Schema>>
  throw faulty(
    'bad-body',
    result.misfits.map(({ path, detail }) => ({ pointer: pointerTo(path), detail })),
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
