import * as z from 'zod'
import { dataset } from './common.js'
import { named } from './named.js'

export const Health = named(
  'Health',
  'That the server lives, and what it serves.',
  z.object({
    status: z.literal('ok').describe('Always the same.'),
    dataset,
    version: z.string().describe('The version of the server.'),
  }),
)

const words = {
  understood: z.array(z.string()).optional().describe('Words of the phrase that were understood.'),
  unread: z.array(z.string()).optional().describe('Words that were not.'),
  nearest: z.array(z.string()).optional().describe('Names like those.'),
}

const detail = z.string().describe('What was wrong, and what would be right.')

const errors = z
  .array(
    z.object({
      parameter: z.string().optional().describe('A query parameter, or a header, by name.'),
      pointer: z
        .string()
        .optional()
        .describe('A place in the body (RFC 6901), empty for all of it; of a batch, in the request that failed.'),
      detail,
    }),
  )
  .optional()
  .describe('Each thing that was wrong, up to fifty.')

const type = z.string().describe('The kind of problem, as the path of a page on this server that explains it.')
const title = z.string().describe('The kind of problem in a sentence.')
const status = z.int().describe('The status of the answer.')

export const Problem = named(
  'Problem',
  'What went wrong: problem details by RFC 9457.',
  z.object({
    type,
    title,
    status,
    detail,
    errors,
    ...words,
    line: z.int().optional().describe('In a stream: the line of the input, from 1.'),
    index: z.int().optional().describe('In an array: the index of the request, from 0.'),
  }),
)

export const ProblemKind = named(
  'ProblemKind',
  'A kind of problem: what leads to it, and what to do about it.',
  z.object({
    type,
    status,
    title,
    cause: z.string().describe('What leads to it.'),
    advice: z.string().describe('What to do about it.'),
    example: z.object({ detail, errors, ...words }).describe('A case of it.'),
  }),
)
