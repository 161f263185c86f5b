import { convert, PottleError } from '@pottle/core'
import { z } from 'zod'
import { Answer, ConvertRequest, coverageField, Problem, phraseFields, settingFields } from '../contract/index.js'
import { mediaType } from '../http/body.js'
import type { Exact } from '../http/exact.js'
import { fit, parseJson } from '../http/json.js'
import { answerLines, type Line } from '../http/ndjson.js'
import { ProblemError, problem, problemFrom } from '../http/problem.js'
import { respond } from '../http/respond.js'
import { route } from '../http/route.js'

const query = z.strictObject({
  ...phraseFields,
  ...settingFields,
  year: z.string().optional().describe(settingFields.year.description!),
  coverage: z.coerce.number('give a number from 0.5 to 0.999').optional().describe(coverageField.description!),
})

/** `GET /v1/convert?phrase=a+pottle+of+cream&year=1690&place=london` */
export const convertRoute = route({
  method: 'get',
  path: '/v1/convert',
  operation: 'convertPhrase',
  tag: 'Phrases',
  summary: 'Turn one period phrase into a modern measure',
  description:
    'Reads the phrase, decides which measure was meant in that year and place, and answers with a band, the senses, every step and its source.',
  query,
  answer: { description: 'The answer.', media: { 'application/json': { schema: Answer } } },
  problems: ['unreadable', 'no-answer'],
  example: '?phrase=a+pottle+of+cream&year=1690&place=london',
  handle: ({ query: { phrase, ...options } }) => convert(phrase, options),
})

/** Where in a batch a problem stands: by line of a stream, or by index in an array. */
type Place = { readonly line: number } | { readonly index: number }

/** Answers one request as JSON; what goes wrong with it takes its place, so that the others are not lost. */
function answerOrProblem(request: () => Exact<z.output<typeof ConvertRequest>>, place: Place): string {
  try {
    const { phrase, ...options } = request()
    return JSON.stringify(convert(phrase, options))
  } catch (error) {
    if (error instanceof PottleError) return JSON.stringify({ ...problemFrom(error, 'body'), ...place })
    if (error instanceof ProblemError) return JSON.stringify({ ...error.problem, ...place })
    throw error
  }
}

function answerLine({ number, text, tooLong }: Line): string {
  const place = { line: number }
  if (tooLong) return JSON.stringify({ ...problem('too-large', 'the line is longer than 65,536 characters'), ...place })
  return answerOrProblem(() => fit(ConvertRequest, parseJson(text)), place)
}

const json = 'application/json'
const ndjson = 'application/x-ndjson'
const most = 1000
// A proxy is to pass on each line as it comes.
const streamed = { 'cache-control': 'no-store', 'content-type': ndjson, 'x-accel-buffering': 'no' }

/** So long may one batch keep others waiting, in milliseconds. */
const turn = 10

/** An array of answers as JSON. Other requests get their turn between them. */
async function answerAll(requests: readonly unknown[]): Promise<string> {
  if (requests.length > most) {
    const detail = `send at most ${most.toLocaleString('en-GB')} at a time, or a stream of any length as NDJSON`
    throw new ProblemError(problem('bad-body', detail, { errors: [{ pointer: '', detail }] }))
  }
  const answers: string[] = []
  let since = performance.now()
  for (const [index, request] of requests.entries()) {
    answers.push(answerOrProblem(() => fit(ConvertRequest, request), { index }))
    if (performance.now() - since < turn) continue
    await new Promise((resolve) => setTimeout(resolve, 0))
    since = performance.now()
  }
  return `[${answers.join(',')}]`
}

/** `POST /v1/convert` with an object, an array of up to 1,000, or a stream of NDJSON */
export const convertManyRoute = route({
  method: 'post',
  path: '/v1/convert',
  operation: 'convertPhrases',
  tag: 'Phrases',
  summary: 'Turn one or many phrases into modern measures',
  description:
    'An object gives an answer; an array gives an array; NDJSON of any length gives a line for a line. Where one of many fails, a problem takes its place.',
  query: z.strictObject({}),
  body: {
    description: 'The phrases and their settings.',
    media: {
      [json]: {
        schema: z.union([ConvertRequest, z.array(ConvertRequest).max(most)]),
        example: { phrase: 'a pottle of cream', year: 1690, place: 'london' },
      },
      [ndjson]: { schema: ConvertRequest },
    },
  },
  answer: {
    description: 'The answers in the order of the requests.',
    media: { [json]: { schema: z.union([Answer, z.array(z.union([Answer, Problem]))]) }, [ndjson]: { schema: z.union([Answer, Problem]) } },
  },
  problems: ['unreadable', 'no-answer'],
  example: '',
  handle: async ({ context, read }) => {
    if (mediaType(context, [json, ndjson]) === ndjson) {
      const body = (context.req.raw.body ?? []) as AsyncIterable<Uint8Array>
      return respond(context, answerLines(body, answerLine), 200, streamed)
    }
    const requests = await read(z.unknown())
    if (Array.isArray(requests)) return answerAll(requests)
    const { phrase, ...options } = fit(ConvertRequest, requests)
    return convert(phrase, options)
  },
})
