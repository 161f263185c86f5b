import { drawLoafSeries, type LoafAnswer, type LoafAsked, loafCoins, loafKinds, sayNearest, weighLoaf } from '@pottle/core'
import { command } from '../command.js'
import { UsageError } from '../fault.js'
import { numberOf, oneOf } from '../options.js'
import { showLoaf } from '../views/loaf.js'
import { labelOfPlace } from '../views/place.js'
import { writeFile } from '../write-file.js'
import { jsonOption, settingOptions, toJson } from './shared.js'

const coins = loafCoins.map(({ id }) => id)
const kinds = loafKinds.map(({ id }) => id)
const skipped = new Set(['a', 'an', 'the', 'loaf', 'bread'])

/** Coin and kind out of words in any order: *a penny white loaf*. Sizes such as `quartern` are asked for with `--coin`. */
function readWords(words: readonly string[]): { readonly coin?: string; readonly kind?: string } {
  const said: { coin?: string; kind?: string } = {}
  for (const word of words.flatMap((one) => one.toLowerCase().split(/\s+/)).filter((one) => one !== '' && !skipped.has(one))) {
    const part = coins.includes(word) ? 'coin' : kinds.includes(word) ? 'kind' : undefined
    if (!part)
      throw new UsageError(
        `"${word.slice(0, 40)}"`,
        `it is no coin or kind of bread of these tables${sayNearest(word, [...coins, ...kinds])}`,
      )
    if (said[part] !== undefined) throw new UsageError(`"${word}"`, `the words name two: ${said[part]} and ${word}`)
    said[part] = word
  }
  return said
}

/** The weight against the year as a standalone SVG. */
function pictureOf({ setting: { year, place }, loaf, value, series }: LoafAnswer): string {
  const { low, best, high, coverage } = value
  return drawLoafSeries(series ?? [{ year: Number(year), low, best, high }], { ...loaf, place: labelOfPlace(place), coverage })
}

/** `pottle loaf penny white --year 1690`, or a span of years for a table */
export const loafCommand = command({
  name: 'loaf',
  takes: '[COIN] [KIND]',
  summary: 'Weigh a loaf that was sold for a coin, in a year or year by year.',
  about: [
    'Computed from the price of wheat through the Assize of Bread, with every step. A span of years gives a table, or a picture.',
    `Coins: ${coins.join(', ')}. Kinds: ${kinds.join(', ')}.`,
  ],
  options: {
    year: { value: 'YEAR', short: 'y', says: 'A year from 1266 to 1900, or a span such as 1660/1710 for a table.' },
    place: settingOptions.place,
    coin: { value: 'COIN', says: 'The coin, or a size that law fixed, such as quartern; penny where nothing is said.' },
    kind: { value: 'KIND', says: 'The kind of bread; the common one of the year where nothing is said.' },
    wheat: { value: 'SHILLINGS', says: 'Your own price of a quarter of middle wheat.' },
    allowance: { value: 'SHILLINGS', says: "Your own baker's allowance on a quarter." },
    market: { value: 'MARKET', says: 'london, town or country, where the place does not tell it.' },
    crumb: { says: 'Weigh the crumb alone.' },
    coverage: { value: 'SHARE', says: 'How much of the doubt the ends are to hold; 0.9 where nothing is said.' },
    svg: { value: 'FILE', says: 'Draw the weight against the year as an SVG picture; - for the standard output.' },
    full: { says: 'Tell every step and source.' },
    ...jsonOption,
  },
  examples: [
    { says: 'A penny white loaf in London in 1690', line: 'pottle loaf penny white --year 1690 --place london' },
    { says: 'Year by year', line: 'pottle loaf penny white --year 1690/1710' },
    { says: 'The same as a picture', line: 'pottle loaf penny white --year 1660/1710 --svg loaves.svg' },
    { says: 'With wheat at 40 shillings, the crumb alone', line: 'pottle loaf penny white -y 1740 --wheat 40 --crumb' },
  ],
  async run({ words, given, page, terminal }) {
    const { year, place, wheat, allowance, market, crumb, coverage, svg, full, json } = given
    if (year === undefined) throw new UsageError('--year', 'give the year of the loaf: 1690, or 1660/1710 for a table')
    const said = readWords(words)
    const asked: LoafAsked = {
      year,
      place,
      crumb,
      coin: given.coin ?? said.coin,
      kind: given.kind ?? said.kind,
      wheat: numberOf('wheat', wheat),
      allowance: numberOf('allowance', allowance),
      market: oneOf('market', market, ['london', 'town', 'country']),
      coverage: numberOf('coverage', coverage),
    }
    const weighed = weighLoaf(asked)
    if (svg !== undefined) return writeFile(svg, pictureOf(weighed), terminal)
    return json ? toJson(weighed) : showLoaf(weighed, page, full)
  },
})
