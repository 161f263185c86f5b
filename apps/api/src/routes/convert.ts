import { convert } from '@pottle/core'
import * as z from 'zod'
import { Answer, coverageField, phraseFields, settingFields } from '../contract/index.js'
import { route } from '../http/route.js'

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
