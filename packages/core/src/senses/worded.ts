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
  apothecary: /^pound\.apothecaries|^gallon\.wine$/,
  london: /^(?!scots)/,
  tron: /^pound\.tron/,
  dutch: /^pound\.(dutch|scots-troy)/,
  dry: /^gallon\.(corn|us-dry)/,
  liquid: /^gallon\.(wine|us$)/,
  // Once there was a new measure, that of 1824.
  old: /^gallon\.(?!imperial)/,
  new: /^gallon\.imperial/,
}

/** Whether a word in front of a measure (*a wine pint*) names a standard; a word that names none at all does not. */
export function isWordFor(word: string, standard: StandardRow): boolean {
  return namedStandards[word]?.test(standard.id) ?? false
}
