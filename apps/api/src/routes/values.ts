import type { Answer } from '@pottle/core'
import { PhraseValue } from '../contract/index.js'
import { manyRoute } from './many.js'
import { oneRoute } from './one.js'

const short = {
  path: '/v1/values',
  schema: PhraseValue,
  description: 'The fields are those of /v1/convert, which says in the same words what the value rests on.',
  // The other parts of an answer are made when they are asked for: here they never are.
  tell: ({ phrase, setting, value, text, notes, cautions, dataset }: Answer) => ({
    phrase,
    setting,
    value,
    text,
    notes,
    cautions,
    dataset,
  }),
}

/** `GET /v1/values?phrase=a+pottle+of+cream&year=1690&place=london` */
export const valueRoute = oneRoute({
  ...short,
  operation: 'valuePhrase',
  summary: 'Turn one period phrase into a modern measure, without the working',
})

/** `POST /v1/values` with an object, an array of up to 1,000, or a stream of NDJSON */
export const valuesRoute = manyRoute({
  ...short,
  operation: 'valuePhrases',
  summary: 'Turn one or many phrases into modern measures, without the working',
})
