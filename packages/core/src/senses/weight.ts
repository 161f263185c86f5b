import type { SenseKind } from './sense.js'
import { kindByStandard } from './standard.js'

/** Pounds, ounces, stones, firkins of butter: parts and multiples of a standard pound. */
export const weight: SenseKind = kindByStandard('weight')
