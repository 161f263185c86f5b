import type { Answer as PhraseAnswer } from '@pottle/core'
import { Answer } from '../contract/index.js'
import { manyRoute } from './many.js'
import { oneRoute } from './one.js'

const whole = { path: '/v1/convert', schema: Answer, tell: (answer: PhraseAnswer) => answer }

/** `GET /v1/convert?phrase=a+pottle+of+cream&year=1690&place=london` */
export const convertRoute = oneRoute({
  ...whole,
  operation: 'convertPhrase',
  summary: 'Turn one period phrase into a modern measure',
  description:
    'Reads the phrase, decides which measure was meant in that year and place, and answers with a band, the senses, every step and its source.',
})

/** `POST /v1/convert` with an object, an array of up to 1,000, or a stream of NDJSON */
export const convertManyRoute = manyRoute({
  ...whole,
  operation: 'convertPhrases',
  summary: 'Turn one or many phrases into modern measures',
})
