export { readPhrase } from './phrase.js'
export type {
  AmountPart,
  EggParts,
  Found,
  FoundHeat,
  FoundServes,
  FoundThing,
  FoundTime,
  FoundWarmth,
  HeatClass,
  HeatOf,
  Range,
  Reading,
  ReadingKind,
  ReceiptReading,
  Span,
} from './reading.js'
export { readReceipt } from './receipt.js'
export { ratioOfMeasures } from './stated.js'
