import { citeBibtex, citeFull, findSource, type SourceRow, sources } from '@pottle/core'
import * as z from 'zod'
import { Source, SourceList } from '../contract/index.js'
import { ProblemError, problem } from '../http/problem.js'
import { route } from '../http/route.js'

const csl = 'application/vnd.citationstyles.csl+json'

const media = (schema: z.ZodType) => ({
  'application/json': { schema },
  [csl]: { schema },
  'application/x-bibtex': { schema: z.string() },
  'text/plain': { schema: z.string() },
})

/** Sources in the form that was asked for: BibTeX or plain text; else as CSL-JSON. */
function written(type: string, json: unknown, rows: readonly SourceRow[]): unknown {
  if (type === 'application/x-bibtex') return rows.map(citeBibtex).join('\n')
  if (type === 'text/plain') return `${rows.map(citeFull).join('\n')}\n`
  return json
}

/** `GET /v1/sources`, with `Accept: application/x-bibtex` for a bibliography */
export const sourcesRoute = route({
  method: 'get',
  path: '/v1/sources',
  operation: 'listSources',
  tag: 'Tables',
  summary: 'List every source',
  description: 'As CSL-JSON, BibTeX or plain text, by the Accept header.',
  query: z.strictObject({}),
  answer: { description: 'The sources.', media: media(SourceList) },
  problems: [],
  example: '',
  handle: ({ media: type }) => written(type, sources, sources),
})

/** `GET /v1/sources/digby-1669` */
export const sourceRoute = route({
  method: 'get',
  path: '/v1/sources/{id}',
  operation: 'describeSource',
  tag: 'Tables',
  summary: 'One source',
  description: 'As CSL-JSON, BibTeX or plain text, by the Accept header.',
  pathParameters: z.strictObject({ id: z.string().describe('The id of a source, such as `digby-1669`.') }),
  query: z.strictObject({}),
  answer: { description: 'The source.', media: media(Source) },
  problems: ['not-found'],
  example: 'digby-1669',
  handle: ({ path: { id }, media: type }) => {
    const source = findSource(id)
    if (!source)
      throw new ProblemError(problem('not-found', `there is no source "${id.slice(0, 40)}"; /v1/sources lists those that there are`))
    return written(type, source, [source])
  },
})
