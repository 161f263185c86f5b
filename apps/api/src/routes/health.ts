import { dataset } from '@pottle/core'
import * as z from 'zod'
import { Health } from '../contract/index.js'
import { ProblemError, problem } from '../http/problem.js'
import { type Route, route } from '../http/route.js'
import { version } from '../version.js'

const answer = { description: 'It does.', media: { 'application/json': { schema: Health } } }
const alive = { status: 'ok' as const, dataset, version }

/** `GET /healthz` */
export const healthRoute = route({
  method: 'get',
  path: '/healthz',
  operation: 'checkHealth',
  tag: 'Service',
  summary: 'Whether the server lives',
  description: 'Answers at once, with the versions that it serves.',
  query: z.strictObject({}),
  answer,
  problems: [],
  example: '',
  passing: true,
  handle: () => alive,
})

/** `GET /readyz`: 503 from the moment that the server begins to stop, so that a balancer sends the next request elsewhere. */
export function readyRoute(ready: () => boolean): Route {
  return route({
    method: 'get',
    path: '/readyz',
    operation: 'checkReadiness',
    tag: 'Service',
    summary: 'Whether the server takes new requests',
    description: 'Turns to 503 while the server finishes what it has begun and goes down.',
    query: z.strictObject({}),
    answer,
    problems: ['draining'],
    example: '',
    passing: true,
    handle: () => {
      if (!ready()) throw new ProblemError(problem('draining', 'no new requests are taken'))
      return alive
    },
  })
}
