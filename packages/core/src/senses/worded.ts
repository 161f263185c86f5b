import type { StandardRow } from '../tables/index.js'

/** Words in front of a measure that name its standard, by the part of a standard's id that they stand for. Common practice, no source. */
const namedStandards: Readonly<Record<string, RegExp>> = {
  wine: /^gallon\.wine/,
  ale: /^gallon\.ale/,
  beer: /^gallon\.ale/,
  corn: /^gallon\.corn/,
  winchester: /^gallon\.corn/,
  imperial: /^gallon\.imperial/,
  english: /^(?!scots)/,
  scotch: /^scots/,
  scots: /^scots|^pound\.(scots|tron)/,
  irish: /irish$/,
  troy: /^pound\.troy/,
  avoirdupois: /^pound\.avoirdupois/,
  tower: /^pound\.tower/,
  apothecary: /^pound\.apothecaries/,
}

/** Whether a word in front of a measure (*a wine pint*) names a standard; a word that names none at all does not. */
export function isWordFor(word: string, standard: StandardRow): boolean {
  return namedStandards[word]?.test(standard.id) ?? false
}
