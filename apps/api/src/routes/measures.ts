import { dataset, describeMeasure, listMeasures } from '@pottle/core'
import * as z from 'zod'
import { Measure, MeasureList } from '../contract/index.js'
import { badParameter, ProblemError, problem } from '../http/problem.js'
import { route } from '../http/route.js'

/** `GET /v1/measures?kind=capacity` */
export const measuresRoute = route({
  method: 'get',
  path: '/v1/measures',
  operation: 'listMeasures',
  tag: 'Tables',
  summary: 'List the measures of the tables',
  description: 'Every measure with its senses by date and place.',
  query: z.strictObject({ kind: z.string().optional().describe('Only measures of this kind, such as `weight`, `capacity` or `count`.') }),
  answer: { description: 'The measures.', media: { 'application/json': { schema: MeasureList } } },
  problems: [],
  example: '?kind=capacity',
  handle: ({ query: { kind } }) => {
    const all = listMeasures()
    const kinds = [...new Set(all.map((measure) => measure.kind))]
    if (kind && !kinds.some((known) => known === kind)) {
      const detail = `"${kind.slice(0, 40)}" is not a kind of these tables; they have ${kinds.join(', ')}`
      throw badParameter('kind', detail)
    }
    return { measures: all.filter((measure) => !kind || measure.kind === kind), dataset }
  },
})

/** `GET /v1/measures/pottle` */
export const measureRoute = route({
  method: 'get',
  path: '/v1/measures/{id}',
  operation: 'describeMeasure',
  tag: 'Tables',
  summary: 'One measure with its senses by date and place',
  description: 'By its id, its name or a listed spelling.',
  pathParameters: z.strictObject({ id: z.string().describe('The id of a measure, such as `pottle`.') }),
  query: z.strictObject({}),
  answer: { description: 'The measure.', media: { 'application/json': { schema: Measure } } },
  problems: ['not-found'],
  example: 'pottle',
  handle: ({ path: { id } }) => {
    const measure = describeMeasure(id)
    if (!measure)
      throw new ProblemError(problem('not-found', `there is no measure "${id.slice(0, 40)}"; /v1/measures lists those that there are`))
    return measure
  },
})
