import type { Context } from 'hono'
import type { z } from 'zod'
import { badParameter, ProblemError, problem } from './problem.js'

function faultsOf(error: z.ZodError): { parameter: string; detail: string }[] {
  return error.issues.flatMap((issue) =>
    issue.code === 'unrecognized_keys'
      ? issue.keys.map((key) => ({ parameter: key, detail: 'this route has no such parameter' }))
      : [{ parameter: issue.path.join('.'), detail: issue.message }],
  )
}

/** Query parameters by name. A parameter given twice is a contradiction, and is refused. */
export function queryOf(context: Context): Record<string, string> {
  if (!context.req.url.includes('?')) return {}
  const given = Object.entries(context.req.queries()).map(([name, values]) => {
    if (values.length > 1) throw badParameter(name, `give ${name} once; it is given ${values.length} times`)
    return [name, values[0]!] as const
  })
  return Object.fromEntries(given)
}

/** @throws ProblemError 400 that names each parameter which lacks, is unknown or does not fit */
export function check(schema: z.ZodObject, given: Record<string, string>): Record<string, never> {
  const result = schema.safeParse(given)
  if (result.success) return result.data as Record<string, never>
  const errors = faultsOf(result.error)
  throw new ProblemError(problem('bad-parameter', errors.map(({ parameter, detail }) => `${parameter}: ${detail}`).join('; '), { errors }))
}
