export type { Answer, AnswerCaution, AnswerData, AnswerSense, AnswerSource, Value } from './answer.js'
export { type Band, bandOf, mixtureBand } from './bands/index.js'
export {
  drawLoafSeries,
  type Loaf,
  type LoafName,
  type LoafQuestion,
  type LoafSpan,
  type LoafYearWeight,
  loafSeries,
  loafWeight,
  loavesOver,
  type Market,
  readLoafName,
  type SeriesQuestion,
} from './bread/index.js'
export { type CatalogueMeasure, type CatalogueSense, describeMeasure, listMeasures } from './catalogue.js'
export { type Caution, type CautionQuestion, cautionsFor } from './cautions/index.js'
export { type AnswerStep, citeBibtex, citeFull, citeShort } from './cite/index.js'
export { convert } from './convert.js'
export { type ErrorCode, type Fault, PottleError, type WordsRead } from './error.js'
export {
  allHeats,
  type Bake,
  type BakePlan,
  type BakePlanOptions,
  type BakeWindow,
  type BrickOven,
  type BrickOvenOptions,
  bakePlan,
  bakingOrder,
  brickOven,
  brickOvenRecords,
  drawCoolingCurve,
  drawHeatScale,
  findHeat,
  type HeatReading,
  heatById,
  type LiquidHeat,
  liquidHeat,
  liquidHeats,
  type OvenHeat,
  type OvenMoment,
  type SugarHeight,
  sugarHeight,
  sugarHeights,
} from './heat/index.js'
export { inModernUnits, type ModernValue } from './modern/index.js'
export type { ConvertOptions } from './options.js'
export type { EggParts, Found, Range, Reading, ReadingKind, ReceiptReading, Span } from './reading/index.js'
export { readPhrase, readReceipt } from './reading/index.js'
export { type Moment, type Setting, settingOf } from './setting.js'
export {
  type Plan,
  type Sheet,
  type SheetLine,
  type SheetOptions,
  type Stretch,
  sheetToCsv,
  sheetToHtml,
  sheetToJsonLd,
  sheetToMarkdown,
  stretchesOf,
  workSheet,
} from './sheet/index.js'
export {
  type Checked,
  type Citation,
  dataset,
  demoReceipts,
  dishShapes,
  findSource,
  type Grade,
  loafCoins,
  loafKinds,
  type MeasureKind,
  places,
  type Quantity,
  type SourceRow,
  type Spread,
  sources,
} from './tables/index.js'
