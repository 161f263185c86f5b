import { dataset, liquidHeat, liquidHeats, oneYear, sugarHeight, sugarHeights } from '@pottle/core'
import { command } from '../command.js'
import { showLiquid, showLiquids, showSugar, showSugars } from '../views/warmth.js'
import { jsonOption, phraseOf, toJson, yearOption } from './shared.js'

const options = { ...yearOption, ...jsonOption }

/** `pottle sugar boiled to a feathered height --year 1761`, or `pottle sugar` for every height */
export const sugarCommand = command({
  name: 'sugar',
  takes: '[WORDS]',
  summary: 'Look up a height of boiled sugar; without words, every height.',
  about: [
    'Tells degrees with a band, the test by which a confectioner knew it, and the books that name it. The same word has meant different heights, so say the year where you know it.',
  ],
  options,
  examples: [
    { says: 'What a feathered height was in 1761', line: 'pottle sugar feathered --year 1761' },
    { says: 'Every height, from the small thread to caramel', line: 'pottle sugar' },
  ],
  run({ words, given: { json, year }, page }) {
    const phrase = phraseOf(words)
    if (phrase === '') return json ? toJson({ heights: sugarHeights(), dataset }) : showSugars(sugarHeights(), page)
    const height = sugarHeight(phrase, oneYear(year).year)
    return json ? toJson({ ...height, dataset }) : showSugar(height, phrase, page)
  },
})

/** `pottle warmth warm as new milk`, or `pottle warmth` for all of them */
export const warmthCommand = command({
  name: 'warmth',
  takes: '[WORDS]',
  summary: 'Look up how warm a liquid is to be; without words, every name for it.',
  about: ['Blood-warm, milk-warm, scalding, a walm or two: degrees with a band, and what dated books print.'],
  options,
  examples: [
    { says: 'Warm as new milk', line: 'pottle warmth warm as new milk' },
    { says: 'Every name, from cold to boiling', line: 'pottle warmth' },
  ],
  run({ words, given: { json, year }, page }) {
    const phrase = phraseOf(words)
    if (phrase === '') return json ? toJson({ heats: liquidHeats(), dataset }) : showLiquids(liquidHeats(), page)
    const heat = liquidHeat(phrase, oneYear(year).year)
    return json ? toJson({ ...heat, dataset }) : showLiquid(heat, phrase, page)
  },
})
