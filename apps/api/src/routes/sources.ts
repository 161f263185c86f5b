import { citeBibtex, citeFull, findSource, type SourceRow, sources } from '@pottle/core'
import type { Context } from 'hono'
import { z } from 'zod'
import { Source, SourceList } from '../contract/schemas.js'
import { tagFor } from '../http/cache.js'
import { negotiate } from '../http/negotiate.js'
import { ProblemError, problem } from '../http/problem.js'
import { route } from '../http/route.js'

const csl = 'application/vnd.citationstyles.csl+json'
const types = ['application/json', csl, 'application/x-bibtex', 'text/plain'] as const

/** Sources in the form that the Accept header asks for: CSL-JSON, BibTeX or plain text. */
function respond(context: Context, json: unknown, rows: readonly SourceRow[]): Response {
  const type = negotiate(context, types)
  context.header('Vary', 'Accept')
  context.header('ETag', tagFor(type.replace(/^\w+\//, '')))
  if (type === 'application/x-bibtex') return context.body(rows.map(citeBibtex).join('\n'), 200, { 'content-type': type })
  if (type === 'text/plain') return context.text(`${rows.map(citeFull).join('\n')}\n`)
  return context.body(JSON.stringify(json), 200, { 'content-type': type })
}

const media = (schema: z.ZodType) => ({
  'application/json': { schema },
  [csl]: { schema },
  'application/x-bibtex': { schema: z.string() },
  'text/plain': { schema: z.string() },
})

/** `GET /v1/sources`, with `Accept: application/x-bibtex` for a bibliography */
export const sourcesRoute = route({
  method: 'get',
  path: '/v1/sources',
  operation: 'listSources',
  summary: 'List every source',
  description: 'As CSL-JSON, BibTeX or plain text, by the Accept header.',
  query: z.strictObject({}),
  answer: { description: 'The sources.', media: media(SourceList) },
  problems: ['bad-parameter', 'not-acceptable'],
  example: '',
  handle: ({ context }) => respond(context, sources, sources),
})

/** `GET /v1/sources/digby-1669` */
export const sourceRoute = route({
  method: 'get',
  path: '/v1/sources/{id}',
  operation: 'describeSource',
  summary: 'One source',
  description: 'As CSL-JSON, BibTeX or plain text, by the Accept header.',
  pathParameters: z.strictObject({ id: z.string().describe('The id of a source, such as `digby-1669`.') }),
  query: z.strictObject({}),
  answer: { description: 'The source.', media: media(Source) },
  problems: ['bad-parameter', 'not-found', 'not-acceptable'],
  example: 'digby-1669',
  handle: ({ path: { id }, context }) => {
    const source = findSource(id)
    if (!source)
      throw new ProblemError(problem('not-found', `there is no source "${id.slice(0, 40)}"; /v1/sources lists those that there are`))
    return respond(context, source, [source])
  },
})
