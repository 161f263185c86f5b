import { bakePlan, dataset } from '@pottle/core'
import * as z from 'zod'
import { BakePlan, BakePlanRequest } from '../contract/index.js'
import { route } from '../http/route.js'
import { sourceNotes, withoutRecords } from '../plain.js'

/** `POST /v1/bake-plans` with a dish whose time is known and the one whose time is wanted */
export const bakePlansRoute = route({
  method: 'post',
  path: '/v1/bake-plans',
  operation: 'planBake',
  tag: 'Heats',
  summary: 'How long another dish of the same food bakes',
  description:
    'Scaled by heat conduction, with a band for what conduction leaves out, the signs that it is done and a stated core temperature.',
  query: z.strictObject({}),
  body: {
    description: 'Both dishes and the food.',
    media: {
      'application/json': {
        schema: BakePlanRequest,
        examples: {
          'A tart as a pie': {
            food: 'custard',
            from: { shape: 'tart', size: { diameter: 70, depth: 25 }, minutes: 30, celsius: 175 },
            to: { shape: 'pie', size: { diameter: 220, depth: 35 } },
          },
        },
      },
    },
  },
  answer: { description: 'The plan.', media: { 'application/json': { schema: BakePlan } } },
  problems: ['no-answer'],
  example: '',
  handle: async ({ read }) => {
    const { sources, core, signs, assumptions, warnings, ...plan } = bakePlan(await read(BakePlanRequest))
    return {
      ...plan,
      signs: [...signs],
      core: core && { ...withoutRecords(core), degC: [...core.degC], degF: [...core.degF] },
      assumptions: [...assumptions],
      warnings: [...warnings],
      sources: sourceNotes(sources),
      dataset,
    }
  },
})
