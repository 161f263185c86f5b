export type { EggParts, Range, Reading, ReadingKind, Span } from './reading.js'
