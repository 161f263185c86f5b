import { type Answer, convert, PottleError } from '@pottle/core'
import * as z from 'zod'
import { ConvertRequest, Problem as ProblemSchema } from '../contract/index.js'
import { mediaType } from '../http/body.js'
import type { Exact } from '../http/exact.js'
import { fit, parseJson } from '../http/json.js'
import { answerLines, type Line } from '../http/ndjson.js'
import { negotiate } from '../http/negotiate.js'
import { faulty, type Problem, ProblemError, problem, problemFrom } from '../http/problem.js'
import { respond } from '../http/respond.js'
import { type Fault, type Route, route } from '../http/route.js'
import { takeTurns } from '../http/turns.js'
import type { PhraseRoute } from './one.js'

const json = 'application/json'
const ndjson = 'application/x-ndjson'
const most = 1000
const pottle = { phrase: 'a pottle of cream', year: 1690, place: 'london' }
// A proxy is to pass on each line as it comes.
const streamed = { 'cache-control': 'no-store', 'content-type': ndjson, 'x-accel-buffering': 'no' }

/** Where in a batch a problem stands: by line of a stream, or by index in an array. */
type Place = { readonly line: number } | { readonly index: number }

/** What the answers to one request share. */
interface Asked {
  readonly tell: (answer: Answer) => object
  readonly fault: Fault
}

function problemOf(error: unknown, fault: Fault): Problem {
  if (error instanceof PottleError) return problemFrom(error, 'body')
  return error instanceof ProblemError ? error.problem : fault(error)
}

/** Answers one request as JSON; what goes wrong with it takes its place, so that the others are not lost. */
function answerOrProblem(request: () => Exact<z.output<typeof ConvertRequest>>, place: Place, { tell, fault }: Asked): string {
  try {
    const { phrase, ...options } = request()
    return JSON.stringify(tell(convert(phrase, options)))
  } catch (error) {
    return JSON.stringify({ ...problemOf(error, fault), ...place })
  }
}

function answerLine({ number, text, tooLong }: Line, asked: Asked): string {
  const place = { line: number }
  if (tooLong) return JSON.stringify({ ...problem('too-large', 'the line is longer than 65,536 characters'), ...place })
  return answerOrProblem(() => fit(ConvertRequest, parseJson(text)), place, asked)
}

const asLine = (answer: string): string => `${answer}\n`

/** The answers to an array. Other requests get their turn between them. */
async function answerAll(requests: readonly unknown[], asked: Asked): Promise<string[]> {
  if (requests.length > most) {
    const detail = `send at most ${most.toLocaleString('en-GB')} at a time, or a stream of any length as NDJSON`
    throw faulty('bad-body', [{ pointer: '', detail }])
  }
  const answers: string[] = []
  const othersTurn = takeTurns()
  for (const [index, request] of requests.entries()) {
    answers.push(answerOrProblem(() => fit(ConvertRequest, request), { index }, asked))
    await othersTurn()
  }
  return answers
}

const forms =
  'An object gives an answer; an array gives an array, or NDJSON where that is asked for; NDJSON of any length gives a line for a line, and can be had as NDJSON alone. Where one of many fails, a problem takes its place.'

/** A route that is posted an object, an array of up to 1,000, or a stream of NDJSON, and answers in kind. */
export function manyRoute({ path, operation, summary, description = '', schema, tell }: PhraseRoute): Route {
  return route({
    method: 'post',
    path,
    operation,
    tag: 'Phrases',
    summary,
    description: `${description} ${forms}`.trim(),
    query: z.strictObject({}),
    body: {
      description: 'The phrases and their settings.',
      media: {
        [json]: {
          schema: z.union([ConvertRequest, z.array(ConvertRequest).max(most)]),
          examples: { 'A phrase': pottle, 'A batch': [pottle, { phrase: 'xij eggs', year: 1690 }] },
        },
        [ndjson]: { schema: ConvertRequest, examples: { 'A line': pottle } },
      },
    },
    answer: {
      description: 'The answers in the order of the requests.',
      media: {
        [json]: { schema: z.union([schema, z.array(z.union([schema, ProblemSchema]))]) },
        [ndjson]: { schema: z.union([schema, ProblemSchema]) },
      },
    },
    problems: ['unreadable', 'no-answer'],
    example: '',
    handle: async ({ context, media, read, fault }) => {
      const asked = { tell, fault }
      if (mediaType(context, [json, ndjson]) === ndjson) {
        negotiate(context, [ndjson])
        const body = (context.req.raw.body ?? []) as AsyncIterable<Uint8Array>
        const lines = answerLines(body, (line) => answerLine(line, asked))
        return respond(context, lines, 200, streamed)
      }
      const requests = await read(z.unknown())
      if (Array.isArray(requests)) {
        const answers = await answerAll(requests, asked)
        return media === ndjson ? answers.map(asLine).join('') : `[${answers.join(',')}]`
      }
      const { phrase, ...options } = fit(ConvertRequest, requests)
      const told = tell(convert(phrase, options))
      return media === ndjson ? asLine(JSON.stringify(told)) : told
    },
  })
}
