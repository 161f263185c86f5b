/**
 * What an embed shows, without a browser: answers as entries, and entries as cards, notes, footnotes and pictures.
 *
 * @module @pottle/embed/view
 */
export type { AnswerStep, AnswerUnit, AnswerValue, HeatAnswer, LoafAnswer, MeasureAnswer } from './answers.js'
export { card, note, sentence, stepList } from './card.js'
export { entryOfHeat, entryOfLoaf, entryOfMeasure } from './entries.js'
export type { Entry, EntryBand, EntrySense, EntryStep, Kind } from './entry.js'
export type { Figures } from './figures.js'
export { type Footnote, footnote } from './footnote.js'
export { gauge } from './gauge.js'
export { apiAddress, embedAddress, pageAddress, parameters, type Question, queryOf, questionAt, questionOf, wordsOf } from './question.js'
export { sheet } from './sheet.js'
export { snippet } from './snippet.js'
export { type Child, type Content, h, print, type Tree } from './tree.js'
