import { allHeats, cautionsFor, dataset, drawHeatScale, findHeat, oneYear } from '@pottle/core'
import { command } from '../command.js'
import { showHeat, showScale } from '../views/heat.js'
import { writeFile } from '../write-file.js'
import { jsonOption, phraseOf, toJson, yearOption } from './shared.js'

/** `pottle heat a slack oven --year 1690`, or `pottle heat` for the whole scale */
export const heatCommand = command({
  name: 'heat',
  takes: '[WORDS]',
  summary: 'Look up the words of an oven heat; without words, the whole scale.',
  about: [
    'Tells degrees with a band, gas marks and fan settings; what dated books print; what they baked at it; and how cooks tried it without a thermometer. Words may be told by what else is baked: as hot as for manchet, after the bread is drawn.',
  ],
  options: {
    ...yearOption,
    full: { says: 'Tell every claim, test and kind of goods.' },
    svg: { value: 'FILE', says: 'Draw the whole scale as an SVG picture.' },
    ...jsonOption,
  },
  examples: [
    { says: 'A slack oven in 1690', line: 'pottle heat a slack oven --year 1690' },
    { says: 'A heat told by what else is baked', line: "pottle heat 'after the bread is drawn'" },
    { says: 'The whole scale, from drying to scorching', line: 'pottle heat' },
    { says: 'The scale as a picture', line: 'pottle heat --svg heats.svg --year 1796' },
  ],
  async run({ words, given, page, terminal }) {
    const { json, full, svg } = given
    const phrase = phraseOf(words)
    const { year } = oneYear(given.year)
    const setting = year === null ? {} : { year }
    if (svg !== undefined) return writeFile(svg, drawHeatScale(setting), terminal)
    if (phrase === '') return json ? toJson({ heats: allHeats(), dataset }) : showScale(allHeats(), page)
    const reading = findHeat(phrase, setting)
    return json ? toJson({ ...reading, dataset }) : showHeat(reading, cautionsFor({ heat: phrase }), page, full)
  },
})
