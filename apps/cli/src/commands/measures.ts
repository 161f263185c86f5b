import { dataset, describeMeasure, listMeasures, sayNearest } from '@pottle/core'
import { command } from '../command.js'
import { NoAnswer } from '../fault.js'
import { oneOf } from '../options.js'
import { showMeasure, showMeasures } from '../views/measures.js'
import { jsonOption, phraseOf, toJson } from './shared.js'

const all = listMeasures()
const kinds = [...new Set(all.map(({ kind }) => kind))]

/** `pottle measures firkin`, or `pottle measures` for the names of all */
export const measuresCommand = command({
  name: 'measures',
  takes: '[NAME]',
  summary: 'List the measures of the tables, or describe one: what it was, when, where, of what.',
  about: ['A measure is found by its name or any spelling that the tables list.'],
  options: {
    kind: { value: 'KIND', says: `Only measures of this kind: ${kinds.join(', ')}.` },
    ...jsonOption,
  },
  examples: [
    { says: 'What a firkin was', line: 'pottle measures firkin' },
    { says: 'The names of all measures of weight', line: 'pottle measures --kind weight' },
  ],
  run({ words, given: { kind, json }, page }) {
    const name = phraseOf(words)
    const only = oneOf('kind', kind, kinds)
    if (name === '') {
      const measures = all.filter((measure) => only === undefined || measure.kind === only)
      return json ? toJson({ measures, dataset }) : showMeasures(measures, page)
    }
    const measure = describeMeasure(name)
    if (!measure) {
      const near = sayNearest(
        name,
        all.map(({ id }) => id),
      )
      throw new NoAnswer(`"${name.slice(0, 40)}" is not a measure of these tables${near}`)
    }
    return json ? toJson(measure) : showMeasure(measure, page)
  },
})
