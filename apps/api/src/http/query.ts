import type { Context } from 'hono'
import type { z } from 'zod'
import { fitting } from './misfits.js'
import { badParameter, faulty } from './problem.js'

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
  const result = fitting(schema, given, 'parameter')
  if ('data' in result) return result.data as Record<string, never>
  throw faulty(
    'bad-parameter',
    result.misfits.map(({ path, detail }) => ({ parameter: path.join('.'), detail })),
  )
}
