import { dataset } from '@pottle/core'
import { z } from 'zod'
import { Health } from '../contract/schemas.js'
import { route } from '../http/route.js'
import { version } from '../version.js'

/** `GET /healthz` */
export const healthRoute = route({
  method: 'get',
  path: '/healthz',
  operation: 'checkHealth',
  summary: 'Whether the server lives',
  description: 'Answers at once, with the versions that it serves.',
  query: z.strictObject({}),
  answer: { description: 'It lives.', media: { 'application/json': { schema: Health } } },
  problems: ['bad-parameter'],
  example: '',
  handle: () => ({ status: 'ok' as const, dataset, version }),
})
