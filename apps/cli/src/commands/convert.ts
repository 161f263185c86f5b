import { convert } from '@pottle/core'
import { command } from '../command.js'
import { UsageError } from '../fault.js'
import { numberOf } from '../options.js'
import { showAnswer } from '../views/answer.js'
import { jsonOption, phraseOf, settingOptions, toJson } from './shared.js'

/** `pottle convert a pottle of cream --year 1690` */
export const convertCommand = command({
  name: 'convert',
  takes: 'WORDS',
  summary: 'Turn the words of one measure into modern ones.',
  about: [
    'Give the words as the book has them, in any spelling: a pottle of cream, iij pyntes of good ale, ten eggs leaving out four of the whites. Say the year and the place where you know them: measures changed with both.',
  ],
  options: {
    ...settingOptions,
    thing: { value: 'THING', short: 't', says: 'What is measured, where the words do not name it.' },
    to: { value: 'UNIT', says: 'A modern unit, such as g, ml or cup-us; or mass, or volume.' },
    standard: { value: 'NAME', says: 'The standard to insist on: wine, ale, gallon.ale.' },
    coverage: { value: 'SHARE', says: 'How much of the doubt the ends are to hold, from 0.5 to 0.999; 0.9 where nothing is said.' },
    full: { says: 'Tell every sense, unit and source.' },
    ...jsonOption,
  },
  examples: [
    { says: 'A pottle of cream in 1690', line: 'pottle convert a pottle of cream --year 1690' },
    {
      says: 'By the ale gallon, some time about 1650, in London',
      line: "pottle convert 'iij pyntes of good ale' -y 1650~ -p london --standard ale",
    },
    { says: 'Flour by weight, with every sense and source', line: 'pottle convert half a peck of fine flour --year 1750 --to g --full' },
    { says: 'For another program', line: "pottle convert 'a gill of yeast' --year 182X --json" },
  ],
  run({ words, given, page }) {
    const { json, full, coverage, year, place, thing, to, standard } = given
    const phrase = phraseOf(words)
    if (phrase === '') throw new UsageError('the phrase', 'give the words of a measure, such as: pottle convert a pottle of cream')
    const answer = convert(phrase, { year, place, thing, to, standard, coverage: numberOf('coverage', coverage) })
    return json ? toJson(answer) : showAnswer(answer, page, full)
  },
})
