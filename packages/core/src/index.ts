export type { Answer, AnswerCaution, AnswerSense, AnswerSource, AnswerStep, Value } from './answer.js'
export { type CatalogueMeasure, type CatalogueSense, describeMeasure, listMeasures } from './catalogue.js'
export { citeBibtex, citeFull, citeShort } from './cite/index.js'
export { convert } from './convert.js'
export { type ErrorCode, type Fault, PottleError, type WordsRead } from './error.js'
export type { ModernValue } from './modern/index.js'
export type { ConvertOptions } from './options.js'
export type { EggParts, Range, Reading, ReadingKind, Span } from './reading/index.js'
export { readPhrase } from './reading/index.js'
export { type Moment, type Setting, settingOf } from './setting.js'
export {
  type Checked,
  type Citation,
  dataset,
  findSource,
  type Grade,
  type MeasureKind,
  type Quantity,
  type SourceRow,
  sources,
} from './tables/index.js'
