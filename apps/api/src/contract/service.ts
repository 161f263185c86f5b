import { z } from 'zod'
import { named } from './named.js'

export const Health = named(
  'Health',
  'That the server lives, and what it serves.',
  z.object({ status: z.literal('ok'), dataset: z.string(), version: z.string() }),
)

export const Problem = named(
  'Problem',
  'What went wrong: problem details by RFC 9457. `errors` names each parameter, or points into the body, and says what would be right.',
  z.object({
    type: z.string(),
    title: z.string(),
    status: z.int(),
    detail: z.string(),
    errors: z
      .array(
        z.object({
          parameter: z.string().optional().describe('A query parameter, or a header, by name.'),
          pointer: z.string().optional().describe('A place in the body (RFC 6901); of a batch, in the request that failed.'),
          detail: z.string(),
        }),
      )
      .optional(),
    understood: z.array(z.string()).optional(),
    unread: z.array(z.string()).optional(),
    nearest: z.array(z.string()).optional(),
    line: z.int().optional().describe('In a stream: the line of the input, from 1.'),
    index: z.int().optional().describe('In an array: the index of the request, from 0.'),
  }),
)

const fault = z.object({ parameter: z.string().optional(), pointer: z.string().optional(), detail: z.string() })

export const ProblemKind = named(
  'ProblemKind',
  'A kind of problem: what leads to it, what to do about it, and a case of it.',
  z.object({
    type: z.string(),
    status: z.int(),
    title: z.string(),
    cause: z.string(),
    advice: z.string(),
    example: z.object({
      detail: z.string(),
      errors: z.array(fault).optional(),
      understood: z.array(z.string()).optional(),
      unread: z.array(z.string()).optional(),
      nearest: z.array(z.string()).optional(),
    }),
  }),
)
