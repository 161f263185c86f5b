import { type Answer, convert } from '@pottle/core'
import * as z from 'zod'
import { coverageField, phraseFields, settingFields } from '../contract/index.js'
import { type Route, route } from '../http/route.js'

/** A route that reads phrases, and tells all of the answer or a part of it. */
export interface PhraseRoute extends Pick<Route, 'path' | 'operation' | 'summary'> {
  readonly description?: string
  readonly schema: z.ZodType
  readonly tell: (answer: Answer) => object
}

const query = z.strictObject({
  ...phraseFields,
  ...settingFields,
  year: z.string().optional().describe(settingFields.year.description!),
  coverage: z.coerce
    .number('give a number from 0.5 to 0.999')
    .optional()
    .describe(coverageField.description!)
    .meta({ examples: [0.95] }),
})

/** A route that is asked for one phrase in its query. */
export function oneRoute({ path, operation, summary, description = '', schema, tell }: PhraseRoute): Route {
  return route({
    method: 'get',
    path,
    operation,
    tag: 'Phrases',
    summary,
    description,
    query,
    answer: { description: 'The answer.', media: { 'application/json': { schema } } },
    problems: ['unreadable', 'no-answer'],
    example: '?phrase=a+pottle+of+cream&year=1690&place=london',
    handle: ({ query: { phrase, ...options } }) => tell(convert(phrase, options)),
  })
}
